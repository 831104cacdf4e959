import type { Ink } from '#ui/chart/ink.ts'

/**
 * Annotations that shade the hours when the sun is down, on an axis of hour indices.
 * @param altitude_deg height of the sun, one an hour; hours beyond its end are light
 */
export function nightBoxes(
  altitude_deg: Float64Array,
  start_h: number,
  end_h: number,
  ink: Ink,
): Record<string, object> {
  const boxes: Record<string, object> = {}
  let from: number | null = null
  for (let h = start_h; h <= end_h; h++) {
    const dark = h < end_h && (altitude_deg[h] ?? 1) < 0
    if (dark && from === null) from = h
    if (!dark && from !== null) {
      boxes[`night${from}`] = box(from, h, ink)
      from = null
    }
  }
  return boxes
}

function box(xMin: number, xMax: number, ink: Ink): object {
  return {
    type: 'box',
    xMin,
    xMax,
    backgroundColor: ink.night,
    borderWidth: 0,
    drawTime: 'beforeDatasetsDraw',
  }
}
