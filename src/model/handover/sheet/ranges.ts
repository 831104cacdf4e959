import type { Candidate } from '#model/design/sizing'
import { exceedance } from '#model/design/target'
import { quantile } from '#model/basis/numbers'
import { designOf, monthSummaries, type Prepared } from '#model/design/assembly'
import { firstDraws, type MadeOrMeasured, type Scenario } from '#model/design/scenario'
import { simulateYear } from '#model/building/year'

/** Eight draws in ten lie between these. */
export interface Range {
  readonly low: number
  readonly high: number
}

/** What the built design does when the uncertain inputs are drawn from their ranges: the plant stays, the world varies. */
export interface DesignRanges {
  readonly draws: number
  /** Twelve entries, January first. */
  readonly months: readonly { readonly panelHeat_J: Range; readonly roomPeak_C: Range }[]
  readonly yearHeat_J: Range
  readonly peak_C: Range
  /** Counted hours above the limit. */
  readonly hoursAbove_h: Range
}

interface Draw {
  readonly heat_J: readonly number[]
  readonly peak_C: readonly number[]
  readonly counted: { readonly peak_C: number; readonly hours_h: number }
}

/**
 * Repeats the year of a built design over the first draws of the area's range, one at a time.
 * @param built    area, tank and flow as built
 * @param prepare  runs the stages up to the room for a drawn scenario
 * @returns an iterator of draws done, whose return value are the ranges
 */
export function* designRanges(
  scenario: Scenario,
  weather: MadeOrMeasured,
  built: Candidate,
  prepare: (drawn: Scenario) => Prepared,
  draws: number,
): Generator<number, DesignRanges> {
  const done: Draw[] = []
  for (const drawn of firstDraws(scenario, weather, draws)) {
    done.push(drawOf(prepare(drawn), built))
    yield done.length
  }
  return rangesOf(done)
}

function drawOf(prepared: Prepared, built: Candidate): Draw {
  const year = simulateYear(designOf(prepared, built, 'built').inputs)
  const months = monthSummaries(prepared.weather, year, prepared.doNothing, prepared.yardstick.limit_C)
  return {
    heat_J: months.map((month) => month.panelHeat_J),
    peak_C: months.map((month) => month.roomPeak_C),
    counted: exceedance(year.room_C, prepared.yardstick),
  }
}

function rangesOf(draws: readonly Draw[]): DesignRanges {
  const over = (pick: (draw: Draw) => number): Range => eightInTen(draws.map(pick))
  return {
    draws: draws.length,
    months: Array.from({ length: 12 }, (_, m) => ({
      panelHeat_J: over((draw) => draw.heat_J[m]!),
      roomPeak_C: over((draw) => draw.peak_C[m]!),
    })),
    yearHeat_J: over((draw) => draw.heat_J.reduce((sum, heat) => sum + heat, 0)),
    peak_C: over((draw) => draw.counted.peak_C),
    hoursAbove_h: over((draw) => draw.counted.hours_h),
  }
}

/** 10 and 90 % of some values, straight lines between neighbours. NaN without values. */
export function eightInTen(values: readonly number[]): Range {
  const sorted = values.toSorted((a, b) => a - b)
  return { low: quantile(sorted, 0.1), high: quantile(sorted, 0.9) }
}
