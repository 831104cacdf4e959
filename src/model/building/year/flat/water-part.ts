import type { Flat } from './numbers.ts'

/** Less than this counts as dry; frost that stays on a face, kg/m²: `panels/plate/water.ts`. */
const DRY_KGM2 = 1e-7
const FROST_LIMIT_KGM2 = 2.4

/** Water some seconds on: `panels/plate/water.ts`, waterAfter_kgm2. */
export function takeWaterAhead(s: Flat): void {
  s.waterAhead_kgm2 = s.water_kgm2 + s.gain_kgm2s * s.ahead_s
  if (s.waterAhead_kgm2 <= DRY_KGM2) s.waterAhead_kgm2 = 0
  else {
    const most_kgm2 = s.plate_C >= 0 ? s.waterLimit_kgm2 : FROST_LIMIT_KGM2
    if (s.waterAhead_kgm2 > most_kgm2) s.waterAhead_kgm2 = most_kgm2
  }
}
