import { blackbody_Wm2 } from '#model/air/blackbody.ts'
import { vapourPressure_Pa } from '#model/air/moist-air.ts'
import type { WeatherRecord } from '#model/weather/record.ts'

/**
 * The harder year with its measured longwave scaled, hour by hour, by modelled longwave after over modelled
 * longwave before (clear sky of Matsunobu & Coimbra 2024 under the record's cloud, mixed as Crawford & Duchon
 * 1999 do). Hours without a measurement (NaN) stay without.
 * @param before a record with `skyLongwave_Wm2`
 * @param after  the same hours with other air and dew point
 */
export function stressedLongwave(before: WeatherRecord, after: WeatherRecord): WeatherRecord {
  const measured_Wm2 = before.skyLongwave_Wm2
  if (measured_Wm2 === undefined) return after
  const origin = before.origins.skyLongwave_Wm2
  const scaled = 'scaled by the modelled change under hotter, damper air'
  return {
    ...after,
    skyLongwave_Wm2: measured_Wm2.map(
      (value, hour) => (value * modelled_Wm2(after, hour)) / modelled_Wm2(before, hour),
    ),
    origins: {
      ...after.origins,
      skyLongwave_Wm2: {
        kind: 'derived',
        note: `${origin?.note ?? 'Longwave of the weather file'}; ${scaled}.`,
        filledHours: origin?.filledHours ?? 0,
      },
    },
    basis: `${after.basis} Its longwave is ${scaled}.`,
  }
}

function modelled_Wm2(record: WeatherRecord, hour: number): number {
  const share = vapourPressure_Pa(record.dewPoint_C[hour]!) / 101_325
  const clear = 0.6 + 1.652 * Math.sqrt(share)
  const cloud = record.cloud_frac[hour]!
  return (cloud + (1 - cloud) * clear) * blackbody_Wm2(record.airTemp_C[hour]!)
}
