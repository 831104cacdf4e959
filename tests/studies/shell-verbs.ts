import type { Verb } from '#studies/index.ts'

/** A climate and a description of its own area: no search, so that every question is quick. */
const ASKED = ['--weather', 'continental', '--set', 'target.autoArea=false', '--set', 'target.area_m2=8']

/**
 * How the command line asks each verb: words that do so, or the reason why it has none. A verb that is missing here does
 * not compile.
 */
export const SHELL_VERBS: Readonly<
  Record<Verb, { readonly words: readonly string[] } | { readonly why: string }>
> = {
  size: { words: ['year', ...ASKED] },
  idealLoads: { words: ['year', ...ASKED] },
  range: {
    words: ['size', '--weather', 'continental', '--draws', '2'],
  },
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
  judge: {
    why: 'a design held while it is dragged: the command line holds it in the description and asks `size`',
  },
  follow: { why: 'an estimate for a slider that moves, replaced by `size` when it rests' },
  trials: {
    why: '`size` of several descriptions in a row, for the hints beside the answer: one `size --set` each',
  },
  drawAreas: { why: 'a share of `range` for a second worker, joined to the same range' },
  expected: { why: 'the months’ ranges of the printed sheet' },
  sheet: { why: 'the printed page of an answer: it asks nothing, `size` and `year` give its numbers' },
}
