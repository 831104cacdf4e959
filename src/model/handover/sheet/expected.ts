import type { Plant, SheetAnswer } from './plant.ts'
import type { DesignRanges, Range } from './ranges.ts'
import { CLEAR_frac, NIGHT_deg, RAN_frac } from './running-night.ts'
import { spanOf, type Span } from './span.ts'

/** One row of the table of the year. */
export interface ExpectedMonth {
  /** 1…12. */
  readonly month: number
  readonly outdoorMean_C: number
  readonly roomPeak_C: number
  readonly roomPeakRange_C: Range | null
  readonly doNothingPeak_C: number
  readonly panelHeat_J: number
  readonly panelHeatRange_J: Range | null
  readonly electric_J: number
  readonly pumpRun_h: number
}

export function expectedMonths({ months }: SheetAnswer, ranges: DesignRanges | null): ExpectedMonth[] {
  return months.map((month, i) => ({
    month: month.month,
    outdoorMean_C: month.outdoorMean_C,
    roomPeak_C: month.roomPeak_C,
    roomPeakRange_C: ranges?.months[i]?.roomPeak_C ?? null,
    doNothingPeak_C: month.doNothingPeak_C,
    panelHeat_J: month.panelHeat_J,
    panelHeatRange_J: ranges?.months[i]?.panelHeat_J ?? null,
    electric_J: month.electric_J,
    pumpRun_h: month.pumpRun_h,
  }))
}

/** What a builder can measure in one night, and what the simulated year says of it. */
export interface NightTest {
  /** Supply minus return in hours the pump ran throughout, K. */
  readonly drop_K: Span | null
  /** Heat out of the fluid in the same hours, W. */
  readonly heat_W: Span | null
  /** Air minus plate on clear nights with the pump at rest, K. */
  readonly restingBelowAir_K: Span | null
  /** Coldest and warmest mean store temperature of the hottest week, °C. */
  readonly store_C: Range
}

/** Fewer hours than this are no basis for a span. */
const FEWEST = 10
const WEEK_h = 168

export function nightTest({ answer }: Plant): NightTest {
  const { year, loop, weather, sun } = answer
  const hours = Array.from({ length: year.hours }, (_, h) => h)
  const ran = hours.filter((h) => year.pumpRun_frac[h]! >= RAN_frac)
  const resting = hours.filter(
    (h) =>
      year.pumpRun_frac[h] === 0 && weather.cloud_frac[h]! < CLEAR_frac && sun.altitude_deg[h]! < NIGHT_deg,
  )
  const week = hours.slice(answer.hottestWeekStart_h, answer.hottestWeekStart_h + WEEK_h)
  const store_C = week.map((h) => year.store_C[h]!)
  return {
    drop_K: enough(ran.map((h) => year.panelHeat_W[h]! / loop.capacityRate_WK)),
    heat_W: enough(ran.map((h) => year.panelHeat_W[h]!)),
    restingBelowAir_K: enough(resting.map((h) => weather.airTemp_C[h]! - year.plate_C[h]!)),
    store_C: { low: Math.min(...store_C), high: Math.max(...store_C) },
  }
}

/** Null where too few hours were looked at. */
const enough = (values: readonly number[]): Span | null => (values.length < FEWEST ? null : spanOf(values))
