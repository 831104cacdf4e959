import { figure, short, words, type Text } from '#model/basis/words'
import { WALL_FAN_frac } from './fan-spots.ts'
import { MOST_FANS, piecesOf, type Piece, type WayFacts } from './way-facts.ts'

type Key = { readonly mark: string; readonly what: Text }[]

const sizeOf = ({ width_m, low_m, high_m }: Piece) =>
  words`${figure(width_m, 'span', 2)} wide, ${figure(high_m - low_m, 'span', 2)} high`
const edges = (piece: Piece) =>
  words`${sizeOf(piece)}, lower edge ${figure(piece.low_m, 'span', 2)} above the floor`

/** Every mark of plan and section, and what it is. */
export function wayKey(facts: WayFacts): Key {
  const pieces = piecesOf(facts)
  const find = (mark: string): Piece => pieces.find((piece) => piece.mark === mark)!
  return [...skinKey(facts), ...windowKey(facts), ...airKey(facts, find), ...machineKey(facts, find)]
}

function skinKey(facts: WayFacts): Key {
  const { paint, roofInsulation, wallInsulation, sealed, jars, ceilingFan } = facts
  const fans = Math.max(1, ceilingFan?.fans ?? 1)
  return [
    ...(paint === null
      ? []
      : [{ mark: 'R1', what: words`roof coating, ${String(paint.coats)} coats on primer` }]),
    ...(roofInsulation === null
      ? []
      : [{ mark: 'R2', what: words`roof insulation: ${roofInsulation.what}` }]),
    ...(wallInsulation === null
      ? []
      : [{ mark: 'I1', what: words`wall insulation, all walls: ${wallInsulation.what}` }]),
    ...(sealed
      ? [
          {
            mark: 'L',
            what: 'joints to seal: wall with roof and floor, round doors and windows, at every pipe and cable',
          },
        ]
      : []),
    ...(jars === null
      ? []
      : [
          {
            mark: 'J1',
            what: words`${String(jars.jars)} jars on racks tied to inner walls, ${jars.mass} of water in all`,
          },
        ]),
    ...(ceilingFan === null
      ? []
      : [
          {
            mark: fans === 1 ? 'C1' : `C1–C${fans}`,
            what: ceilingFan.ceiling
              ? words`ceiling fan, ${short(ceilingFan.across_m)} across, on a joist`
              : words`wall fan with guard, ${short(ceilingFan.across_m)} across, on the left wall, its middle ${figure(WALL_FAN_frac * facts.height_m, 'span', 2)} above the floor, blowing along the room at people`,
          },
        ]),
  ]
}

function windowKey({ windows, shade, glazing }: WayFacts): Key {
  return windows.flatMap(({ side, faces_deg, area_m2, width_m, height_m }, i) => [
    {
      mark: `W${i + 1}`,
      what: words`${side} window that is there, faces ${figure(faces_deg, 'deg')}, ${figure(area_m2, 'm2')}${glazing ? ': film and second pane' : ''}`,
    },
    ...(shade === null
      ? []
      : [
          {
            mark: `S${i + 1}`,
            what: words`outside shade of W${String(i + 1)}, ${figure(width_m + 2 * shade.past_m, 'span')} × ${figure(height_m + 2 * shade.past_m, 'span')}`,
          },
        ]),
  ])
}

function airKey({ opening, fan }: WayFacts, find: (mark: string) => Piece): Key {
  return [
    ...(opening === null
      ? []
      : [
          { mark: 'N1', what: words`night opening, low: ${edges(find('N1'))}` },
          { mark: 'N2', what: words`night opening, high: ${edges(find('N2'))}` },
        ]),
    ...(fan === null
      ? []
      : [
          {
            mark: fan.fans === 1 ? 'F1' : `F1–F${fan.fans}`,
            what: words`night fan blowing out, ${fan.each}${fan.fans === 1 ? '' : ' each'}, as high as it goes${fan.fans > MOST_FANS ? words`; ${String(MOST_FANS)} are drawn` : ''}`,
          },
          {
            mark: 'V1',
            what: words`hole of the vent for the air that comes in (${figure(fan.inlet_m2, 'm2', 2)} of it free): ${edges(find('V1'))}`,
          },
        ]),
  ]
}

function machineKey({ cooler, conditioner }: WayFacts, find: (mark: string) => Piece): Key {
  return [
    ...(cooler === null
      ? []
      : [
          { mark: 'E1', what: words`evaporative cooler, ${cooler.flow}, in shade on a level frame` },
          {
            mark: 'D1',
            what: words`duct ${figure(cooler.duct_m, 'duct')} across through the wall, damper, grille`,
          },
          { mark: 'X1', what: words`way out of its air: ${edges(find('X1'))}` },
        ]),
    ...(conditioner === null
      ? []
      : [
          { mark: 'A1', what: words`indoor unit, ${conditioner.cooling}, on the outer wall` },
          { mark: 'A2', what: 'outdoor unit in shade, free all round as its maker says' },
        ]),
  ]
}
