/** Free between rows of modules, for hands and unions, m (common practice, no source). */
export const ROW_GAP_m = 0.35
/** Free along roof edges, where wind pulls hardest, m (common practice, no source). */
export const EDGE_m = 0.3
/** Between neighbours of a row, where the stubs of their headers meet in a union, m (common practice, no source). */
export const MODULE_GAP_m = 0.04
/** Modules side by side on one pair of headers: more make the far risers starve (common practice, no source). */
export const MODULES_PER_ROW = 6

/** The plane that rows lie on, m: along the headers, and down the slope in the plane of the panels. */
export interface RowPlace {
  readonly across_m: number
  readonly down_m: number
}

/** A module, m: along the risers, and along the headers. */
interface ModuleSize {
  readonly moduleLength_m: number
  readonly moduleWidth_m: number
}

/** Rows that a place takes. */
export interface RowsFit {
  readonly perRow: number
  readonly rows: number
  /** Left free at the edges, m. */
  readonly edge_m: number
}

/** Sizes given to the millimetre may fill a place quite. */
const SLACK_m = 1e-6

const most = (free_m: number, each_m: number, gap_m: number): number =>
  Math.max(0, Math.floor((free_m + gap_m + SLACK_m) / (each_m + gap_m)))

/** Rows and modules a row that fit with so much free at every edge, m. */
export function rowsWithin(size: ModuleSize, place: RowPlace, edge_m: number): RowsFit {
  const across = most(place.across_m - 2 * edge_m, size.moduleWidth_m, MODULE_GAP_m)
  const rows = most(place.down_m - 2 * edge_m, size.moduleLength_m, ROW_GAP_m)
  return { perRow: Math.min(MODULES_PER_ROW, across), rows: across === 0 ? 0 : rows, edge_m }
}

/**
 * The rows that so many modules are laid in: with free edges where they fit so, else to the very edges; null where the place
 * does not take them.
 */
export function rowsFor(size: ModuleSize, modules: number, place: RowPlace): RowsFit | null {
  for (const edge_m of [EDGE_m, 0]) {
    const fit = rowsWithin(size, place, edge_m)
    if (modules <= fit.perRow * fit.rows)
      return { ...fit, rows: Math.max(1, Math.ceil(modules / fit.perRow)) }
  }
  return null
}

/** Most modules a row of the search, and of a field that its place does not take. */
export function longestRow(size: ModuleSize, place: RowPlace | null): number {
  if (place === null) return MODULES_PER_ROW
  const { perRow } = rowsWithin(size, place, EDGE_m)
  return Math.max(1, perRow > 0 ? perRow : rowsWithin(size, place, 0).perRow)
}

/** Size of a field of rows, the fullest first, m: along the headers, and down the slope in the plane of the panels. */
export function fieldSize_m(size: ModuleSize, rows: readonly number[]): RowPlace {
  const fullest = Math.max(...rows)
  return {
    across_m: fullest * size.moduleWidth_m + (fullest - 1) * MODULE_GAP_m,
    down_m: rows.length * size.moduleLength_m + (rows.length - 1) * ROW_GAP_m,
  }
}
