import type { Plant } from './plant.ts'
import { rowsOf } from './plant.ts'

/** A point of the plan, m; x along the headers, y down the slope (drawing's way: down the page). */
export type Point = readonly [x_m: number, y_m: number]

/** A pipe run; `main` carries all the flow, the others that of one row. */
export interface Run {
  readonly kind: 'supply' | 'return'
  readonly main: boolean
  readonly points: readonly Point[]
}

/** The panel field seen from above: to scale, but for the gaps between rows. */
export interface LayoutDrawing {
  readonly width_m: number
  readonly height_m: number
  readonly modules: readonly { readonly x_m: number; readonly y_m: number; readonly number: number }[]
  readonly moduleWidth_m: number
  readonly moduleLength_m: number
  /** Tubes or channels of all modules; thinned to at most `MOST_DRAWN` a module. */
  readonly passages: readonly (readonly Point[])[]
  readonly headers: readonly {
    readonly kind: 'supply' | 'return'
    readonly from: Point
    readonly to: Point
  }[]
  /** Pipe runs between field and store, with their way of flow. */
  readonly pipes: readonly Run[]
  /** Closed ends of headers. */
  readonly caps: readonly Point[]
  /** High points where air gathers. */
  readonly vents: readonly Point[]
}

/** Room for hands between rows in the drawing, m. */
const ROW_GAP_m = 0.35
/** Room beside the field for the pipe runs, m. */
const SIDE_m = 0.45
/** Channels drawn in a module at most. */
const MOST_DRAWN = 12

/**
 * Each row is fed at its lower left corner and drained at its upper right one; the rows are joined so that the first fed
 * is the last drained and all ways are equally long.
 */
export function layoutDrawing(plant: Plant): LayoutDrawing {
  const { moduleWidth_m: width_m, moduleLength_m: length_m } = plant.loopSpec
  const rows = rowsOf(plant)
  const right_m = SIDE_m + Math.max(...rows) * width_m
  const pitch_m = length_m + ROW_GAP_m
  const bottom_m = SIDE_m + rows.length * pitch_m - ROW_GAP_m
  const placed = rows.flatMap((modules, row) =>
    Array.from({ length: modules }, (_, i) => ({ x_m: SIDE_m + i * width_m, y_m: SIDE_m + row * pitch_m })),
  )
  const rowEnds = rows.map((modules, row): RowEnds => ({
    left_m: SIDE_m,
    right_m: SIDE_m + modules * width_m,
    top_m: SIDE_m + row * pitch_m,
    bottom_m: SIDE_m + row * pitch_m + length_m,
  }))
  const out_m = bottom_m + SIDE_m
  return {
    width_m: right_m + SIDE_m,
    height_m: out_m,
    moduleWidth_m: width_m,
    moduleLength_m: length_m,
    modules: placed.map((corner, i) => ({ ...corner, number: i + 1 })),
    passages: placed.flatMap((corner) => passagesOf(plant, corner)),
    headers: rowEnds.flatMap((end) => [
      {
        kind: 'supply' as const,
        from: [end.left_m, end.bottom_m] as Point,
        to: [end.right_m, end.bottom_m] as Point,
      },
      {
        kind: 'return' as const,
        from: [end.left_m, end.top_m] as Point,
        to: [end.right_m, end.top_m] as Point,
      },
    ]),
    pipes: [...supplyRuns(rowEnds, out_m), ...returnRuns(rowEnds, right_m, out_m)],
    caps: rowEnds.flatMap((end): Point[] => [
      [end.right_m, end.bottom_m],
      [end.left_m, end.top_m],
    ]),
    vents: rowEnds.map((end): Point => [end.right_m, end.top_m]),
  }
}

interface RowEnds {
  readonly left_m: number
  readonly right_m: number
  readonly top_m: number
  readonly bottom_m: number
}

/** From the store up the left side, with a branch to the lower left corner of each row. */
function supplyRuns(rows: readonly RowEnds[], out_m: number): Run[] {
  const x_m = SIDE_m * 0.5
  const main: Point[] = [
    [x_m, out_m],
    [x_m, rows[0]!.bottom_m],
  ]
  return [
    { kind: 'supply', main: true, points: main },
    ...rows.map(({ left_m, bottom_m }): Run => ({
      kind: 'supply',
      main: false,
      points: [
        [x_m, bottom_m],
        [left_m, bottom_m],
      ],
    })),
  ]
}

/**
 * From the upper right corner of each row to the store. Several rows: up past the top row first, so that with the supply
 * from below all ways are equally long.
 */
function returnRuns(rows: readonly RowEnds[], right_m: number, out_m: number): Run[] {
  const x_m = right_m + SIDE_m * 0.4
  const home_m = right_m + SIDE_m * 0.8
  const over_m = SIDE_m * 0.4
  const main: Point[] =
    rows.length === 1
      ? [
          [x_m, rows[0]!.top_m],
          [x_m, out_m],
        ]
      : [
          [x_m, rows.at(-1)!.top_m],
          [x_m, over_m],
          [home_m, over_m],
          [home_m, out_m],
        ]
  return [
    { kind: 'return', main: true, points: main },
    ...rows.map((row): Run => ({
      kind: 'return',
      main: false,
      points: [
        [row.right_m, row.top_m],
        [x_m, row.top_m],
      ],
    })),
  ]
}

function passagesOf(plant: Plant, corner: { x_m: number; y_m: number }): Point[][] {
  const { moduleWidth_m: width_m, moduleLength_m: length_m, layout, tubeSpacing_m } = plant.loopSpec
  const low_m = corner.y_m + length_m
  const columns = (drawn: number): number[] =>
    Array.from({ length: drawn }, (_, i) => corner.x_m + ((i + 0.5) * width_m) / drawn)
  if (layout !== 'serpentine') {
    return columns(Math.min(plant.passages.parallel, MOST_DRAWN)).map((x_m): Point[] => [
      [x_m, low_m],
      [x_m, corner.y_m],
    ])
  }
  return [folded(columns(oddBelow(width_m / tubeSpacing_m)), corner.y_m, low_m)]
}

/** One tube up and down from the lower header to the upper: it arrives above only after an odd number of runs. */
function folded(columns: readonly number[], top_m: number, low_m: number): Point[] {
  const bend_m = 0.06 * (low_m - top_m)
  const last = columns.length - 1
  return columns.flatMap((x_m, i): Point[] => {
    const below: Point = [x_m, i === 0 ? low_m : low_m - bend_m]
    const above: Point = [x_m, i === last ? top_m : top_m + bend_m]
    return i % 2 === 0 ? [below, above] : [above, below]
  })
}

function oddBelow(value: number): number {
  const whole = Math.max(1, Math.round(value))
  return whole % 2 === 1 ? whole : whole - 1
}
