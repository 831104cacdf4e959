import { count, figure, words, type Wording } from '#model/basis/words'
import { fadedAt_K, openAt_K } from '#model/building/year'
import { hasDewSupply, mayRun } from './controls.ts'
import { factsOf } from './facts-of.ts'
import type { Plant } from './plant.ts'
import { quantitiesOf } from './quantities.ts'
import { REST_min } from './rest.ts'

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
/** A frost stop ends so far over its limit, K (common practice, no source). */
const FROST_OVER_K = 2

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
    words`S1 under ${figure(plan.freezeLimit_C, 'C')}, until it is ${figure(FROST_OVER_K, 'K')} over that`,
    plan.freeze === 'drainBack'
      ? 'pump off: the panels drain back'
      : 'pump off, alarm: shut V1 and V2, open A, drain by D1',
  )
  return [
    state(
      'By hand',
      words`HS is on hand or on off: no row below counts, not even Frost, so only while someone is beside it`,
      `${mover} on, or off, as set`,
    ),
    state(
      'Sensor lost',
      words`${loopSensors(plant)}: one reads nothing, under ${figure(SENSE_C[0], 'C')} or over ${figure(SENSE_C[1], 'C')}`,
      `${off}, alarm`,
    ),
    ...(mover === 'pump' && plan.freeze !== 'glycol' ? [frost] : []),
    ...(plant.tank === null
      ? []
      : [state('Low water', words`the float LS in the tank is down`, `${off}, alarm`)]),
    state(
      'Out of season',
      words`running mean of S7 under ${figure(plan.seasonGate_C, 'C')}: at midnight 0.8 of it and 0.2 of the mean of the day gone; begun with the first day’s`,
    ),
    state('Store cold enough', words`S2 at or under ${figure(plan.lowestStore_C, 'C')}`),
    ...(plant.tank === null ? massStates(plant, state) : []),
    ...(plan.kind === 'allDay' ? [] : [state('Outside its hours', words`not ${mayRun(plant)}`)]),
    state(
      'Resting',
      words`it stopped less than ${count(REST_min)} min ago (common practice, no source)`,
      `${mover} stays off`,
    ),
    state(
      'Waiting',
      words`the ${mover} is at rest and S1 is less than ${figure(plan.startDifference_K, 'K')} under S2`,
      `${mover} stays off`,
    ),
    state(
      'No more to gain',
      words`the ${mover} is running, ${roundWords(plant)}, and S4 is less than ${figure(plan.stopDifference_K, 'K')} under S3`,
    ),
    state(
      'Running',
      words`none of the above: begun once S1 is ${figure(plan.startDifference_K, 'K')} under S2, whatever S1 reads from then on`,
      `${mover} on`,
    ),
  ]
}

/** What the loop is controlled by: without one of these it cannot be. */
function loopSensors(plant: Plant): string {
  if (plant.tank === null) return 'S1 to S7'
  return 'S1 to S4 or S7'
}

/** S4 and S3 say something only once what left the store has come back. */
function roundWords(plant: Plant): Wording {
  if (plant.names.mover === 'fan') return words`the air has been round once`
  const { loopVolume_m3, massVolume_m3 } = quantitiesOf(plant)
  const round_min = Math.ceil((loopVolume_m3 + massVolume_m3) / plant.flow_m3s / 60)
  return words`the water has been round once (about ${count(round_min)} min)`
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

function roomStates(plant: Plant): ControlState[] {
  const { answer } = plant
  const { plan, store } = answer.scenario
  const mixes = hasDewSupply(plant)
  const state = (name: string, holds: Wording, then: string): ControlState => ({
    part: 'room',
    name,
    holds,
    then,
  })
  const fan = factsOf(plant).roomUnit === 'fanCoil'
  const off = fan ? 'P2 and fan off' : 'P2 off'
  return [
    state(
      'By hand',
      words`H2 is on hand or on off: no row below counts, so only while someone is beside it`,
      `P2${fan ? ' and fan' : ''} at full speed, or off`,
    ),
    state(
      'Sensor lost',
      words`S5, S6${store.deliveryKind === 'drained' ? ' or S8' : ', S8 or S9'} reads nothing`,
      `${off}, alarm`,
    ),
    state(
      'Room cool enough',
      words`S5 at or under ${figure(plan.setpoint_C, 'C')}, or the tank’s bottom (S8${mixes ? '; S9 where M1 mixes' : ''}) less than ${figure(fadedAt_K(answer.store), 'K')} colder than S5`,
      off,
    ),
    store.deliveryKind === 'drained'
      ? state('Tray full', words`the float of the tray is up`, 'fan and P2 off, alarm')
      : state(
          'Dew guard',
          words`supply (S9) less than ${figure(store.dewMargin_K, 'K')} above the dew point of S5 and S6`,
          `M1 mixes return in; ${off} if that is not enough`,
        ),
    state(
      'Cooling',
      words`none of the above: P2 full from S5 at ${figure(plan.setpoint_C + plan.band_K, 'C')} with the tank’s bottom (S8) ${figure(openAt_K(answer.store), 'K')} colder, less below either (a controller that only switches begins at ${figure(openAt_K(answer.store), 'K')})`,
      fan ? 'P2 and the coil’s fan on, both speeds opening with S5' : 'P2 on, opening with S5',
    ),
  ]
}
