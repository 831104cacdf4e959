import { figure, words, type Text } from '#model/basis/words'
import type { PlantFacts } from './facts.ts'
import type { At } from './levels.ts'
import { box, label, path, type Shape } from './shapes.ts'

/** A fan coil on the wall: deep and high, and its lower edge under the ceiling, m (common practice, no source). */
const COIL_m = { deep: 0.25, high: 0.6, under: 0.8 }
/** Rooms lower than this have their coil on the floor, m. */
const LOW_m = 1.9

/** Lower edge of the coil above the floor, m. */
const lowEdge_m = (roomHeight_m: number): number => (roomHeight_m < LOW_m ? 0.1 : roomHeight_m - COIL_m.under)

/** What brings the cold into the room, where a tank keeps it: on the wall away from the tank, or under the ceiling. */
export function roomUnitOf(
  { roomUnit, roomHeight_m, roomWidth_m }: PlantFacts,
  at: At,
  mm: (m: number) => number,
): Shape[] {
  if (roomUnit === null || roomUnit === 'pipes') return []
  if (roomUnit === 'ceiling') {
    const [x, y] = at(0.1 * roomWidth_m, roomHeight_m)
    return [box([x, y + 0.6], mm(0.5 * roomWidth_m), 1.2, 'line', 'grey'), label([x, y + 5], 'CP', 'start')]
  }
  const low_m = lowEdge_m(roomHeight_m)
  const [x, y] = at(0, low_m + COIL_m.high)
  const foot = at(COIL_m.deep, low_m)
  const stub = (off: number, ink: 'supply' | 'return') =>
    path(
      [
        [x + off, foot[1]],
        [x + off, foot[1] + 4],
      ],
      ink,
    )
  return [
    box([x, y], mm(COIL_m.deep), mm(COIL_m.high), 'line', 'pale'),
    stub(1, 'supply'),
    stub(2.6, 'return'),
    label([foot[0] + 1.5, (y + foot[1]) / 2 + 1], 'FC', 'start'),
  ]
}

export function roomUnitKey({ roomUnit, roomHeight_m, drained }: PlantFacts): { mark: string; what: Text }[] {
  if (roomUnit === 'ceiling')
    return [
      { mark: 'CP', what: 'cooled ceiling panels, with a hand vent at the highest point of their pipes' },
    ]
  if (roomUnit !== 'fanCoil') return []
  return [
    {
      mark: 'FC',
      what: words`fan coil: on any wall but that of the tank, lower edge ${figure(lowEdge_m(roomHeight_m), 'span', 2)} above the floor, blowing along the room; P2, V3${drained ? '' : ' and M1'} at the tank’s foot; a hand vent at its top, its tray drained with a fall of 1 : 50`,
    },
  ]
}
