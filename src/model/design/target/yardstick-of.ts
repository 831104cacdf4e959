import { localHour } from '#model/basis/hours'
import { adaptiveUpper_C } from './comfort.ts'
import { yardstick, type Yardstick } from './exceedance.ts'
import type { TargetSpec } from './target.ts'
import type { WeatherRecord } from '#model/outdoors/weather'

/** The target's yardstick in one climate: a fixed limit, or the adaptive standard's upper limit day by day. */
export function yardstickOf(target: TargetSpec, weather: WeatherRecord): Yardstick {
  const upper_C =
    target.kind === 'adaptive'
      ? adaptiveUpper_C(weather, target.adaptive)
      : new Float64Array(weather.hours).fill(target.limit_C)
  return yardstick(target, weather, upper_C, Math.floor(localHour(weather, 0)))
}
