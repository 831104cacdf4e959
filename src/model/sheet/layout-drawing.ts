import type { Plant } from '#model/sheet/plant.ts'
import { rowsOf } from '#model/sheet/plant.ts'

/** A point of the plan, m; x along the headers, y down the slope (drawing's way: down the page). */
export type Point = readonly [x_m: number, y_m: number]

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
  readonly pipes: readonly { readonly kind: 'supply' | 'return'; readonly points: readonly Point[] }[]
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
  const rowEnds = rows.map((modules, row) => ({
    left_m: SIDE_m,
    right_m: SIDE_m + modules * width_m,
    top_m: SIDE_m + row * pitch_m,
    bottom_m: SIDE_m + row * pitch_m + length_m,
  }))
  const supplyX_m = SIDE_m * 0.5
  const returnX_m = right_m + SIDE_m * 0.5
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
    pipes: [
      ...rowEnds.map((end) => ({
        kind: 'supply' as const,
        points: [
          [supplyX_m, out_m],
          [supplyX_m, end.bottom_m],
          [end.left_m, end.bottom_m],
        ] as Point[],
      })),
      ...rowEnds.map((end) => ({
        kind: 'return' as const,
        points: [[end.right_m, end.top_m], ...homeward(rows.length, returnX_m, end.top_m, out_m)] as Point[],
      })),
    ],
    caps: rowEnds.flatMap((end): Point[] => [
      [end.right_m, end.bottom_m],
      [end.left_m, end.top_m],
    ]),
    vents: rowEnds.map((end): Point => [end.right_m, end.top_m]),
  }
}

/** Several rows: the return goes up past the top row first, so that with the supply from below all ways are equally long. */
function homeward(rows: number, returnX_m: number, from_m: number, out_m: number): Point[] {
  if (rows === 1)
    return [
      [returnX_m, from_m],
      [returnX_m, out_m],
    ]
  const over_m = SIDE_m * 0.4
  const homeX_m = returnX_m + SIDE_m * 0.35
  return [
    [returnX_m, from_m],
    [returnX_m, over_m],
    [homeX_m, over_m],
    [homeX_m, out_m],
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
