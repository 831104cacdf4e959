import { localHour } from '#model/basis/hours'
import { type SunHours, SUNSET_deg } from '#model/outdoors/sun'
import type { WeatherRecord } from '#model/outdoors/weather'
import type { RoomSpec } from './spec.ts'

/** 1 in the hours in which windows may be opened: the sun is down, or the clock is in its span (over midnight too). */
export function ventAllowed(
  { ventHours, ventFrom_h, ventTo_h }: Pick<RoomSpec, 'ventHours' | 'ventFrom_h' | 'ventTo_h'>,
  sun: SunHours,
  weather: WeatherRecord,
): Uint8Array {
  return new Uint8Array(sun.hours).map((_, h) => {
    if (ventHours === 'night') return sun.altitude_deg[h]! < SUNSET_deg ? 1 : 0
    const middle_h = (localHour(weather, h) + 0.5) % 24
    const inside =
      ventFrom_h <= ventTo_h
        ? middle_h >= ventFrom_h && middle_h < ventTo_h
        : middle_h >= ventFrom_h || middle_h < ventTo_h
    return inside ? 1 : 0
  })
}
