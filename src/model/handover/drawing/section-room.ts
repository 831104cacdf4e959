import { figure, short, words, type Text } from '#model/basis/words'
import type { PlantFacts } from './facts.ts'
import type { At, Levels } from './levels.ts'
import { box, disc, head, label, path, type Shape, type Spot } from './shapes.ts'

/** A fan coil on the wall: deep and high, and its lower edge under the ceiling, m (common practice, no source). */
const COIL_m = { deep: 0.25, high: 0.6, under: 0.8 }
/** A manifold in its box on the wall, m (common practice, no source). */
const MANIFOLD_m = { deep: 0.12, high: 0.5, low: 0.4 }
/** Rooms lower than this have their coil on the floor, m. */
const LOW_m = 1.9
/** The pair of pipes along the floor, on paper above it, and the pump on it, mm. */
const PAIR = { out: 1.3, back: 3.1, pump: 1.6 }

/** Lower edge of the coil above the floor, m. */
const lowEdge_m = (roomHeight_m: number): number => (roomHeight_m < LOW_m ? 0.1 : roomHeight_m - COIL_m.under)

/** Highest point of the room's unit above the floor, m. */
export function unitTop_m({ roomUnit, roomHeight_m }: Pick<PlantFacts, 'roomUnit' | 'roomHeight_m'>): number {
  if (roomUnit === 'fanCoil') return lowEdge_m(roomHeight_m) + COIL_m.high
  return roomUnit === 'ceiling' ? roomHeight_m : MANIFOLD_m.low + MANIFOLD_m.high
}

/** What brings the cold into the room, where a tank keeps it, with its pipes along wall and floor to the tank. */
export function roomUnitOf(facts: PlantFacts, levels: Levels, at: At, mm: (m: number) => number): Shape[] {
  const { roomUnit, roomHeight_m, roomWidth_m } = facts
  if (roomUnit === null) return []
  if (roomUnit === 'ceiling') {
    const [x, y] = at(0.1 * roomWidth_m, roomHeight_m)
    const foot: Spot = [x + 1, y + 1.8]
    return [
      box([x, y + 0.6], mm(0.5 * roomWidth_m), 1.2, 'line', 'grey'),
      label([x + 5, y + 5], 'CP', 'start'),
      ...pairOf(facts, levels, at, mm, foot),
    ]
  }
  const { deep, high } = roomUnit === 'pipes' ? MANIFOLD_m : COIL_m
  const low_m = roomUnit === 'pipes' ? MANIFOLD_m.low : lowEdge_m(roomHeight_m)
  const [x, y] = at(0, low_m + high)
  const foot = at(deep, low_m)
  return [
    box([x, y], Math.max(mm(deep), 3.4), mm(high), 'line', 'pale'),
    label(
      [Math.max(foot[0], x + 3.4) + 1.5, (y + foot[1]) / 2 + 1],
      roomUnit === 'pipes' ? 'MF' : 'FC',
      'start',
    ),
    ...(roomUnit === 'pipes' ? [] : condensate([x, foot[1]])),
    ...pairOf(facts, levels, at, mm, [x + 1, foot[1]]),
  ]
}

/** From the tray through the wall. */
function condensate([x, y]: Spot): Shape[] {
  const out: Spot = [x - 3.4, y + 1]
  return [path([[x, y - 0.6], out]), head(out, [-1, 0.1], 1.8)]
}

/** Out and back between unit and tank: down the wall, along the floor, P2 at the tank’s foot; it ends where the tank is connected. */
function pairOf(
  { tank }: PlantFacts,
  levels: Levels,
  at: At,
  mm: (m: number) => number,
  from: Spot,
): Shape[] {
  if (tank === null) return []
  const floor = at(0, 0)[1]
  const [left, wide] = [at(levels.tank_m, 0)[0], mm(tank.diameter_m)]
  const out = at(levels.tank_m + 0.3 * tank.diameter_m, tank.foot_m + tank.end_m)
  const back = at(levels.tank_m + 0.14 * tank.diameter_m, tank.foot_m + tank.outlet_m)
  const low = floor - PAIR.out
  const high = floor - PAIR.back
  const pump: Spot = [left - 14, low]
  const roomForPump = wide > 8 && pump[0] - from[0] > 10
  return [
    path([out, [out[0], low], [from[0], low], from]),
    path([[from[0] + 1.7, from[1]], [from[0] + 1.7, high], [back[0], high], back], 'hidden'),
    disc(out, 0.6, 'ink'),
    disc(back, 0.6, 'paper'),
    ...(roomForPump ? [disc(pump, 1.2, 'paper'), label([pump[0], high - 1.2], 'P2', 'middle')] : []),
  ]
}

export function roomUnitKey({ roomUnit, roomHeight_m, drained }: PlantFacts): { mark: string; what: Text }[] {
  if (roomUnit === null) return []
  const pair = {
    mark: '── ╌╌',
    what: words`thin: pipes of the room cooling, out and back, along wall and floor; P2, V3, V4${drained ? '' : ', M1'} and D3 at the tank’s foot`,
  }
  if (roomUnit === 'ceiling')
    return [
      pair,
      { mark: 'CP', what: 'cooled ceiling panels, with a hand vent at the highest point of their pipes' },
    ]
  if (roomUnit === 'pipes')
    return [pair, { mark: 'MF', what: 'manifold of the pipes in floor or ceiling, on the wall' }]
  return [
    pair,
    {
      mark: 'FC',
      what: words`fan coil, on any wall but that of the tank: lower edge ${figure(lowEdge_m(roomHeight_m), 'span', 2)} above the floor; free: ${figure(1, 'span', 2)} before it, ${short(0.15)} beside and over it; vent on top; arrow: condensate pipe out through the wall, fall 1 : 50`,
    },
  ]
}
