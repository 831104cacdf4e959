import { EDGE_m, ROW_GAP_m, rowsFor, rowsWithin, type RowPlace } from '#model/panels/loop'
import type { Scenario } from '#model/design/scenario'
import { count, figure, words, type Wording } from '#model/basis/words'

/** The room’s own roof from above, m, its slope down the page: along the headers, and across them; null where only an area is given. */
export function roofFromAbove({ room, panel }: Scenario): RowPlace | null {
  if (panel.freeArea_m2 > 0) return null
  const turn = ((panel.azimuth_deg - room.azimuth_deg) * Math.PI) / 180
  const sideways = Math.abs(Math.sin(turn)) > Math.SQRT1_2
  return sideways
    ? { across_m: room.width_m, down_m: room.length_m }
    : { across_m: room.length_m, down_m: room.width_m }
}

/** The same in the plane of the panels, which are longer than their shadow. */
export function rowPlaceOf(scenario: Scenario): RowPlace | null {
  const roof = roofFromAbove(scenario)
  if (roof === null) return null
  const flat = Math.cos((scenario.panel.tilt_deg * Math.PI) / 180)
  return { across_m: roof.across_m, down_m: roof.down_m / Math.max(flat, 1e-9) }
}

/** Most modules that have their place: with free edges where any fit so, else to the very edges. */
export function modulesThatFit(scenario: Scenario): { readonly modules: number; readonly words: Wording } {
  const { panel } = scenario
  const place = rowPlaceOf(scenario)
  if (place === null) {
    const modules = Math.floor(panel.freeArea_m2 / (panel.moduleLength_m * panel.moduleWidth_m) + 1e-9)
    return { modules, words: words`${count(modules)} ${modules === 1 ? 'module' : 'modules'}` }
  }
  const all = [EDGE_m, 0].map((edge_m) => rowsWithin(panel, place, edge_m))
  const { perRow, rows, edge_m } = all.toSorted((a, b) => b.perRow * b.rows - a.perRow * a.rows)[0]!
  const modules = perRow * rows
  const edges =
    edge_m > 0 ? words`with ${figure(edge_m, 'span')} free at every edge` : words`to the very edges`
  return {
    modules,
    words:
      modules === 0
        ? words`no module of ${figure(panel.moduleLength_m, 'm')} × ${figure(panel.moduleWidth_m, 'm')}`
        : words`${count(modules)} ${modules === 1 ? 'module' : 'modules'} in ${rows === 1 ? 'one row' : words`${count(rows)} rows of ${count(perRow)}`}, ${edges}`,
  }
}

/** Whether so much panel has its place by the shape of the roof; true where its shape is not known. */
export function laidOut(scenario: Scenario, area_m2: number): boolean {
  const place = rowPlaceOf(scenario)
  const { panel } = scenario
  const modules = Math.ceil(area_m2 / (panel.moduleLength_m * panel.moduleWidth_m) - 1e-9)
  return place === null || rowsFor(panel, modules, place) !== null
}

/** Modules shorter than this are not worth their headers, m (common practice, no source). */
const SHORTEST_m = 0.8
const MOST_ROWS = 12

/** Shorter modules that make the area in more rows of the same roof, with free edges; null where none do. */
export function shorterModules(scenario: Scenario, area_m2: number): Wording | null {
  const place = rowPlaceOf(scenario)
  const { panel } = scenario
  if (place === null) return null
  for (let rows = 1; rows <= MOST_ROWS; rows++) {
    const longest_m = (place.down_m - 2 * EDGE_m + ROW_GAP_m) / rows - ROW_GAP_m
    const length_m = Math.floor(20 * longest_m + 1e-6) / 20
    if (length_m < SHORTEST_m) return null
    if (length_m >= panel.moduleLength_m) continue
    const { perRow } = rowsWithin({ ...panel, moduleLength_m: length_m }, place, EDGE_m)
    const needed = Math.ceil(area_m2 / (length_m * panel.moduleWidth_m) - 1e-9)
    if (perRow > 0 && needed <= perRow * rows)
      return words`${count(needed)} modules of ${figure(length_m, 'm')} × ${figure(panel.moduleWidth_m, 'm')} in ${count(rows)} rows make the area there.`
  }
  return null
}
