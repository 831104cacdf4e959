import { withChosen } from '#model/design/scenario'
import type { ChoiceField, NumberField, SwitchField, Scenario } from '#model/design/scenario'
import type { UnitSystem } from '#model/basis/units'
import type { FieldRef } from '#ui/choosing/parts.ts'
import { shownQuantity } from '#ui/words/quantity.ts'

/** Values to try one field at: both ends and the middle of its usual span, or every choice. */
export function effectSteps(field: NumberField | ChoiceField | SwitchField, system: UnitSystem) {
  if (field.type === 'switch') return [true, false].map((value) => ({ label: value ? 'On' : 'Off', value }))
  if (field.type === 'choice') {
    return field.options.map((value) => ({ label: field.optionLabels[value]!, value }))
  }
  const shown = shownQuantity(field.unit, system, field.max)
  const [low, high] = field.usual
  const whole = field.unit === 'count'
  return [low, (low + high) / 2, high].map((raw) => {
    const value = whole ? Math.round(raw) : raw
    return { label: shown.text(value), value }
  })
}

/** The description with one field at each of those values. */
export function effectScenarios(
  scenario: Scenario,
  at: FieldRef,
  steps: readonly { readonly value: unknown }[],
): readonly Scenario[] {
  return steps.map(({ value }) => withChosen(scenario, at, value))
}
