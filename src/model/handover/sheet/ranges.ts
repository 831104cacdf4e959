import type { Candidate } from '#model/design/sizing'
import { exceedance } from '#model/design/target'
import { latinHypercube, quantile, seededUniform } from '#model/basis/numbers'
import { designOf, monthSummaries, type Prepared } from '#model/design/assembly'
import { type MadeOrMeasured, type Scenario, drawnScenario, uncertainInputs } from '#model/design/scenario'
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

/** One seed, so that the same sheet always has the same ranges. */
const SEED = 40_417

interface Draw {
  readonly heat_J: readonly number[]
  readonly peak_C: readonly number[]
  readonly counted: { readonly peak_C: number; readonly hours_h: number }
}

/**
 * Repeats the year of a built design over the same named ranges as the area's range, one draw at a time.
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
  const inputs = uncertainInputs(scenario, weather)
  const points = latinHypercube(draws, inputs.length, seededUniform(SEED))
  const done: Draw[] = []
  for (let i = 0; i < draws; i++) {
    const values = inputs.map(({ low, high }, k) => low + (high - low) * points[i * inputs.length + k]!)
    done.push(drawOf(prepare(drawnScenario(scenario, inputs, values)), built))
    yield i + 1
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
