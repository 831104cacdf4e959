import { count, figure, short, words, type Wording } from '#model/basis/words'
import { thermometersOf } from './controls.ts'
import { builtDelivery, deliveredBy } from './delivered-by.ts'
import { partOf, type Part } from './part.ts'
import type { Plant } from './plant.ts'
import { roomCircuit } from './room-circuit.ts'
import { roomCoil } from './room-coil.ts'
import { RATED, ROOM_HEAD_Pa } from '#model/building/store'
import { headFigure } from './figures.ts'
import { massLoop } from './mass-loop.ts'
import { factsOf } from './facts-of.ts'
import { CABLES, drivenWires, readWires, RESIDUAL } from '#model/handover/drawing'
import { LONGEST_DUCT_m } from './mass-misfits.ts'
import { massPipes } from './mass-pipes.ts'

const part = partOf('Cooling of the room')

/** What brings the cold into the room: coil or surface, its pump and mixing valve, sized. */
export function roomParts(plant: Plant): Part[] {
  const { answer, tank } = plant
  const { store } = answer.scenario
  if (tank === null) return [part(count(1), massWords(plant))]
  const coil = roomCoil(plant)
  const air = store.deliveryKind === 'drained' || store.deliveryKind === 'surface'
  const mixes = store.deliveryKind !== 'drained'
  return [
    part(count(1), air ? fanCoilWords(plant) : surfaceWords(plant)),
    part(
      count(1),
      words`pump (P2), its speed set by the controller: ${figure(coil.water_m3s, 'liquidFlow', 2)} against ${figure(coil.head_Pa, 'head', 2)} (${air ? 'coil' : 'circuits'} ${figure(ROOM_HEAD_Pa.coil, 'head', 2)}${mixes ? words`, M1 ${figure(ROOM_HEAD_Pa.mixing, 'head', 2)}` : ''}, pipe the rest), about ${figure(coil.pump_W, 'W', 2)}, with a pair of unions`,
    ),
    ...roomCircuit(plant, mixes),
    ...(store.deliveryKind === 'surface'
      ? [
          part(
            count(1),
            words`condensate pipe ${figure(0.02, 'valveSize')} from the drip tray, falling 1 : 50 to a trap and outdoors or a drain: for the day the guard fails`,
          ),
        ]
      : []),
    ...(mixes
      ? [
          part(
            count(1),
            words`three-way mixing valve (M1) ${figure(coil.mixingBore_m, 'valveSize')}, ${figure(coil.kvs_m3s, 'valveFlow')}, with a 0–10 V drive, before P2, held by the dew guard`,
          ),
        ]
      : [
          part(
            count(1),
            words`condensate drain ${figure(0.02, 'valveSize')}, falling 1 : 50, with a trap, and a float switch in the tray`,
          ),
        ]),
  ]
}

/** A fan coil by what catalogues say, and what it gives here. */
function fanCoilWords(plant: Plant): Wording {
  const { store } = plant.answer.scenario
  const coil = roomCoil(plant)
  const tray =
    store.deliveryKind === 'drained'
      ? 'with drip tray and drain'
      : 'kept dry by the dew guard; a drip tray all the same'
  return words`fan coil (FC), ${tray}: ${figure(coil.ratedSensible_W, 'heat', 2)} sensible (about ${figure(coil.ratedTotal_W, 'heat', 2)} in all) at the catalogue’s ${figure(RATED.air_C, 'C')} air and ${figure(RATED.waterIn_C, 'C')} to ${figure(RATED.waterOut_C, 'C')} water (EN 1397), ${figure(coil.air_m3s, 'airFlow', 2)} of air with a fan of at most ${figure(coil.fan_W, 'W', 2)} whose speed can be set: that is the ${figure(store.delivery_WK, 'WK')} between store water and room air of the year. Any make with these figures. ${mostWords(plant)} ${powerOf(plant)}`
}

/** That fan and P2 are counted as listed; or, where their power is given, how far that is from the list. */
function powerOf(plant: Plant): Wording {
  const { pump_W, fan_W, counted_W } = roomCoil(plant)
  const listed_W = pump_W + fan_W
  if (Math.abs(counted_W - listed_W) < 0.05 * listed_W)
    return words`The year counts fan and P2 as listed, ${figure(counted_W, 'W', 2)} at full flow and less in proportion below it`
  return words`The year counts fan and P2 with the ${figure(counted_W, 'W', 2)} given as power of the delivery; by this list they draw ${figure(listed_W, 'W', 2)} at full flow: give 0 there to count what is listed`
}

function mostWords(plant: Plant): Wording {
  const { most_W, mostBelow_K } = roomCoil(plant)
  return words`Here it gave ${figure(most_W, 'heat', 2)} at the most, with water ${figure(mostBelow_K, 'K')} colder than the room.`
}

/** Heat taken on by cooled surfaces, W/m²K: ceilings EN 14240 and EN 1264, floors EN 1264 (from memory). */
const SURFACES_Wm2K = { ceiling: 9, roofPipes: 8, floorPipes: 6 } as const

function surfaceWords(plant: Plant): Wording {
  const { deliveryKind, delivery_WK } = plant.answer.scenario.store
  const { room } = plant.answer.scenario
  if (deliveryKind !== 'ceiling') return massWords(plant)
  const area_m2 = delivery_WK / SURFACES_Wm2K.ceiling
  return words`cooled ceiling panels of ${figure(area_m2, 'm2', 2)}, at ${figure(SURFACES_Wm2K.ceiling, 'Wm2K')} (${figure(delivery_WK, 'WK')} in all; the ceiling has ${figure(room.length_m * room.width_m, 'm2', 3)}). ${mostWords(plant)}`
}

function massWords(plant: Plant): Wording {
  const { store } = plant.answer.scenario
  const wet = plant.loopSpec.fluid !== 'air'
  if (!wet && plant.tank === null) return ductWords(plant)
  if (builtDelivery(store) === 'surface')
    return words`${deliveredBy(store)}: ${figure(store.delivery_WK, 'WK')} between fluid and mass`
  const { water_m3s } = roomCoil(plant)
  const pipes = massLoop(plant) ?? massPipes(store.delivery_WK, water_m3s, ROOM_HEAD_Pa.coil)
  return words`${deliveredBy(store)}: about ${figure(pipes.length_m, 'm', 2)} of oxygen-tight pipe ${figure(pipes.inner_m, 'pipeBore')}, ${short(pipes.spacing_m)} apart in concrete or screed, in ${count(pipes.circuits)} ${pipes.circuits === 1 ? 'circuit' : 'circuits of equal length on a manifold with a valve each'} (${figure(store.delivery_WK, 'WK')} between fluid and mass, from pipe wall and concrete around it); ${figure(pipes.volume_m3, 'content', 2)} of water in them, ${figure(pipes.loss_Pa, 'head', 2)} at their flow. Laid before the concrete, tied to the mesh, and kept under test pressure while it is poured`
}

/** What an air loop runs through in the mass. */
function ductWords(plant: Plant): Wording {
  const { store } = plant.answer.scenario
  const duct = massLoop(plant)!
  return words`air passage in the cooled mass, tight and laid with a fall to a drain: about ${figure(duct.length_m, 'm', 2)} of duct ${short(duct.inner_m)} inside in one run${duct.length_m > LONGEST_DUCT_m ? words`, which is more than the ${figure(LONGEST_DUCT_m, 'm')} that are laid: not buildable so (see the stamp)` : words``}, its turns ${short(duct.spacing_m)} apart (${figure(store.delivery_WK, 'WK')} between air and duct); it loses ${headFigure(plant, duct.loss_Pa)}`
}

/** Cable runs from the controller, reckoned along the walls; what a sensor cable has more to the roof, m (common practice, no source). */
const RUN_SPARE_m = 2

/** Supply, cables by kind, alarm. */
function cableParts(plant: Plant): Part[] {
  const control = partOf('Control')
  const { room, panel } = plant.answer.scenario
  const facts = factsOf(plant)
  const wires = [...drivenWires(facts), ...readWires(facts)]
  const run_m = room.length_m / 2 + room.width_m / 2 + room.height_m + RUN_SPARE_m
  const lengths = Object.entries(CABLES).map(([kind, cable]) => {
    const mine = wires.filter((wire) => wire.cable === kind)
    const supply = kind === 'mains' ? 1 : 0
    const toRoof_m = mine.some(({ mark }) => mark === 'S1') ? panel.height_m + room.width_m / 2 : 0
    return { cable, cores: mine.length + supply, length_m: (mine.length + supply) * run_m + toRoof_m }
  })
  return [
    control(
      count(1),
      words`breaker of 6 A (15 A at 120 V; common practice, no source) and ${RESIDUAL} (RD), on a circuit of its own in the board, and an isolator (IS)`,
    ),
    control(
      count(1),
      words`splash-proof box (CT) for the controller, with a 24 V supply and terminals; an alarm lamp or buzzer (AL)`,
    ),
    ...lengths
      .filter(({ cores }) => cores > 0)
      .map(({ cable, cores, length_m }) =>
        control(
          figure(Math.ceil(length_m), 'm'),
          words`cable ${cable}, ${count(cores)} ${cores === 1 ? 'run' : 'runs'} as drawn, reckoned along the walls: measure yours`,
        ),
      ),
  ]
}

/** Controller, sensors and supply. */
export function controlParts(plant: Plant): Part[] {
  const { names, answer, tank } = plant
  const control = partOf('Control')
  const thermometers = thermometersOf(plant)
  const guard = answer.scenario.store.dewMargin_K > 0
  const mover = names.mover === 'pump' ? 'P1' : 'FN'
  const fan = factsOf(plant).roomUnit === 'fanCoil'
  const outputs =
    tank === null
      ? `${mover} (switched) and an alarm`
      : answer.scenario.store.deliveryKind === 'drained'
        ? `${mover} (switched), P2 (0–10 V or pulses), the coil’s fan, and an alarm; inputs for the floats FS and LS`
        : `${mover} (switched), P2 and M1 (0–10 V), the coil’s fan where there is one, and an alarm; an input for the float LS`
  return [
    control(
      count(1),
      words`controller that can be programmed with the table of states: ${count(thermometers.count)} thermometer inputs and one for humidity, a clock that reckons sunset and sunrise from date and position; outputs for ${outputs}`,
    ),
    control(
      count(tank === null ? 1 : 2),
      words`hand switch off / auto / hand, that can be locked, on the controller’s box, rated for what it draws: HS for ${mover}${tank === null ? '' : words`, H2 for P2${fan ? ' with the coil’s fan' : ''}, its hand giving full speed (10 V)`}`,
    ),
    control(
      count(thermometers.count),
      words`thermometers (${thermometers.marks}), Pt1000 or like, good to ${figure(0.2, 'K')}, S3 and S4 paired; screened cable, apart from mains`,
    ),
    control(
      count(1),
      words`humidity sensor (S6), good to 3 % of relative humidity${guard ? ', for the dew guard' : ''}`,
    ),
    ...cableParts(plant),
  ]
}
