import { defaultScenario } from '#model/design/scenario'
import type { SizingResult } from '#model/design/sizing'
import type { Verb } from '#studies/index.ts'
import type { Input } from '#live/messages.ts'

/** A climate and a description of its own area: no search, so that every question is quick. */
const ASKED = ['--weather', 'continental', '--set', 'target.autoArea=false', '--set', 'target.area_m2=8']
const scenario = defaultScenario()

/** A question as the page asks it, where the command line has no words for it, and why it has none. */
interface Unworded<V extends Verb> {
  readonly why: string
  readonly input: (sizing: SizingResult) => Input<V>
}

/**
 * How each verb is asked: the command line's words that do so, or the page's question. A verb that is missing here does
 * not compile and fails the test. NOTES, LOG and TABLE are files of the test.
 */
export const SHELL_VERBS: {
  readonly [V in Verb]: { readonly words: readonly string[] } | Unworded<V>
} = {
  size: { words: ['year', ...ASKED] },
  idealLoads: { words: ['year', ...ASKED] },
  range: { words: ['size', '--weather', 'continental', '--draws', '2'] },
  sky: { words: ['sky', ...ASKED] },
  plate: { words: ['panel', ...ASKED] },
  map: { words: ['map', ...ASKED, '--over', 'flow', '--areas', '4,8', '--others', '0.006,0.012'] },
  compare: { words: ['compare', ...ASKED, '--plans', 'nightOnly'] },
  decide: { words: ['decide', '--weather', 'continental', '--only', 'paintRoof,nightFan,direct'] },
  board: { words: ['coating', '--board', '--air', '24', '--dew', '9'] },
  estimateCoating: { words: ['coating', '--readings', 'NOTES'] },
  mixPaint: { words: ['batch', '--area', '6'] },
  practiceLog: { words: ['asbuilt', ...ASKED, '--area', '8', '--rehearse', 'dirty'] },
  checkAsBuilt: { words: ['asbuilt', ...ASKED, '--area', '8', '--log', 'LOG'] },
  sheet: { words: ['sheet', ...ASKED] },
  expected: { words: ['sheet', ...ASKED, '--ranges'] },
  waySheet: {
    words: ['sheet', '--weather', 'continental', '--set', 'job.way=shade'],
  },
  year: { words: ['sky', '--at', '36.1,-79.95', '--another-year', '2'] },
  readWeather: {
    words: ['sky', '--weather', 'TABLE', '--latitude', '47.1', '--longitude', '20.4', '--utc-offset', '1'],
  },
  judge: {
    why: 'a design held while it is dragged: the command line holds it in the description and asks `size`',
    input: () => ({ scenario, chosen: { area_m2: 5, storeVolume_m3: 0.3, flow_kgsm2: 0.01 } }),
  },
  follow: {
    why: 'an estimate for a slider that moves, replaced by `size` when it rests',
    input: (near) => ({ scenario, near }),
  },
  sizeNear: {
    why: 'modules and tank for a slider that rests, the same that `size` comes to and replaced by it',
    input: ({ anchor }) => ({ scenario, near: anchor! }),
  },
  trials: {
    why: '`size` of several descriptions in a row, for the hints beside the answer: one `size --set` each',
    input: () => ({
      scenarios: [{ ...scenario, target: { ...scenario.target, autoArea: false, area_m2: 6 } }],
    }),
  },
  drawAreas: {
    why: 'a share of `range` for a second worker, joined to the same range',
    input: (sizing) => ({ scenario, sizing, draws: 4, from: 1, to: 3 }),
  },
  panelNight: {
    why: 'the parts of one night’s balance for a chart: `panel` prints the balance itself',
    input: () => ({ scenario, from_h: 4000, plate_C: [14, 12], water_kgm2: [0, 0.05] }),
  },
  drawHours: {
    why: 'how sure the ways that `decide` prints are, worked out after them for the page',
    input: () => ({
      scenario,
      ways: [
        { measures: ['paintRoof'], plant: 'none', panelArea_m2: 0, storeVolume_m3: 0 },
        { measures: [], plant: 'panels', panelArea_m2: 6, storeVolume_m3: 0.5 },
      ],
      draws: 4,
      from: 1,
      to: 3,
    }),
  },
}
