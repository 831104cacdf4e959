import { reached, type DesignMap } from '#model/design/sizing'

/** Light to dark by rising value, so that it reads in black and white; a step is as wide as a fifteenth. */
const LIGHT = [247, 245, 252]
const DARK = [74, 92, 158]
const STEPS = 15
/** Designs that miss the target are hatched with this over the shade. */
const MISSED = [150, 66, 22]
/** Pixels from one line of the hatching to the next. */
const HATCH = 13
/** Pixels from one mark of the grid to the next. */
export const PIXELS = 24

/** Shades every point of the map between its marks; what misses the target is hatched. */
export function paintMap(
  context: CanvasRenderingContext2D,
  map: DesignMap,
  values: Float64Array,
  share: (value: number) => number,
): void {
  const { width, height } = context.canvas
  const image = context.createImageData(width, height)
  const read = readerOf(map)
  for (let py = 0; py < height; py++) {
    const y = ((height - 1 - py) / (height - 1)) * (map.axes.other.length - 1)
    for (let px = 0; px < width; px++) {
      const x = (px / (width - 1)) * (map.axes.area_m2.length - 1)
      const value = read(values, x, y)
      if (Number.isNaN(value)) continue
      const step = Math.round(share(value) * STEPS) / STEPS
      const missed = read(map.measure, x, y) > 0
      image.data.set([...colourOf(step, missed && (px + py) % HATCH < 2), 255], (py * width + px) * 4)
    }
  }
  context.putImageData(image, 0, 0)
}

function colourOf(step: number, hatched: boolean): number[] {
  return hatched ? MISSED : LIGHT.map((light, i) => Math.round(light + step * (DARK[i]! - light)))
}

/** Reads a column between the marks that are known already (bilinear). */
export function readerOf(map: DesignMap): (values: Float64Array, x: number, y: number) => number {
  const columns = map.axes.area_m2.length
  const across = reached(columns, map.stride)
  const up = reached(map.axes.other.length, map.stride)
  return (values, x, y) => {
    const [x0, x1] = around(across, x)
    const [y0, y1] = around(up, y)
    const at = (column: number, row: number) => values[row * columns + column]!
    const sx = (x - x0) / (x1 - x0)
    const sy = (y - y0) / (y1 - y0)
    const low = at(x0, y0) * (1 - sx) + at(x1, y0) * sx
    const high = at(x0, y1) * (1 - sx) + at(x1, y1) * sx
    return low * (1 - sy) + high * sy
  }
}

/** The known marks on either side of a place. */
function around(marks: readonly number[], place: number): [number, number] {
  const above = marks.findIndex((mark, i) => i > 0 && mark >= place)
  const i = above < 0 ? marks.length - 1 : above
  return [marks[i - 1]!, marks[i]!]
}
