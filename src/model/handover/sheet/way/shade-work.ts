import { windows_m2 } from '#model/design/measures'
import { MEASURE_SIZES, type Scenario } from '#model/design/scenario'
import { count, figure, line, short, words, type Wording } from '#model/basis/words'
import type { WayWindow } from '#model/handover/drawing'
import { EMPTY, type Work } from './work.ts'

/** An outside shade is wider than its window by so much on each side, m (common practice, no source). */
export const PAST_m = 0.15

/** The windows by the side they are on. */
export function windowsOf({
  room,
}: Scenario): { side: WayWindow['side']; faces_deg: number; area_m2: number }[] {
  const sides: { side: WayWindow['side']; turn: number; area_m2: number }[] = [
    { side: 'front', turn: 0, area_m2: room.windowFront_m2 },
    { side: 'right', turn: 270, area_m2: room.windowRight_m2 },
    { side: 'back', turn: 180, area_m2: room.windowBack_m2 },
    { side: 'left', turn: 90, area_m2: room.windowLeft_m2 },
  ]
  return sides
    .filter(({ area_m2 }) => area_m2 > 0)
    .map(({ side, turn, area_m2 }) => ({ side, faces_deg: (room.azimuth_deg + turn) % 360, area_m2 }))
}

export function windowList(s: Scenario): Wording {
  return windowsOf(s).flatMap(({ side, faces_deg, area_m2 }, i) => [
    ...(i === 0 ? [] : ['; ']),
    ...words`${side} (faces ${figure(faces_deg, 'deg')}) ${figure(area_m2, 'm2')}`,
  ])
}

/** A shade for each window. */
export function shadeWork(s: Scenario): Work {
  const { blind_frac } = MEASURE_SIZES
  return {
    ...EMPTY,
    name: 'Shade the windows outside',
    sizes: [
      line('Glass to shade', words`${figure(windows_m2(s), 'm2')} in all: ${windowList(s)}`),
      line(
        'Shade',
        words`outside the glass, lets through at most ${figure(100 * blind_frac, 'count', 2)} % of the sun (shading factor Fc ≤ ${figure(blind_frac, 'frac', 2)}): slats, dense awning cloth or shutters, whichever the wall and the wind allow; the maker’s Fc decides`,
      ),
      line(
        'When',
        'the hours above the limit are worked out with it down in every hour of sun: all through the warm season, not only on hot days',
      ),
    ],
    buy: windowsOf(s).map(({ side, faces_deg, area_m2 }) => ({
      quantity: count(1),
      what: words`shade for the ${side} window (faces ${figure(faces_deg, 'deg')}): ${figure(area_m2, 'm2')} of glass and ${short(PAST_m)} more on each side; for one square window ${figure(Math.sqrt(area_m2) + 2 * PAST_m, 'span')} × ${figure(Math.sqrt(area_m2) + 2 * PAST_m, 'span')}, with four stainless screws 6 × 60 mm (1/4 × 2 1/2 in) and plugs, or what its maker says`,
    })),
    steps: [
      words`Measure each window. Fix to masonry or frame, not to cladding; a hand’s breadth of air between shade and glass, open above, so that heat gets out.`,
      words`Down from sunrise through the warm season, up in winter for its sun: a sensor or a habit.`,
    ],
    readings: [
      {
        what: 'Sun on the window, noon: a light meter or a phone’s behind the glass, shade up and down',
        expect: words`about a quarter of the light with the shade down`,
      },
    ],
    cautions: [
      {
        title: 'Wind and ways out',
        text: words`Take in awnings and slats before a gale (their maker names the wind class); never block a window that is a way out of fire.`,
      },
    ],
    keep: [words`Wash cloth and slats once a year; oil hinges, look at fixings after each storm.`],
  }
}
