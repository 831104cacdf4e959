import { GRAVITY_MS2 } from '#model/outdoors/air'
import { count, figure, short, words } from '#model/basis/words'
import { unitTop_m, waterLine_m } from '#model/handover/drawing'
import { factsOf } from './facts-of.ts'
import { CLIPS_m, METER_RANGE } from './figures.ts'
import { partOf, type Part } from './part.ts'
import type { Plant } from './plant.ts'
import { ROOM_PIPE_m, roomCoil, ROOM_TEE_m } from './room-coil.ts'

const part = partOf('Cooling of the room')

/** Elbows of the way that is drawn; ends with a thread on V3, V4, pump, unit and tank, two each (common practice, no source). */
const ELBOWS = 8
const THREADED = 10
const MIXING_ENDS = 3
/** Most that V4 loses wide open, Pa: within what is reckoned for the pipe (common practice, no source). */
const VALVE_Pa = 1000

/** Valves and pipe between tank and room unit, all that is drawn. */
export function roomCircuit(plant: Plant, mixes: boolean): Part[] {
  const coil = roomCoil(plant)
  const size = figure(coil.bore_m, 'valveSize')
  const [least, most] = METER_RANGE.map((share) => figure(share * coil.water_m3s, 'liquidFlow', 2))
  return [
    part(count(1), words`shut-off valve ${size} out of the tank (V3)`),
    part(
      count(1),
      words`shut-off and balancing valve ${size} into the tank (V4), its scale reading ${least!} to ${most!}, losing ${figure(VALVE_Pa, 'head')} at most wide open; with V3 shut as well P2 can be taken out`,
    ),
    part(
      count(1),
      words`filling and drain valve ${figure(ROOM_TEE_m, 'valveSize')} with hose end, lowest point (D3); and an air vent ${figure(0.01, 'valveSize')}, opened by hand, highest point (AV), where the unit has none`,
    ),
    part(
      figure(ROOM_PIPE_m, 'm'),
      words`pipe ${figure(coil.bore_m, 'pipeBore')} there and back (PE-X with oxygen barrier, where the size does not say copper): measure your own, and raise P2’s head with it`,
    ),
    part(
      figure(ROOM_PIPE_m, 'm'),
      words`insulation for it ${short(plant.loopSpec.pipeInsulation_m)}, vapour-tight, taped at every joint`,
    ),
    part(count(Math.ceil(ROOM_PIPE_m / CLIPS_m)), words`clips for it, over the insulation, with shells`),
    part(count(ELBOWS), words`elbows of that pipe`),
    part(
      count(mixes ? 2 : 1),
      words`tees of that pipe: ${figure(ROOM_TEE_m, 'valveSize')} thread for D3${mixes ? ', and M1’s bypass' : ''}`,
    ),
    part(
      count(THREADED + (mixes ? MIXING_ENDS : 0)),
      words`adapters from that pipe to threads: ${size} at V3, V4, P2, unit and tank (${count(THREADED)})${mixes ? words`, ${figure(coil.mixingBore_m, 'valveSize')} at M1 (${count(MIXING_ENDS)})` : ''}`,
    ),
  ]
}

/** The room unit’s highest point over the tank’s water line, m; below it where negative. */
export function overWater_m(plant: Plant): number {
  const facts = factsOf(plant)
  return unitTop_m(facts) - (waterLine_m(facts) ?? 0)
}

/** Leak test of the room circuit over its highest working pressure (common practice, no source). */
const TEST_FACTOR = 1.5

/** Pressure of that test at D3, Pa: water to the tank’s line or the unit’s top, and P2’s head. */
export function roomTest_Pa(plant: Plant): number {
  const facts = factsOf(plant)
  const high_m = Math.max(unitTop_m(facts), waterLine_m(facts) ?? 0)
  return TEST_FACTOR * (plant.fluid.density_kgm3 * GRAVITY_MS2 * high_m + roomCoil(plant).head_Pa)
}
