import { dayMeans } from '#model/basis/hours'
import { STEFAN_BOLTZMANN } from '#model/outdoors/air'
import { skyHours } from '#model/outdoors/sky'
import { defaultScenario } from '#model/design/scenario'
import { skyOptionsOf } from '#model/design/assembly'
import { KELVIN_OFFSET } from '#model/basis/units'
import type { WeatherRecord } from '#model/outdoors/weather'
import { createStudies, finish } from '#studies/index.ts'

/** What of a year's weather sizes a panel. */
export interface SizingStatistics {
  /** Hottest three days in a row, mean of the air, °C. */
  readonly hotSpell_C: number
  /** Hottest hours (99.8 %), °C. */
  readonly hottestHour_C: number
  /** Warm nights (99 % of the dark hours), °C. */
  readonly warmNight_C: number
  /** Damp nights (99 % of the dark hours), dew point, °C. */
  readonly dampNight_C: number
  /** Hottest and dampest five days: mean of air and dew point, °C. */
  readonly dampHot_C: number
  /** Share of the dark hours of the warm quarter with little cloud (≤ 0.25) and wind under 2 m/s. */
  readonly clearCalm_frac: number
  /** What the sky falls short of a black body at air temperature, dark hours of the warm quarter, W/m². */
  readonly deficit_Wm2: number
  /** How far an unloaded plate lies below the air, dark hours of the warm quarter, K. */
  readonly depression_K: number
}

const QUARTER_H = 91 * 24

/** @param useMeasured  the measured sky where the file has one; otherwise the formula for both, so that the weather is compared */
export function sizingStatistics(record: WeatherRecord, useMeasured = false): SizingStatistics {
  const days = dayMeans(record.airTemp_C)
  const dampDays = dayMeans(record.airTemp_C.map((air_C, h) => 0.5 * (air_C + record.dewPoint_C[h]!)))
  const dark = Array.from({ length: record.hours }, (_, h) => h).filter(
    (h) => record.globalHorizontal_Wm2[h] === 0,
  )
  const warm = warmQuarter(record)
  const warmDark = dark.filter((h) => warm(h))
  const scenario = defaultScenario()
  const byFormula = { ...scenario, sky: { ...scenario.sky, useMeasured } }
  const sky = skyHours(record, skyOptionsOf(byFormula))
  const rest = finish(createStudies().plate({ scenario: byFormula, weather: record, plate_C: 20 })).result
    .hours
  const mean = (value: (h: number) => number) =>
    warmDark.reduce((sum, h) => sum + value(h), 0) / warmDark.length
  return {
    hotSpell_C: spell(days, 3),
    hottestHour_C: quantile(record.airTemp_C, 0.998),
    warmNight_C: quantile(
      dark.map((h) => record.airTemp_C[h]!),
      0.99,
    ),
    dampNight_C: quantile(
      dark.map((h) => record.dewPoint_C[h]!),
      0.99,
    ),
    dampHot_C: spell(dampDays, 5),
    clearCalm_frac: mean((h) => (record.cloud_frac[h]! <= 0.25 && record.wind_ms[h]! < 2 ? 1 : 0)),
    deficit_Wm2: mean(
      (h) => STEFAN_BOLTZMANN * (record.airTemp_C[h]! + KELVIN_OFFSET) ** 4 - sky.total_Wm2[h]!,
    ),
    depression_K: mean((h) => record.airTemp_C[h]! - rest.equilibrium_C[h]!),
  }
}

/** Value below which a share of the hours lie. */
function quantile(values: ArrayLike<number>, share: number): number {
  const sorted = Array.from(values).toSorted((a, b) => a - b)
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))]!
}

function spell(days: Float64Array, length: number): number {
  const means = Array.from({ length: days.length - length + 1 }, (_, i) =>
    days.slice(i, i + length).reduce((sum, value) => sum + value / length, 0),
  )
  return Math.max(...means)
}

/** True for the hours of the warmest quarter of the year. */
function warmQuarter({ airTemp_C, hours }: WeatherRecord): (h: number) => boolean {
  const at = (h: number) => airTemp_C[((h % hours) + hours) % hours]!
  let sum = 0
  for (let h = 0; h < QUARTER_H; h++) sum += at(h)
  let best = { from: 0, sum }
  for (let from = 24; from < hours; from += 24) {
    for (let h = from - 24; h < from; h++) sum += at(h + QUARTER_H) - at(h)
    if (sum > best.sum) best = { from, sum }
  }
  return (h) => (h - best.from + hours) % hours < QUARTER_H
}
