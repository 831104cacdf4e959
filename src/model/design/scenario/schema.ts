import * as v from 'valibot'
import type { DayProfileField, Field, NumberField } from './field.ts'
import { FIELDS, type GroupName, type Scenario } from './fields.ts'

/** Version of the scenario file this build writes. Version 1 wrote 0 for a price that nobody gave: `old-prices.ts`; up to 2, `older-way.ts`. */
export const SCENARIO_VERSION = 3

/** The valibot schema of one field, with sentences for people. */
export function fieldSchema(field: Field): v.GenericSchema {
  switch (field.type) {
    case 'number':
      return field.unit === 'count'
        ? v.pipe(numberWithin(field), v.integer('must be a whole number.'))
        : numberWithin(field)
    case 'choice':
      return v.picklist(field.options, `must be one of ${field.options.join(', ')}.`)
    case 'switch':
      return v.boolean('must be true or false.')
    case 'text':
      return v.pipe(
        v.string('must be text.'),
        v.maxLength(field.maxLength, `must be at most ${field.maxLength} characters long.`),
      )
    case 'several':
      return v.pipe(
        v.array(
          v.picklist(field.options, `must be some of ${field.options.join(', ')}.`),
          `must be a list of some of ${field.options.join(', ')}.`,
        ),
        v.check((all) => new Set(all).size === all.length, 'must name each only once.'),
      )
    case 'dayProfile':
      return v.pipe(
        v.array(numberWithin(field), 'must be a list of 24 numbers, hour 0 first.'),
        v.length(24, 'must have 24 numbers, hour 0 first.'),
      )
  }
}

function numberWithin({ min, max, unit }: NumberField | DayProfileField): v.GenericSchema<number> {
  const range = `must be between ${min} and ${max} (${unit}).`
  return v.pipe(
    v.number('must be a number.'),
    v.finite('must be a finite number.'),
    v.minValue(min, range),
    v.maxValue(max, range),
  )
}

/** All groups, in the order of the description. */
export const GROUPS = Object.keys(FIELDS) as GroupName[]

/** The field table of one group, loosely typed for loops. */
export function fieldsOf(group: GroupName): Readonly<Record<string, Field>> {
  return FIELDS[group]
}

/** The field at a path such as `panel.tilt_deg`, or null. Only own names count. */
export function fieldAt(path: string): { group: GroupName; name: string; field: Field } | null {
  const [group, name, ...rest] = path.split('.')
  if (group === undefined || name === undefined || rest.length > 0) return null
  if (!Object.hasOwn(FIELDS, group)) return null
  const fields = fieldsOf(group as GroupName)
  if (!Object.hasOwn(fields, name)) return null
  return { group: group as GroupName, name, field: fields[name]! }
}

/** Every path, e.g. `site.terrain`, in order. */
export function fieldPaths(): string[] {
  return GROUPS.flatMap((group) => Object.keys(fieldsOf(group)).map((name) => `${group}.${name}`))
}

/** A scenario with every field at its default. */
export function defaultScenario(): Scenario {
  const groups = GROUPS.map((group) => {
    const values = Object.entries(fieldsOf(group)).map(([name, field]) => [name, field.default] as const)
    return [group, Object.fromEntries(values)] as const
  })
  return Object.fromEntries(groups) as unknown as Scenario
}
