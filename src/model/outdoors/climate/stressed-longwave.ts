import { skyHours, type SkyOptions } from '#model/outdoors/sky'
import type { WeatherRecord } from '#model/outdoors/weather'

/** The sky model that says by how much longwave changes: the default one, without any measurement. */
const MODELLED: SkyOptions = {
  model: 'matsunobuCoimbraPrata',
  altitudeTerm: false,
  useMeasured: false,
  deficitFactor_frac: 1,
}

/**
 * The harder year with its measured longwave scaled, hour by hour, by modelled longwave after over modelled
 * longwave before, and the scaling noted. Hours without a measurement (NaN) stay without.
 * @param before a record that may hold `skyLongwave_Wm2`
 * @param after  the same hours with other air and dew point
 * @returns `after` itself when nothing was measured
 */
export function stressedLongwave(before: WeatherRecord, after: WeatherRecord): WeatherRecord {
  const measured_Wm2 = before.skyLongwave_Wm2
  if (measured_Wm2 === undefined) return after
  const was_Wm2 = skyHours(before, MODELLED).total_Wm2
  const becomes_Wm2 = skyHours(after, MODELLED).total_Wm2
  const origin = before.origins.skyLongwave_Wm2
  const scaled = 'scaled by the modelled change under hotter, damper air'
  return {
    ...after,
    skyLongwave_Wm2: measured_Wm2.map((value, hour) => (value * becomes_Wm2[hour]!) / was_Wm2[hour]!),
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
