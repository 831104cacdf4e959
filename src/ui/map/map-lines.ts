import { contourLines, type ContourLine, type GridPoint } from '#model/basis/numbers'
import { reached, type DesignMap } from '#model/design/sizing'

/** Lines of equal value over the marks that are known already, in steps of the whole map. */
export function linesOn(map: DesignMap, values: Float64Array, level: number): ContourLine[] {
  const all = map.axes.area_m2.length
  const across = reached(all, map.stride)
  const up = reached(map.axes.other.length, map.stride)
  const known = up.flatMap((row) => across.map((column) => values[row * all + column]!))
  const lines = contourLines({ columns: across.length, rows: up.length, values: known }, level)
  return lines.map((line) => line.map(([x, y]) => [between(across, x), between(up, y)] as const))
}

function between(marks: readonly number[], place: number): number {
  const i = Math.min(Math.floor(place), marks.length - 2)
  return marks[i]! + (place - i) * (marks[i + 1]! - marks[i]!)
}

/** The map's place in a drawing of some pixels, with room for the axes. */
export interface Frame {
  readonly left: number
  readonly top: number
  readonly width: number
  readonly height: number
  readonly x: (place: number) => number
  readonly y: (place: number) => number
}

const MARGIN = { left: 62, right: 14, top: 8, bottom: 44 }

export function frameOf({ axes }: DesignMap, width: number, height: number): Frame {
  const inner = {
    left: MARGIN.left,
    top: MARGIN.top,
    width: width - MARGIN.left - MARGIN.right,
    height: height - MARGIN.top - MARGIN.bottom,
  }
  return {
    ...inner,
    x: (place) => inner.left + (place / (axes.area_m2.length - 1)) * inner.width,
    y: (place) => inner.top + (1 - place / (axes.other.length - 1)) * inner.height,
  }
}

/** The `d` of an SVG path through the points of a line. */
export function pathOf(line: ContourLine, frame: Frame): string {
  return line
    .map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${frame.x(x).toFixed(1)} ${frame.y(y).toFixed(1)}`)
    .join('')
}

/** Where a line is named: at the point farthest from the frame. */
export function namePlace(line: ContourLine, { axes }: DesignMap): GridPoint {
  const [columns, rows] = [axes.area_m2.length - 1, axes.other.length - 1]
  const inside = ([x, y]: GridPoint) => Math.min(x / columns, 1 - x / columns, y / rows, 1 - y / rows)
  return line.reduce((best, point) => (inside(point) > inside(best) ? point : best))
}
