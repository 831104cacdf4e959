import { Face, type PanelHours } from '#model/panels/plate'

/** Numbers of an hour of the exposed face, in the order in which `hours-part.ts` reads them. */
const PER_FACE = 15

const known = new WeakMap<PanelHours, Float64Array>()

/** The exposed face of a panel hour by hour, one row an hour: what `Face` copies from the panel's columns. Worked out once a panel. */
export function faceRowsOf(panel: PanelHours): Float64Array {
  const found = known.get(panel)
  if (found !== undefined) return found
  const rows = new Float64Array(PER_FACE * panel.hours)
  const { air_C, vapour_Pa, massTransfer, dryGain, wetGain, cold, hot } = panel
  const columns = [
    air_C,
    vapour_Pa,
    massTransfer,
    dryGain.plate_Wm2,
    wetGain.plate_Wm2,
    ...[cold, hot].flatMap(({ constant, first, second, third }) => [constant, first, second, third]),
  ]
  columns.forEach((column, i) => {
    for (let h = 0, at = i; h < panel.hours; h++, at += PER_FACE) rows[at] = column[h]!
  })
  const face = new Face()
  for (let h = 0, at = columns.length; h < panel.hours; h++, at += PER_FACE) {
    face.set(panel, h)
    rows[at] = face.still_Wm2K
    rows[at + 1] = face.stillRise_Wm2K2
  }
  known.set(panel, rows)
  return rows
}
