import { sizingOf } from '#studies/stages.ts'
import { taskOf } from '#model/design/assembly'
import { withField, type Scenario } from '#model/design/scenario'
import type { AboutArea, NearDesign } from '#model/design/sizing'
import type { Made } from './made.ts'
import { timed_s } from './measure.ts'
import type { Row } from './table.ts'

const RUNS = 9
/** The roof's U-value as a hand moves it, as shares of what it was. */
const MOVES = [1.05, 0.95, 1.1, 0.9, 1.2, 0.8, 1.02, 0.98]
/** The same place of the slider, come to from above and from below in so many moves. */
const WAY_MOVES = 10

function withRoof(scenario: Scenario, times: number): Scenario {
  const { roofU_Wm2K } = scenario.room
  return withField(scenario, 'room.roofU_Wm2K', String(roofU_Wm2K * times))
}

/** The area that follows a hand, one description after another. */
function followed({ stages, scenario, record }: Made, near: NearDesign, moves: readonly number[]): AboutArea {
  let found: AboutArea = { kind: 'met', area_m2: near.area_m2 }
  for (const times of moves) {
    const storeVolume_m3 = (near.storeVolume_m3 / near.area_m2) * found.area_m2
    const before = { ...near, area_m2: found.area_m2, storeVolume_m3 }
    found = stages.about(withRoof(scenario, times), record, before)
  }
  return found
}

const off = (found_m2: number, wanted_m2: number): number => 100 * Math.abs(found_m2 / wanted_m2 - 1)

/** What follows a hand: its cost in seasons, its area against the whole search, and its memory of the way. */
export function sizing(made: Made): Row[] {
  const { stages, scenario, record, prepared } = made
  const task = taskOf(prepared)
  const season = (): unknown =>
    task.seasonRoom_C({ area_m2: 8, storeVolume_m3: 1, flow_kgsm2: 0.01 }, task.season!)
  const near = sizingOf(prepared)
  const follows = (): AboutArea => followed(made, near, [1.05])
  // What all of these share with the moves before them is worked out beforehand; each ratio is of one turn.
  for (const times of MOVES) stages.prepare(withRoof(scenario, times), record, true)
  const inSeasons = (run: () => unknown): number[] => {
    timed_s(run, 1, 3)
    return Array.from(
      { length: RUNS },
      () => timed_s(run, 1, 0)[0]! / (timed_s(season, 10, 0).reduce((a, b) => a + b) / 10),
    )
  }
  const compared = MOVES.map((times) => {
    const scratch = sizingOf(stages.prepare(withRoof(scenario, times), record))
    const held = withField(withRoof(scenario, times), 'store.autoVolume', 'false')
    const found_m2 = followed(made, near, [times]).area_m2
    const volume_m3 = (near.storeVolume_m3 / near.area_m2) * found_m2
    const sameTank = sizingOf(stages.prepare(withField(held, 'store.volume_m3', String(volume_m3)), record))
    return { scratch, sameTank, found_m2 }
  })
  const ways = MOVES.slice(0, 4).map((times) => {
    const from = (edge: number): number[] =>
      Array.from({ length: WAY_MOVES }, (_, i) => edge + ((times - edge) * (i + 1)) / WAY_MOVES)
    return off(followed(made, near, from(1.4)).area_m2, followed(made, near, from(0.7)).area_m2)
  })
  return [
    {
      name: 'area that follows a slider, in seasons',
      goal: '≤ 6.5',
      unit: 'seasons',
      values: inSeasons(follows),
      met: (x) => x <= 6.5,
      why: 'One to three seasons are its own; the rest is the year without panels and the room made anew.',
      work: follows,
    },
    {
      name: `its area against the whole search, same tank, worst of ${MOVES.length} moves`,
      goal: '≤ 0.3',
      unit: '%',
      values: [Math.max(...compared.map(({ found_m2, sameTank }) => off(found_m2, sameTank.area_m2)))],
      met: (x) => x <= 0.3,
      why: 'The whole search ends within 0.1 % above the smallest area; a last step of what follows may leave the square of 3 % of it.',
      work: follows,
    },
    {
      name: 'its area against the whole search with the tank chosen anew',
      goal: '',
      unit: '%',
      values: [Math.max(...compared.map(({ found_m2, scratch }) => off(found_m2, scratch.area_m2)))],
      met: null,
    },
    {
      name: `its area come to from above and from below, worst of ${ways.length} places`,
      goal: '≤ 0.3',
      unit: '%',
      values: [Math.max(...ways)],
      met: (x) => x <= 0.3,
      why: 'A last step may leave the square of 4 % of the area.',
      work: follows,
    },
  ]
}
