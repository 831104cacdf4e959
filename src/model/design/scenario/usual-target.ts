import { USUAL_TARGETS, type KeptFor } from '#model/design/target'
import type { Scenario } from './fields.ts'

/** The description kept cool for another kind: with its usual limit, hours and humidity. */
export function withUsualTarget(scenario: Scenario, keptFor: KeptFor): Scenario {
  const { limit_C, allowedHours_h, occupiedFrom_h, occupiedUntil_h, mostHumid_frac } = USUAL_TARGETS[keptFor]
  const usual = { limit_C, allowedHours_h, occupiedFrom_h, occupiedUntil_h, mostHumid_frac }
  return { ...scenario, target: { ...scenario.target, ...usual, kind: 'hours', keptFor } }
}
