/** Where nothing meets the target: the one thing that would have to change, each by itself, and how far. */
import { figure, words, type Figure, type Wording } from '#model/basis/words'
import { AIR_MEASURES, BUILDING_MEASURES } from '#model/design/measures'
import { describedRoom, FIELDS, type Scenario } from '#model/design/scenario'
import { missOf } from './decide-panels.ts'
import type { Combination, Trials } from './decide-trial.ts'

/** One change that is enough by itself, beside the measures and the plant of the nearest way. */
export interface Change {
  readonly field: string
  /** In SI, as the field counts. */
  readonly from: number
  readonly to: number
  /** "Limit: 27.4 °C in place of 26 °C". */
  readonly wording: Wording
}

/** A field that may be changed, from what it is to an end, in steps that are printed as they are. */
interface Lever {
  readonly field: string
  readonly from: number
  readonly to: number
  readonly step: number
  readonly change: (s: Scenario, value: number) => Scenario
  readonly said: (value: number) => Wording
}

const room = (s: Scenario, change: Partial<Scenario['room']>): Scenario => ({
  ...s,
  room: { ...s.room, ...change },
})
const target = (s: Scenario, change: Partial<Scenario['target']>): Scenario => ({
  ...s,
  target: { ...s.target, ...change },
})

/** The changes that are enough, each alone; empty where none of them is. */
export function nearestChanges(trials: Trials, nearest: Combination): Change[] {
  const measures = [...BUILDING_MEASURES, ...AIR_MEASURES].filter(({ id }) => nearest.measures.includes(id))
  const described = trials.described(measures)
  const meets = (lever: Lever, value: number): boolean => {
    const prepared = trials.with(measures, (s) => lever.change(s, value))
    return nearest.plant === 'panels'
      ? missOf(prepared, nearest.panelArea_m2, nearest.storeVolume_m3) <= 0
      : trials.run(prepared, measures, nearest.plant).meets
  }
  const levers = leversOf(described)
  const asked = nearest.plant === 'panels' ? levers : levers.filter(({ field }) => !PANELS_ONLY.has(field))
  return [...hoursChange(described, nearest), ...asked.flatMap((lever) => solved(lever, meets))]
}

/** The least change on the lever's own steps that is enough, found by halving; none where its end is not. */
function solved(lever: Lever, meets: (lever: Lever, value: number) => boolean): Change[] {
  const { from, to, step, field } = lever
  const steps = Math.floor(Math.abs(to - from) / step + 1e-9)
  if (steps < 1) return []
  const way = Math.sign(to - from) * step
  // on the round values that are printed
  const at = (k: number): number => Number((Math.round(from / step) * step + k * way).toFixed(6))
  let [low, high] = [0, steps]
  if (!meets(lever, at(high))) return []
  while (high - low > 1) {
    const middle = (low + high) >> 1
    if (meets(lever, at(middle))) high = middle
    else low = middle
  }
  return [{ field, from, to: at(high), wording: lever.said(at(high)) }]
}

/** Hours or degree-hours allowed: what the nearest way leaves over is known already. */
function hoursChange({ target: goal }: Scenario, nearest: Combination): Change[] {
  if (goal.kind === 'degreeHours') {
    const to = Math.ceil(goal.allowedDegreeHours_Kh + nearest.miss)
    const wording = words`Allow ${kelvinHours(to)} a year over the limit, in place of ${kelvinHours(goal.allowedDegreeHours_Kh)}.`
    return [{ field: 'target.allowedDegreeHours_Kh', from: goal.allowedDegreeHours_Kh, to, wording }]
  }
  if (goal.kind === 'peak') return []
  const to = Math.ceil(nearest.hoursOver_h)
  if (to > FIELDS.target.allowedHours_h.max) return []
  const hours = (value: number): Figure => figure(value, 'h', 4)
  const wording = words`Allow ${hours(to)} a year over the limit, in place of ${hours(goal.allowedHours_h)}.`
  return [{ field: 'target.allowedHours_h', from: goal.allowedHours_h, to, wording }]
}

const kelvinHours = (value: number): Figure => figure(value, 'Kh', 4)
/** Levers of the plant that are no levers of another. */
const PANELS_ONLY: ReadonlySet<string> = new Set(['store.delivery_WK'])

function leversOf(s: Scenario): readonly Lever[] {
  const described = describedRoom(s.room)
  const lever = (
    field: string,
    from: number,
    to: number,
    step: number,
    change: Lever['change'],
    unit: Figure['unit'],
    name: string,
    digits = 3,
  ): Lever => ({
    field,
    from,
    to,
    step,
    change,
    said: (value) =>
      words`${name}: ${figure(value, unit, digits)} in place of ${figure(from, unit, digits)}.`,
  })
  const gains_W = s.room.gains_W.reduce((most, gain) => Math.max(most, gain), 0)
  const wider = FIELDS.target.limit_C.max
  const U = (name: 'wallU_Wm2K' | 'roofU_Wm2K', label: string) =>
    lever(
      `room.${name}`,
      described[name],
      0.1,
      0.05,
      (t, value) => room(t, { ...describedRoom(t.room), [name]: value }),
      'Wm2K',
      label,
    )
  return [
    ...(s.target.kind === 'adaptive'
      ? []
      : [
          lever(
            'target.limit_C',
            s.target.limit_C,
            wider,
            0.1,
            (t, v) => target(t, { limit_C: v }),
            'C',
            'Limit',
          ),
        ]),
    U('wallU_Wm2K', 'Walls insulated to a U-value of'),
    U('roofU_Wm2K', 'Roof insulated to a U-value of'),
    lever(
      'room.shading_frac',
      s.room.shading_frac,
      0.05,
      0.05,
      (t, v) => room(t, { shading_frac: v }),
      'frac',
      'Glass shaded so that this share of the sun is left',
      2,
    ),
    {
      field: 'room.gains_W',
      from: 1,
      to: 0,
      step: 0.05,
      change: (t, v) => room(t, { gains_W: t.room.gains_W.map((gain) => gain * v) }),
      said: (v) =>
        words`Heat given off inside: at most ${figure(v * gains_W, 'W', 3)} in place of ${figure(gains_W, 'W', 3)}.`,
    },
    lever(
      'room.airChange_1h',
      s.room.airChange_1h,
      0.1,
      0.05,
      (t, v) =>
        room(t, {
          airChange_1h: v,
          airChangeWind_1hms: (t.room.airChangeWind_1hms * v) / Math.max(1e-9, s.room.airChange_1h),
        }),
      '1h',
      'Air changes through leaks',
    ),
    lever(
      'room.nightAirChange_1h',
      s.room.nightVent ? s.room.nightAirChange_1h : 0,
      FIELDS.room.nightAirChange_1h.max,
      0.5,
      (t, v) => room(t, { nightVent: true, nightAirChange_1h: v }),
      '1h',
      'Air changes through openings at night',
    ),
    lever(
      'room.contents_Jm2K',
      s.room.contents_Jm2K,
      FIELDS.room.contents_Jm2K.max,
      20_000,
      (t, v) => room(t, { contents_Jm2K: v }),
      'Jm2K',
      'Mass inside',
    ),
    lever(
      'target.mostHumid_frac',
      s.target.mostHumid_frac,
      0.9,
      0.01,
      (t, v) => target(t, { mostHumid_frac: v }),
      'frac',
      'Relative humidity let in inside',
      2,
    ),
    lever(
      'store.delivery_WK',
      s.store.delivery_WK,
      4 * s.store.delivery_WK,
      10,
      (t, v) => ({ ...t, store: { ...t.store, delivery_WK: Math.min(FIELDS.store.delivery_WK.max, v) } }),
      'WK',
      'Delivery into the room',
    ),
  ]
}
