import type { Unit } from '#model/basis/units'
import type { Text } from '#model/basis/words'

/** Kinds of scenario field. Labels, ranges and explanations live with the field, and nowhere else. */
interface Common {
  readonly label: string
  /** One line: what it is. */
  readonly help: Text
  /** Why it matters to the area; empty when it does not. */
  readonly why: Text
}

export interface NumberField extends Common {
  readonly type: 'number'
  /** Unit suffix as in `units/suffix.ts`, e.g. `Wm2K`. */
  readonly unit: Unit
  readonly min: number
  readonly max: number
  readonly default: number
  /** Usual span of a slider, inside min…max; outside it a value is warned about. */
  readonly usual: readonly [number, number]
  readonly step: number
}
export interface ChoiceField<T extends string = string> extends Common {
  readonly type: 'choice'
  readonly options: readonly T[]
  readonly optionLabels: Readonly<Record<T, string>>
  readonly default: T
}
export interface SwitchField extends Common {
  readonly type: 'switch'
  readonly default: boolean
}
export interface TextField extends Common {
  readonly type: 'text'
  readonly maxLength: number
  readonly default: string
}
/** Some of several, each once; none too. */
export interface SeveralField<T extends string = string> extends Common {
  readonly type: 'several'
  readonly options: readonly T[]
  readonly optionLabels: Readonly<Record<T, string>>
  readonly default: readonly T[]
}
/** 24 numbers, hour 0 first. */
export interface DayProfileField extends Common {
  readonly type: 'dayProfile'
  readonly unit: Unit
  readonly min: number
  readonly max: number
  readonly default: readonly number[]
}
export type Field = NumberField | ChoiceField | SwitchField | TextField | SeveralField | DayProfileField

/** The value a field holds in a scenario. */
export type FieldValue<F> = F extends { type: 'number' }
  ? number
  : F extends { type: 'choice'; options: readonly (infer T)[] }
    ? T
    : F extends { type: 'switch' }
      ? boolean
      : F extends { type: 'text' }
        ? string
        : F extends { type: 'several'; options: readonly (infer T)[] }
          ? readonly T[]
          : F extends { type: 'dayProfile' }
            ? readonly number[]
            : never

export function number(
  unit: Unit,
  range: { min: number; max: number; default: number; usual?: readonly [number, number]; step?: number },
  label: string,
  help: Text,
  why: Text = '',
): NumberField {
  const usual = range.usual ?? [range.min, range.max]
  const step = range.step ?? Number(((usual[1] - usual[0]) / 100).toPrecision(1))
  return {
    type: 'number',
    unit,
    min: range.min,
    max: range.max,
    default: range.default,
    usual,
    step,
    label,
    help,
    why,
  }
}

function offered<T extends string>(optionLabels: Readonly<Record<T, string>>) {
  return { options: Object.keys(optionLabels) as T[], optionLabels }
}

export function choice<const T extends string>(
  optionLabels: Readonly<Record<T, string>>,
  initial: NoInfer<T>,
  label: string,
  help: Text,
  why: Text = '',
): ChoiceField<T> {
  return { type: 'choice', default: initial, ...offered(optionLabels), label, help, why }
}

export function several<const T extends string>(
  optionLabels: Readonly<Record<T, string>>,
  initial: readonly NoInfer<T>[],
  label: string,
  help: Text,
  why: Text = '',
): SeveralField<T> {
  return { type: 'several', default: initial, ...offered(optionLabels), label, help, why }
}

export function onOff(initial: boolean, label: string, help: string, why = ''): SwitchField {
  return { type: 'switch', default: initial, label, help, why }
}

export function text(initial: string, maxLength: number, label: string, help: Text): TextField {
  return { type: 'text', default: initial, maxLength, label, help, why: '' }
}

export function dayProfile(
  unit: Unit,
  range: { min: number; max: number; default: readonly number[] },
  label: string,
  help: Text,
  why: Text = '',
): DayProfileField {
  return { type: 'dayProfile', unit, ...range, label, help, why }
}
