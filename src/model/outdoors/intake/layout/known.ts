import { europeanTypicalYear } from './european-typical-year.ts'
import { inventedSample } from './invented-sample.ts'
import type { Layout, LayoutMatch } from './layout.ts'
import { mountainForcing } from './mountain-forcing.ts'
import { reanalysisHourly } from './reanalysis-hourly.ts'
import { researchShip } from './research-ship.ts'
import { surfaceRadiationDay } from './surface-radiation-day.ts'
import { usSatellite } from './us-satellite.ts'
import { usTypicalYear } from './us-typical-year.ts'

/** The layouts recognised outright, the surest marks first. */
export const LAYOUTS: readonly Layout[] = [
  inventedSample,
  usTypicalYear,
  europeanTypicalYear,
  usSatellite,
  reanalysisHourly,
  surfaceRadiationDay,
  researchShip,
  mountainForcing,
]

/** The layout the first lines of a file show, or null. */
export function recogniseLayout(lines: readonly string[]): (LayoutMatch & { readonly id: string }) | null {
  for (const layout of LAYOUTS) {
    const match = layout.recognise(lines)
    if (match !== null) return { ...match, id: layout.id }
  }
  return null
}
