import { longestRow, rowsFor } from './row-place.ts'
import type { LoopSpec } from './spec.ts'

/** Headers should lose no more than this share of the passages' loss, so that these share evenly (common practice, no source). */
export const EVEN_FEED_frac = 0.1

/** Passages of the fluid through one module. */
export interface ModulePassages {
  /** Side by side, sharing the module's flow. */
  readonly parallel: number
  readonly length_m: number
  /** Local losses in one passage, in units of ρv²/2. */
  readonly localLoss: number
}

/** Entry from and exit to a header, in units of ρv²/2 (common practice, no source). */
const ENDS_LOSS = 1.5
/** A 180° return bend (common practice, no source). */
const BEND_LOSS = 1.5

/** What one module offers the fluid, from its size and layout. */
export function modulePassages(spec: LoopSpec): ModulePassages {
  const pitch_m = spec.layout === 'wetted' ? spec.tubeOuterDiameter_m : spec.tubeSpacing_m
  const across = Math.max(1, Math.round(spec.moduleWidth_m / pitch_m))
  if (spec.layout !== 'serpentine')
    return { parallel: across, length_m: spec.moduleLength_m, localLoss: ENDS_LOSS }
  const bends = across - 1
  return {
    parallel: 1,
    length_m: across * spec.moduleLength_m + bends * 0.5 * Math.PI * spec.tubeSpacing_m,
    localLoss: ENDS_LOSS + BEND_LOSS * bends,
  }
}

/** How the modules are arranged: rows in parallel, each a pair of headers through its modules. */
export interface FieldLayout {
  readonly modules: number
  readonly rows: number
  readonly modulesPerRow: number
  /** Length of one header, m. */
  readonly header_m: number
  /** Pipe added to reach further rows, both ways together, m. */
  readonly rowPipes_m: number
}

/** Layout for any number of modules, fractions included: smooth, for the search. */
export function smoothLayout(spec: LoopSpec, modules: number): FieldLayout {
  return layoutOf(spec, modules, Math.max(1, modules / longestRow(spec, spec.place ?? null)))
}

/** Modules that must be bought, none for no area. */
export function wholeModules(modules: number): number {
  return Math.max(0, Math.ceil(modules - 1e-9))
}

/** Layout of a whole number of modules in the fewest, evenest rows that their place takes: for the builder. */
export function builtLayout(spec: LoopSpec, modules: number): FieldLayout {
  const whole = wholeModules(modules)
  const place = spec.place ?? null
  const fit = place === null ? null : rowsFor(spec, whole, place)
  return layoutOf(spec, whole, fit?.rows ?? Math.max(1, Math.ceil(whole / longestRow(spec, place))))
}

function layoutOf(spec: LoopSpec, modules: number, rows: number): FieldLayout {
  const perRow = modules / rows
  const longest = Number.isInteger(modules) && Number.isInteger(rows) ? Math.ceil(perRow) : perRow
  return {
    modules,
    rows,
    modulesPerRow: longest,
    header_m: longest * spec.moduleWidth_m,
    rowPipes_m: 2 * (rows - 1) * spec.moduleLength_m,
  }
}
