import { figure, words, type Wording } from '#model/basis/words'
import { fadedAt_K, openAt_K } from '#model/building/year'
import type { Plant } from './plant.ts'

/** What is on and off while something holds; of those of one part that hold, the earlier one decides. */
export interface ControlState {
  /** What it controls: the panel loop, or the cooling of the room. */
  readonly part: 'loop' | 'room'
  readonly name: string
  readonly holds: Wording
  readonly then: string
}

/** Readings outside these are a lost or shorted sensor, °C (common practice, no source). */
const SENSE_C = [-40, 90] as const

/** The control as a table of states: the rules the year was simulated by, safety first. */
export function controlStates(plant: Plant): ControlState[] {
  return [...loopStates(plant), ...(plant.tank === null ? [] : roomStates(plant))]
}

function loopStates(plant: Plant): ControlState[] {
  const { plan } = plant.answer.scenario
  const { mover } = plant.names
  const off = `${mover} off`
  const state = (name: string, holds: Wording, then = off): ControlState => ({
    part: 'loop',
    name,
    holds,
    then,
  })
  const frost = state(
    'Frost',
    words`S1 under ${figure(plan.freezeLimit_C, 'C')}`,
    plan.freeze === 'drainBack'
      ? 'pump off: the panels drain back'
      : 'pump off, alarm: shut V1 and V2, open A, drain by D1',
  )
  return [
    state(
      'Sensor lost',
      words`one reads nothing, under ${figure(SENSE_C[0], 'C')} or over ${figure(SENSE_C[1], 'C')}`,
      `${off}, alarm`,
    ),
    ...(mover === 'pump' && plan.freeze !== 'glycol' ? [frost] : []),
    state('Out of season', words`running mean of S7 under ${figure(plan.seasonGate_C, 'C')}`),
    state('Store cold enough', words`S2 at or under ${figure(plan.lowestStore_C, 'C')}`),
    ...(plant.tank === null ? massStates(plant, state) : []),
    state(
      'Waiting',
      words`outside the hours it may run, or S1 less than ${figure(plan.startDifference_K, 'K')} under S2`,
    ),
    state(
      'Running',
      words`begun at ${figure(plan.startDifference_K, 'K')}; goes on until S4 is less than ${figure(plan.stopDifference_K, 'K')} under S3`,
      `${mover} on`,
    ),
  ]
}

/** Where the loop cools the slab or the building itself, it also keeps the room from harm. */
function massStates(
  { answer }: Plant,
  state: (name: string, holds: Wording) => ControlState,
): ControlState[] {
  const { plan, store } = answer.scenario
  return [
    state(
      'Dew guard',
      words`S2 less than ${figure(store.dewMargin_K, 'K')} above the dew point of S5 and S6`,
    ),
    state('Room cool enough', words`S5 at or under ${figure(plan.setpoint_C, 'C')}`),
  ]
}

function roomStates({ answer }: Plant): ControlState[] {
  const { plan, store } = answer.scenario
  const state = (name: string, holds: Wording, then: string): ControlState => ({
    part: 'room',
    name,
    holds,
    then,
  })
  return [
    state(
      'Sensor lost',
      words`S5, S6, S8${store.deliveryKind === 'drained' ? '' : ' or S9'} reads nothing`,
      'P2 off, alarm',
    ),
    state(
      'Room cool enough',
      words`S5 at or under ${figure(plan.setpoint_C, 'C')}, or the tank’s bottom (S8) less than ${figure(fadedAt_K(store), 'K')} colder than S5`,
      'P2 off',
    ),
    store.deliveryKind === 'drained'
      ? state('Tray full', words`the float of the tray is up`, 'fan and P2 off, alarm')
      : state(
          'Dew guard',
          words`supply (S9) less than ${figure(store.dewMargin_K, 'K')} above the dew point of S5 and S6`,
          'M1 mixes return in; P2 off if that is not enough',
        ),
    state(
      'Cooling',
      words`S5 above ${figure(plan.setpoint_C, 'C')} and the tank’s bottom (S8) ${figure(openAt_K(store), 'K')} colder`,
      `P2 on, opening with S5`,
    ),
  ]
}
