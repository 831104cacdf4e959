import type { Scenario } from './fields.ts'
import { drawnScenario, uncertainInputs, USUAL_DRAWS, type MadeOrMeasured } from './uncertain-inputs.ts'
import { latinHypercube, seededUniform, slicedHypercube } from '#model/basis/numbers'
import {
  areasFromFirst,
  FIRST_DRAWS,
  type UncertaintyResult,
  spreadOf,
  type UncertainInput,
} from '#model/design/sizing'

/** One seed for all, so that the same scenario always gives the same range. */
const UNCERTAINTY_SEED = 20_261

/** Draws × inputs: the values of every draw, the same for whoever asks. */
function drawnValues(inputs: readonly UncertainInput[], draws: number): number[][] {
  const uniform = seededUniform(UNCERTAINTY_SEED)
  const points =
    draws <= FIRST_DRAWS
      ? latinHypercube(draws, inputs.length, uniform)
      : slicedHypercube(Math.ceil(draws / FIRST_DRAWS), FIRST_DRAWS, inputs.length, uniform)
  return Array.from({ length: draws }, (_, i) =>
    inputs.map(({ low, high }, k) => low + (high - low) * points[i * inputs.length + k]!),
  )
}

/** A scenario's draws as scenarios. */
export function drawnScenarios(scenario: Scenario, weather: MadeOrMeasured, draws: number): Scenario[] {
  const inputs = uncertainInputs(scenario, weather)
  return drawnValues(inputs, draws).map((values) => drawnScenario(scenario, inputs, values))
}

/**
 * The first of a scenario's usual draws, the very ones that its area's range begins with: hours and months are worked out from
 * these, so that two pages that ask about the same design cannot draw different years.
 */
export function firstDraws(scenario: Scenario, weather: MadeOrMeasured, draws: number): Scenario[] {
  return drawnScenarios(scenario, weather, Math.max(draws, USUAL_DRAWS)).slice(0, draws)
}

/**
 * The spread over the draws of a scenario from the areas (m², null where none is enough) of the first of them, in their order.
 * @returns null where these do not settle it: then more are to be simulated
 */
export function spreadOfAreas(
  scenario: Scenario,
  weather: MadeOrMeasured,
  draws: number,
  first_m2: readonly (number | null)[],
): UncertaintyResult | null {
  const inputs = uncertainInputs(scenario, weather)
  const values = drawnValues(inputs, draws)
  const found = areasFromFirst(first_m2, inputs, values, scenario.target.maxArea_m2)
  return found === null ? null : spreadOf(found.areas_m2, inputs, values, found)
}
