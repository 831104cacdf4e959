import { europeanTypicalYear } from '#model/weather/layout/european-typical-year.ts'
import { inventedSample } from '#model/weather/layout/invented-sample.ts'
import type { Layout, LayoutMatch } from '#model/weather/layout/layout.ts'
import { mountainForcing } from '#model/weather/layout/mountain-forcing.ts'
import { reanalysisHourly } from '#model/weather/layout/reanalysis-hourly.ts'
import { researchShip } from '#model/weather/layout/research-ship.ts'
import { surfaceRadiationDay } from '#model/weather/layout/surface-radiation-day.ts'
import { usSatellite } from '#model/weather/layout/us-satellite.ts'
import { usTypicalYear } from '#model/weather/layout/us-typical-year.ts'

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
