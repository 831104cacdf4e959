import type { Check } from '../check.ts'
import { HOURS, pageDifferences } from '../models/page-case.ts'
import { pageSunlight } from '../models/page-cloud-case.ts'

const page = (
  quantity: string,
  within: number,
  key: 'sky_Wm2' | 'window_Wm2' | 'sun_Wm2' | 'full_Wm2' | 'reduced_Wm2',
): Check => ({
  theme: 'Panel',
  quantity: `${quantity}, ${HOURS} random hours written again from the page: largest difference`,
  unit: 'W/m²',
  kind: 'independent calculation',
  source: 'modelPage',
  where: 'One hour, step by step',
  got: () => pageDifferences()[key],
  want: [0, within],
  within: 0,
  because: `${within} W/m²: what the page is held to; integrals there, polynomials and tables here`,
})

export const pageChecks: readonly Check[] = [
  page('longwave of the sky', 0.1, 'sky_Wm2'),
  page('longwave of the sky inside the window', 0.1, 'window_Wm2'),
  page('sunlight on the tilted face behind a horizon', 0.1, 'sun_Wm2'),
  page(
    'heat leaving the plate, bare and under film, dry, wet and frozen, new and aged, full balance',
    1,
    'full_Wm2',
  ),
  page('heat leaving the plate, as reduced for the year', 1, 'reduced_Wm2'),
  {
    theme: 'Sky',
    quantity: 'cloud worked out from sunlight, five years and a week, by day and night: largest difference',
    unit: '–',
    kind: 'independent calculation',
    source: 'modelPage',
    where: 'Weather',
    got: () => Math.max(pageSunlight().cloudByDay, pageSunlight().cloudByNight),
    want: [0, 0.001],
    within: 0,
    because: '0.001 of cover moves the sky by 0.1 W/m²; written again from the page',
  },
]
