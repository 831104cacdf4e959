import type { UnitSystem } from '#model/basis/units'
import type { Drawing } from './shapes.ts'

/** Scales of SI drawings: ISO 5455, and 1 : 25, which rules have as well (common practice, no source). */
const METRIC = [2, 5, 10, 20, 25, 50, 100, 200, 500, 1000] as const
/** Scales that a US architect’s rule has, and how they are said: inches of paper for a foot (common practice, no source). */
const FOOT: readonly (readonly [scale: number, inches: string])[] = [
  [2, '6'],
  [4, '3'],
  [8, '1 1/2'],
  [12, '1'],
  [16, '3/4'],
  [24, '1/2'],
  [32, '3/8'],
  [48, '1/4'],
  [64, '3/16'],
  [96, '1/8'],
  [128, '3/32'],
  [192, '1/16'],
  [384, '1/32'],
  [768, '1/64'],
]

/** What is drawn, m, and the paper that it may take, mm. */
interface Extent {
  readonly across: number
  readonly down: number
}

/** A rule to measure drawings by; `scaleFor`: its largest scale at which so much, m, fits on so much paper, mm, and beyond its last the next whole number. */
export interface Rule {
  readonly system: UnitSystem
  readonly scaleFor: (size_m: Extent, paper: Extent) => number
}

const largestOf =
  (scales: readonly number[]): Rule['scaleFor'] =>
  (size_m, paper) =>
    scales.find(
      (scale) => (1000 * size_m.across) / scale <= paper.across && (1000 * size_m.down) / scale <= paper.down,
    ) ?? Math.ceil(Math.max((1000 * size_m.across) / paper.across, (1000 * size_m.down) / paper.down))

/** A drawing that is to scale, drawn once for metric rules and once for those of the US. */
export function toScale(draw: (rule: Rule) => Drawing): Drawing {
  const us: Rule = { system: 'us', scaleFor: largestOf(FOOT.map(([scale]) => scale)) }
  return { ...draw({ system: 'si', scaleFor: largestOf(METRIC) }), us: draw(us) }
}

/** The drawing as it is for a reader’s units. */
export const drawnIn = (drawing: Drawing, system: UnitSystem): Drawing =>
  system === 'us' ? (drawing.us ?? drawing) : drawing

/** A scale as the rules of a system have it: “1 : 50”, “1/4 in = 1 ft”. */
export function scaleWords(scale: number, system: UnitSystem): string {
  const foot = FOOT.find(([known]) => known === scale)
  return system === 'us' && foot !== undefined ? `${foot[1]} in = 1 ft` : `1 : ${scale}`
}

/** What is said of a drawing’s scale beside its title. */
export function scaleNote(drawing: Drawing, system: UnitSystem): string {
  const { scale } = drawnIn(drawing, system)
  return scale === null ? 'not to scale' : `${scaleWords(scale, system)}, printed at 100 %`
}
