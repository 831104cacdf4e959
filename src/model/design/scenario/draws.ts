import type { Scenario } from './fields.ts'
import { drawnScenario, uncertainInputs, type MadeOrMeasured } from './uncertain-inputs.ts'
import { latinHypercube, seededUniform } from '#model/basis/numbers'
import { type UncertaintyResult, spreadOf, type UncertainInput } from '#model/design/sizing'

/** One seed for all, so that the same scenario always gives the same range. */
const UNCERTAINTY_SEED = 20_261

/** Draws × inputs: the values of every draw, the same for whoever asks. */
function drawnValues(inputs: readonly UncertainInput[], draws: number): number[][] {
  const points = latinHypercube(draws, inputs.length, seededUniform(UNCERTAINTY_SEED))
  return Array.from({ length: draws }, (_, i) =>
    inputs.map(({ low, high }, k) => low + (high - low) * points[i * inputs.length + k]!),
  )
}

/** A scenario's draws as scenarios. */
export function drawnScenarios(scenario: Scenario, weather: MadeOrMeasured, draws: number): Scenario[] {
  const inputs = uncertainInputs(scenario, weather)
  return drawnValues(inputs, draws).map((values) => drawnScenario(scenario, inputs, values))
}

/** The spread of the areas (m², null where none is enough) of all draws of a scenario, in their order. */
export function spreadOfAreas(
  scenario: Scenario,
  weather: MadeOrMeasured,
  areas_m2: readonly (number | null)[],
): UncertaintyResult {
  const inputs = uncertainInputs(scenario, weather)
  return spreadOf(areas_m2, inputs, drawnValues(inputs, areas_m2.length))
}
