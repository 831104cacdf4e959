import fc from 'fast-check'
import { designFlow, outOfRange } from '#model/design/assembly'
import { crossFieldProblems, type Field, type Scenario, fieldsOf, GROUPS, hold } from '#model/design/scenario'

/** Values from the usual span are drawn this much more often than from the whole range. */
const USUAL_WEIGHT = 6
/** A day profile's own range reaches 20 kW for halls; a random shed stays under this in most hours, W. */
const USUAL_GAIN_W = 400

/** Evenly drawn: the ends, which fast-check likes best, are asked for by themselves below. */
export function between(min: number, max: number, whole = false): fc.Arbitrary<number> {
  if (whole) return fc.noBias(fc.integer({ min, max }))
  return fc.noBias(fc.integer({ min: 0, max: PARTS })).map((part) => min + ((max - min) * part) / PARTS)
}
const PARTS = 10_000

/** Valid values of one field; of a way taken none, which changes what every other field is simulated with: mostly usual ones, now and then the whole range and its two ends. */
export function fieldValue(field: Field): fc.Arbitrary<unknown> {
  switch (field.type) {
    case 'number': {
      const whole = field.unit === 'count'
      const [low, high] = field.usual
      return fc.oneof(
        { arbitrary: between(low, high, whole), weight: USUAL_WEIGHT },
        { arbitrary: between(field.min, field.max, whole), weight: 1 },
        { arbitrary: fc.constantFrom(field.min, field.max), weight: 1 },
      )
    }
    case 'choice':
      return fc.constantFrom(...field.options)
    case 'switch':
      return fc.boolean()
    case 'text':
      return fc
        .string({ maxLength: field.maxLength, unit: 'grapheme' })
        .map((t) => t.slice(0, field.maxLength))
    case 'several':
      return fc.constant(field.default)
    case 'dayProfile':
      return fc.array(between(field.min, Math.min(field.max, USUAL_GAIN_W)), {
        minLength: 24,
        maxLength: 24,
      })
  }
}

/** Fields younger than the first soak: drawn after all others, so that those keep their draws. */
const LATE: Partial<Record<(typeof GROUPS)[number], readonly string[]>> = {
  store: ['doorWidth_m', 'floorLoad_kgm2'],
}

function group(name: (typeof GROUPS)[number], late: boolean): fc.Arbitrary<Record<string, unknown>> {
  const own = Object.entries(fieldsOf(name)).filter(([key]) => (LATE[name] ?? []).includes(key) === late)
  return fc.record(Object.fromEntries(own.map(([key, field]) => [key, fieldValue(field)])))
}

const drawn = (late: boolean) =>
  fc.record(Object.fromEntries(GROUPS.map((name) => [name, group(name, late)])))

/** Any field anywhere in its range. */
export const anyFields: fc.Arbitrary<Scenario> = fc
  .tuple(drawn(false), drawn(true))
  .map(
    ([early, late]) =>
      Object.fromEntries(
        GROUPS.map((name) => [name, { ...early[name], ...late[name] }]),
      ) as unknown as Scenario,
  )

/** Valid scenarios: those, then pairs that contradict each other brought together. */
export const randomScenario: fc.Arbitrary<Scenario> = anyFields.map(agreeing)

/** What the cross-field rules and the walls' size ask, so that no draw is thrown away. */
export function agreeing(s: Scenario): Scenario {
  const bore_m = Math.min(s.loop.tubeInnerDiameter_m, 0.9 * s.loop.tubeOuterDiameter_m)
  const most = 1 - s.cover.reflectance_frac
  const windowed = (window_m2: number, along_m: number, behind: string): number =>
    behind === 'outdoors' ? Math.min(window_m2, 0.8 * along_m * s.room.height_m) : 0
  const tank = s.store.kind === 'mixed' || s.store.kind === 'layered'
  const fluid = s.loop.fluid === 'air' && tank ? 'water' : s.loop.fluid
  const fixed: Scenario = {
    ...s,
    cover: {
      ...s.cover,
      scattered_frac: Math.min(s.cover.scattered_frac, Math.max(0, most - s.cover.solarTransmittance_frac)),
      windowTransmittance_frac: Math.min(s.cover.windowTransmittance_frac, most),
      offWindowTransmittance_frac: Math.min(s.cover.offWindowTransmittance_frac, most),
      solarTransmittance_frac: Math.min(s.cover.solarTransmittance_frac, most),
    },
    loop: {
      ...s.loop,
      fluid,
      tubeInnerDiameter_m: Math.max(bore_m, 0.002),
      tubeSpacing_m: Math.max(s.loop.tubeSpacing_m, s.loop.tubeOuterDiameter_m),
    },
    plan: {
      ...s.plan,
      stopDifference_K: Math.min(s.plan.stopDifference_K, 0.5 * s.plan.startDifference_K),
      lowestStore_C: Math.min(s.plan.lowestStore_C, s.plan.setpoint_C - 0.5),
      freeze: s.plan.freeze === 'glycol' && fluid !== 'glycol' ? 'stop' : s.plan.freeze,
    },
    target: {
      ...s.target,
      occupiedFrom_h: Math.min(23, Math.floor(s.target.occupiedFrom_h)),
      occupiedUntil_h: Math.ceil(s.target.occupiedUntil_h),
    },
    room: {
      ...s.room,
      windowFront_m2: windowed(s.room.windowFront_m2, s.room.length_m, s.room.behindFront),
      windowRight_m2: windowed(s.room.windowRight_m2, s.room.width_m, s.room.behindRight),
      windowBack_m2: windowed(s.room.windowBack_m2, s.room.length_m, s.room.behindBack),
      windowLeft_m2: windowed(s.room.windowLeft_m2, s.room.width_m, s.room.behindLeft),
    },
  }
  return checked(suited(fixed))
}

/** Fan of the delivery, W for each W/K of it, up to which it is in range. */
const FAN_K = 1

/**
 * A pump or fan that would only warm what it moves is brought into range as a person would do it: bore and flow left to be
 * chosen, and where that does not do, the lift given up and wider tubes taken. What is out of range after that is left as it is, for the range check.
 */
function suited(scenario: Scenario): Scenario {
  const { store, loop } = scenario
  const power_W = Math.min(store.deliveryPower_W, FAN_K * store.delivery_WK)
  const quiet = { ...scenario, store: { ...store, deliveryPower_W: power_W } }
  const chosen = { ...loop, autoFlow: true, autoPipe: true }
  const wide = { ...chosen, lift_m: 0, tubeInnerDiameter_m: Math.max(WIDE_m, loop.tubeInnerDiameter_m) }
  const outer = {
    tubeOuterDiameter_m: Math.max(loop.tubeOuterDiameter_m, wide.tubeInnerDiameter_m / 0.9),
  }
  const spacing = { tubeSpacing_m: Math.max(loop.tubeSpacing_m, outer.tubeOuterDiameter_m) }
  const tried = [loop, chosen, { ...wide, ...outer, ...spacing }].map((one) => ({ ...quiet, loop: one }))
  return tried.find(inRange) ?? quiet
}
const WIDE_m = 0.012

function inRange(scenario: Scenario): boolean {
  const own = hold(scenario, { area_m2: scenario.target.area_m2 })
  return outOfRange({ scenario: own, flow_kgsm2: designFlow(own) }) === null
}

function checked(fixed: Scenario): Scenario {
  const errors = crossFieldProblems(fixed).filter((problem) => problem.severity === 'error')
  if (errors.length > 0) throw new Error(`the generator made a contradiction: ${errors[0]!.message}`)
  return fixed
}
