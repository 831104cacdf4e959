import type { Site } from '#model/outdoors/weather'
import { byMixing_K, ofTheStations } from './mixing.ts'
import type { MonthTargets } from './months.ts'
import { within } from './within.ts'

/** Day-to-day departures of the months: standard deviations of daily means, and how the states hang together. */
export interface DaySpreads {
  readonly air_K: readonly number[]
  /** Standard error of that of the air away from the stations of the regression: half of what the two ways to it differ. */
  readonly airDoubt_K: readonly number[]
  readonly dew_K: readonly number[]
  /** Correlations: air with dew point, air with cloud, dew point with cloud. */
  readonly airDew: readonly number[]
  readonly airCloud: readonly number[]
  readonly dewCloud: readonly number[]
}

const ramp = (value: number, from: number, to: number): number => within((value - from) / (to - from), 0, 1)

/**
 * By regression on 190 station years, warm and cold season apart (place method of this project; the same idea as Richardson
 * 1981, Water Resources Research 17, 182–190). Residual of the warm season 0.7 K: the largest error of the method, which no
 * monthly mean can mend. Away from those stations (coefficients, and the latitude in them, may not carry over) the geometric mean
 * of the regression and of what mixing across the gradient of the mean gives.
 */
export function daySpreads(
  months: MonthTargets,
  { latitude_deg, longitude_deg }: Pick<Site, 'latitude_deg' | 'longitude_deg'>,
  airGradient_Kkm: readonly number[] | null,
): DaySpreads {
  const { airTemp_C, dailyRange_K, dewPoint_C } = months
  const coldest_C = Math.min(...airTemp_C)
  const swing_K = Math.max(...airTemp_C) - coldest_C
  const from_deg = Math.abs(latitude_deg)
  const atHome = ofTheStations(latitude_deg, longitude_deg)
  const rows = airTemp_C.map((air_C, k) => {
    const season = (air_C - coldest_C) / Math.max(swing_K, 1)
    const warm = ramp(season, 0.55, 0.85)
    const mix = (hot: number, cold: number): number => warm * hot + (1 - warm) * cold
    const range_K = dailyRange_K[k]!
    const dew_C = dewPoint_C[k]!
    const dry_K = air_C - dew_C
    const hot_K = 0.76 + 0.0428 * swing_K + 0.0099 * range_K - 0.0366 * dew_C + 0.0297 * from_deg
    const cold_K = 2.26 + 0.1022 * swing_K + 0.0556 * range_K - 0.0577 * dew_C - 0.0356 * from_deg
    const regressed_K = Math.max(0.45, mix(hot_K, cold_K))
    const mixed_K =
      airGradient_Kkm === null || atHome ? regressed_K : byMixing_K(airGradient_Kkm[k]!, warm, regressed_K)
    const air_K = Math.sqrt(regressed_K * mixed_K)
    const damp = 1.1 * (1 + warm * 0.25 * ramp(dew_C, 6, 11) * (1 - ramp(dew_C, 18, 21)))
    const dew_K = Math.max(
      0.6,
      mix(1.11 + 0.677 * air_K + 0.0527 * dry_K - 0.0293 * dew_C, 1.14 + 0.9 * air_K),
    )
    return {
      air_K: damp * air_K,
      airDoubt_K: 0.5 * damp * Math.abs(regressed_K - mixed_K),
      dew_K: dew_K * (1 - 0.32 * warm * ramp(dew_C, 15, 21)),
      airDew: within(
        mix(
          0.139 - 0.0314 * dry_K + 0.0067 * dew_C + 0.0214 * swing_K,
          0.532 - 0.0427 * dry_K + 0.0197 * swing_K,
        ),
        -0.3,
        0.85,
      ),
      airCloud: 0.209 - 0.522 * season,
      dewCloud: 0.453 - 0.186 * season,
    }
  })
  const column = (name: keyof DaySpreads): number[] => rows.map((row) => row[name])
  return {
    air_K: column('air_K'),
    airDoubt_K: column('airDoubt_K'),
    dew_K: column('dew_K'),
    airDew: column('airDew'),
    airCloud: column('airCloud'),
    dewCloud: column('dewCloud'),
  }
}
