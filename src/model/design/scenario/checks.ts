import { isTank } from '#model/building/store'
import { said, type Problem, figure, short, words, type Figure, type Wording } from '#model/basis/words'
import type { Scenario } from './fields.ts'
import { fieldsOf, GROUPS } from './schema.ts'
import { machineOf, wayText } from './way.ts'
import { PLANT_NAMES } from './way-field.ts'

interface Rule {
  readonly code: string
  readonly field: string
  readonly severity: 'error' | 'warning'
  readonly broken: (s: Scenario) => boolean
  readonly message: (s: Scenario) => Wording
  readonly remedy: string
}

/** What no single field can know: pairs that contradict each other, and pairs that make one look again. */
const RULES: readonly Rule[] = [
  {
    code: 'tube-bore',
    field: 'loop.tubeInnerDiameter_m',
    severity: 'error',
    broken: (s) => s.loop.tubeInnerDiameter_m >= s.loop.tubeOuterDiameter_m,
    message: (s) =>
      words`The tube's inside (${short(s.loop.tubeInnerDiameter_m)}) is not smaller than its outside (${short(s.loop.tubeOuterDiameter_m)}).`,
    remedy: 'Make the inside smaller, or the outside larger.',
  },
  {
    code: 'tube-spacing',
    field: 'loop.tubeSpacing_m',
    severity: 'error',
    broken: (s) => s.loop.tubeSpacing_m < s.loop.tubeOuterDiameter_m,
    message: (s) =>
      words`Tubes ${short(s.loop.tubeSpacing_m)} apart overlap at ${short(s.loop.tubeOuterDiameter_m)} outside.`,
    remedy: 'Space the tubes at least one diameter apart.',
  },
  {
    code: 'film-sum',
    field: 'cover.windowTransmittance_frac',
    severity: 'error',
    broken: ({ cover: c }) =>
      Math.max(c.windowTransmittance_frac, c.offWindowTransmittance_frac) + c.reflectance_frac > 1,
    message: () => words`What the film passes and what it reflects add up to more than 1.`,
    remedy: 'Lower the transmittance or the reflectance.',
  },
  {
    code: 'film-sun-sum',
    field: 'cover.solarTransmittance_frac',
    severity: 'error',
    broken: ({ cover: c }) => c.solarTransmittance_frac + c.reflectance_frac + c.scattered_frac > 1 + 1e-12,
    message: ({ cover: c }) =>
      words`The film would pass ${figure(c.solarTransmittance_frac, 'frac')} of the sunlight and send ${figure(c.reflectance_frac + c.scattered_frac, 'frac')} back: together more than 1.`,
    remedy: 'Lower what it passes or what it sends back.',
  },
  {
    code: 'stop-above-start',
    field: 'plan.stopDifference_K',
    severity: 'error',
    broken: ({ plan }) => plan.stopDifference_K >= plan.startDifference_K,
    message: ({ plan }) =>
      words`The pump would stop at ${figure(plan.stopDifference_K, 'K')}, which is not below its start at ${figure(plan.startDifference_K, 'K')}.`,
    remedy: 'Stop well below the start, or the pump will hunt.',
  },
  {
    code: 'setpoint-above-limit',
    field: 'plan.setpoint_C',
    severity: 'warning',
    broken: ({ plan, target }) =>
      target.kind !== 'adaptive' && plan.setpoint_C + plan.band_K > target.limit_C,
    message: ({ plan, target }) =>
      words`Cold is fully let in only at ${figure(plan.setpoint_C + plan.band_K, 'C')}, above the limit of ${figure(target.limit_C, 'C')}.`,
    remedy: 'Let cold in earlier.',
  },
  {
    code: 'store-floor-above-setpoint',
    field: 'plan.lowestStore_C',
    severity: 'error',
    broken: ({ plan }) => plan.lowestStore_C >= plan.setpoint_C,
    message: ({ plan }) =>
      words`The store stops at ${figure(plan.lowestStore_C, 'C')}, but cold is only let in above ${figure(plan.setpoint_C, 'C')}: nothing would ever be delivered.`,
    remedy: 'Let the store get colder than the room’s setpoint.',
  },
  {
    code: 'water-freezes',
    field: 'plan.freeze',
    severity: 'error',
    broken: ({ plan, loop }) => plan.freeze === 'glycol' && loop.fluid !== 'glycol',
    message: ({ loop }) => words`Glycol is named as freeze protection, but the fluid is ${loop.fluid}.`,
    remedy: 'Choose the glycol mix as the fluid, or another protection.',
  },
  {
    code: 'no-hour-counts',
    field: 'target.occupiedUntil_h',
    severity: 'error',
    broken: ({ target }) => countsNoHour(target.occupiedFrom_h, target.occupiedUntil_h),
    message: ({ target }) =>
      words`No full hour lies between ${figure(target.occupiedFrom_h, 'h')} and ${figure(target.occupiedUntil_h, 'h')}: the target would judge nothing.`,
    remedy: 'Count at least one hour, or make both the same for all day.',
  },
  {
    code: 'two-plants',
    field: 'job.way',
    severity: 'error',
    broken: (s) => s.job.way.filter((part) => Object.hasOwn(PLANT_NAMES, part)).length > 1,
    message: (s) => words`The way taken has more than one plant: ${wayText(s)}.`,
    remedy: 'Leave one of panels, direct, indirect and airConditioner.',
  },
  {
    code: 'area-beside-machine',
    field: 'target.area_m2',
    severity: 'warning',
    broken: (s) => machineOf(s) !== 'none' && !s.target.autoArea && s.target.area_m2 > 0,
    message: (s) =>
      words`The way taken has a machine in place of panels: the area of your own, ${figure(s.target.area_m2, 'm2')}, is not used.`,
    remedy: 'Take the machine back, or a way with panels.',
  },
  {
    code: 'tray-without-tank',
    field: 'store.deliveryKind',
    severity: 'warning',
    broken: ({ store }) => store.deliveryKind === 'drained' && !isTank(store.kind),
    message: () =>
      words`A drip tray is only for a tank: without one the coil is kept dry, above the dew point and its margin, and the figures are those of a dry coil.`,
    remedy: 'Choose a tank as the store, or the coil that is kept dry.',
  },
  {
    code: 'air-into-tank',
    field: 'loop.fluid',
    severity: 'error',
    broken: ({ loop, store }) => loop.fluid === 'air' && isTank(store.kind),
    message: () => words`Air panels cannot charge a water tank.`,
    remedy: 'Choose “the building itself” as the store, or water as the fluid.',
  },
]

/** Hours are judged by their beginning, 0…23. */
function countsNoHour(from_h: number, until_h: number): boolean {
  if (from_h === until_h) return false
  return from_h < until_h ? Math.ceil(from_h) >= until_h || from_h > 23 : from_h > 23 && until_h <= 0
}

/** Contradictions (errors) and odd pairs (warnings) between fields. */
export function crossFieldProblems(scenario: Scenario, file?: string): Problem[] {
  return RULES.filter((rule) => rule.broken(scenario)).map((rule) => ({
    code: rule.code,
    severity: rule.severity,
    ...said(rule.message(scenario)),
    remedy: rule.remedy,
    place: file === undefined ? { field: rule.field } : { file, field: rule.field },
  }))
}

/** Possible but unusual values: outside a field's usual span. */
export function unusualValues(scenario: Scenario, file?: string): Problem[] {
  const problems: Problem[] = []
  for (const group of GROUPS) {
    const values = scenario[group] as unknown as Record<string, unknown>
    for (const [name, field] of Object.entries(fieldsOf(group))) {
      const value = values[name]
      if (field.type !== 'number' || typeof value !== 'number') continue
      const [low, high] = field.usual
      if (value >= low && value <= high) continue
      const place = { field: `${group}.${name}`, ...(file === undefined ? {} : { file }) }
      const shown = (of: number): Figure => ({ value: of, unit: field.unit, digits: 3, largest: field.max })
      const wording = words`${field.label} is ${shown(value)}, outside the usual ${shown(low)} to ${shown(high)}.`
      problems.push({
        code: 'unusual-value',
        severity: 'warning',
        ...said(wording),
        remedy: 'Check that it is meant.',
        place,
      })
    }
  }
  return problems
}
