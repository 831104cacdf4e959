import { FULL_COVER_KGM2, LONGEST_STEP_S } from '#model/panels/plate'
import { takeBareTangent } from './face-part.ts'
import { takeFilmTangent } from './film-part.ts'
import type { Flat } from './numbers.ts'

/** Heat leaving the plate, its slope and the water gained at `at_C`, `atWater_kgm2`: `panels/plate/tangent.ts`, tangentAt. */
export function takeTangent(s: Flat): void {
  const { atWater_kgm2 } = s
  s.wet_frac = s.limit_kgm2s = 0
  if (atWater_kgm2 > 0) {
    s.wet_frac = atWater_kgm2 >= FULL_COVER_KGM2 ? 1 : atWater_kgm2 / FULL_COVER_KGM2
    s.limit_kgm2s = (atWater_kgm2 > FULL_COVER_KGM2 ? atWater_kgm2 : FULL_COVER_KGM2) / LONGEST_STEP_S
  }
  if (s.hasFilm === 1) takeFilmTangent(s)
  else takeBareTangent(s)
  // H T − r of all panels: `plate-step.ts`, setTangent.
  s.shed_WK = s.shed_m2 * s.slope_Wm2K
  s.rest_W = s.shed_WK * s.at_C - s.shed_m2 * s.q_Wm2
}
