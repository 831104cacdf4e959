import type { Plant } from './plant.ts'
import { figure, words, type Figure, type Wording, line, type SheetLine } from '#model/basis/words'

/** What the table of states has no room for: frost, where panels do not run empty by themselves. */
export function controlLines(plant: Plant): SheetLine[] {
  const drains = plant.names.mover === 'pump' && plant.answer.scenario.plan.freeze === 'drainBack'
  return drains ? [] : [line('Frost', frost(plant))]
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

function frost({ answer, names, fluid, loopSpec }: Plant): Wording {
  const { freeze, freezeLimit_C } = answer.scenario.plan
  const limit: Figure = figure(freezeLimit_C, 'C')
  if (names.mover === 'fan')
    return words`no frost guard needed in an air loop; keep condensate from freezing in the ducts`
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
    line(
      'S1 panel',
      'back of the plate, middle of a top module, clamped with paste, insulated over; reached by a hatch of 100 mm (4 in) in foam and back sheet, screwed on',
    ),
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
