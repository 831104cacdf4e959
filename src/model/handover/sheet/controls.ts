import { fadedAt_K, openAt_K } from '#model/building/year'
import type { Plant } from './plant.ts'
import { count, figure, words, type Figure, type Wording, line, type SheetLine } from '#model/basis/words'
import { REST_min } from './rest.ts'

/** What starts and stops the loop and the delivery: the same rules the year was simulated by. */
export function controlLines(plant: Plant): SheetLine[] {
  const { plan } = plant.answer.scenario
  const { mover } = plant.names
  const Mover = mover === 'pump' ? 'Pump' : 'Fan'
  return [
    line(`${Mover} may run`, mayRun(plant)),
    line(
      `${Mover} starts`,
      words`when the resting panel (S1) is ${figure(plan.startDifference_K, 'K')} colder than ${sinkName(plant)} (S2)`,
    ),
    line(
      `${Mover} stops`,
      words`when the return (S4) is less than ${figure(plan.stopDifference_K, 'K')} colder than the supply (S3), or S2 has reached ${figure(plan.lowestStore_C, 'C')}`,
    ),
    ...restLines(),
    line(
      'Season',
      words`off while the running mean outdoors (S7, days weighing 0.8 each) is under ${figure(plan.seasonGate_C, 'C')}`,
    ),
    ...deliveryLines(plant),
    line('Frost', frost(plant)),
  ]
}

/** What spares pump or fan, and what lets it be tried at any hour. */
function restLines(): SheetLine[] {
  return [
    line(
      'Rest',
      words`off for ${count(REST_min)} min at least after each stop (common practice, no source; the year leaves it out)`,
    ),
    line(
      'By hand',
      words`a switch HS on the controller, off / auto / hand, that can be locked: auto but for start-up and repair`,
    ),
  ]
}

/** The hours in which the loop may run. */
export function mayRun({ answer }: Pick<Plant, 'answer'>): Wording {
  const { kind, startHour_h, endHour_h } = answer.scenario.plan
  if (kind === 'nightOnly') return words`from sunset to sunrise`
  if (kind === 'allDay') return words`at any hour`
  return words`from ${clock(startHour_h)} to ${clock(endHour_h)}, local standard time (no summer time)`
}

/** `20:30`. */
function clock(hour_h: number): string {
  const whole = Math.floor(hour_h)
  return `${String(whole).padStart(2, '0')}:${String(Math.round((hour_h - whole) * 60)).padStart(2, '0')}`
}

const atSlab = ({ kind, deliveryKind }: Plant['answer']['scenario']['store']): boolean =>
  kind === 'slab' || deliveryKind === 'floorPipes'

function sinkName({ answer, tank }: Plant): string {
  if (tank !== null) return 'the top of the tank'
  const { store } = answer.scenario
  if (atSlab(store)) return 'the slab'
  return store.deliveryKind === 'surface' ? 'the room’s cooled mass' : 'the ceiling'
}

function deliveryLines({ answer, tank, names }: Plant): SheetLine[] {
  const { plan, store } = answer.scenario
  const margin = figure(store.dewMargin_K, 'K')
  const above = figure(plan.setpoint_C, 'C')
  if (tank === null)
    return [
      line('Room', words`${names.mover} only while the room air (S5) is above ${above}`),
      line(
        'Dew guard',
        words`stop while the cooled mass (S2) is less than ${margin} above the indoor dew point (S6)`,
      ),
    ]
  const full_C = figure(plan.setpoint_C + plan.band_K, 'C')
  return [
    line(
      'Room cooling',
      words`on above ${above} room air (S5), fully open at ${full_C}; full while the tank’s bottom (S8)${hasDewSupply({ tank, answer }) ? ', or the supply (S9) where M1 mixes,' : ''} is ${figure(openAt_K(answer.store), 'K')} colder than the room, less below that, off at ${figure(fadedAt_K(answer.store), 'K')} (a controller that only switches: on and off at these)`,
    ),
    store.deliveryKind === 'drained'
      ? line(
          'Condensate',
          words`the coil may be colder than the dew point: no dew guard; the fan stops when the tray’s float rises`,
        )
      : line(
          'Dew guard',
          words`water to the room (S9) never less than ${margin} above the indoor dew point (S6): mix or stop`,
        ),
  ]
}

function frost({ answer, names, fluid, loopSpec, tank }: Plant): Wording {
  const { freeze, freezeLimit_C } = answer.scenario.plan
  const limit: Figure = figure(freezeLimit_C, 'C')
  if (names.mover === 'fan')
    return words`no frost guard needed in an air loop; keep condensate from freezing in the ducts`
  if (freeze === 'drainBack')
    return words`below ${limit} on the plate (S1) the pump stops and the panel drains back to ${tank === null ? 'its vessel' : 'the tank'} by its own slope`
  if (freeze === 'glycol' && loopSpec.fluid !== 'glycol')
    return words`glycol is the plan, but the loop holds water: change one of them before building`
  if (freeze === 'glycol')
    return words`the mix begins to freeze at ${figure(fluid.freezing_C, 'C')}; watch the plate (S1) below ${limit} and test the mix every autumn`
  const { freezeRisk_h } = answer.year
  const often =
    freezeRisk_h > 0
      ? words`; the simulated year had ${figure(freezeRisk_h, 'h')} of that in season`
      : words``
  return words`pump stops below ${limit} on the plate (S1) and the alarm sounds; that alone does not save water in the plate, so on a night that may be so cold shut V1 and V2, open the vents A and drain the panel by D1, and fill it again after it${often}. Drain it before winter and leave it empty; where nobody is there at night choose glycol or drain-back`
}

/** Where the sensors go. */
export function sensorLines({ tank, answer, names }: Plant): SheetLine[] {
  const top =
    tank !== null
      ? 'tank, a hand’s breadth under the water line, in a pocket'
      : atSlab(answer.scenario.store)
        ? 'middle of the slab’s depth, between two pipes'
        : 'on the cooled mass, out of draughts'
  return [
    line('S1 panel', 'back of the plate, middle of a top module, clamped with paste and insulated over'),
    line('S2 store', top),
    line('S3 supply', `${names.pipe} to the panel, near the store, under the insulation`),
    line('S4 return', `${names.pipe} from the panel, near the store, under the insulation`),
    line('S5 room', words`inner wall at ${figure(1.5, 'rough', 2)}, out of sun and air stream`),
    line('S6 humidity', 'beside S5, in the same air: the dew point is reckoned from both'),
    line('S7 outdoors', words`shaded side at ${figure(1.5, 'rough', 2)}, off the wall, away from the panels`),
    ...(tank === null
      ? []
      : [
          line(
            'S8 store bottom',
            'tank, a hand’s breadth above its bottom, in a pocket: where the room is served',
          ),
        ]),
    ...(hasDewSupply({ tank, answer })
      ? [line('S9 room supply', 'pipe to the room, after M1 and P2, under the insulation: for the dew guard')]
      : []),
  ]
}

/** True where the tank is kept in layers. */
export const inLayers = ({ answer }: Pick<Plant, 'answer'>): boolean =>
  answer.scenario.store.kind === 'layered'

/** True where the dew guard mixes water for the room. */
export const hasDewSupply = ({ tank, answer }: Pick<Plant, 'tank' | 'answer'>): boolean =>
  tank !== null && answer.scenario.store.deliveryKind !== 'drained'

/** Marks of the sensors above that are thermometers: all but S6. */
export function thermometersOf(plant: Plant): { readonly count: number; readonly marks: string } {
  if (plant.tank === null) return { count: 6, marks: 'S1–S5, S7' }
  return hasDewSupply(plant) ? { count: 8, marks: 'S1–S5, S7–S9' } : { count: 7, marks: 'S1–S5, S7, S8' }
}
