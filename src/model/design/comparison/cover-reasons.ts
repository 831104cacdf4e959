import { HOUR_S } from '#model/basis/hours'
import {
  type PanelHours,
  type PanelTangent,
  panelTangent,
  FULL_COVER_KGM2,
  waterAfter_kgm2,
  waterUnderSky_kgm2s,
} from '#model/panels/plate'
import type { YearResult } from '#model/building/year'

/** Hours the loop ran, sorted by what decides between film and bare in them. */
export const COVER_CAUSES = ['wetFilm', 'warmPlate', 'coldPlate'] as const
export type CoverCause = (typeof COVER_CAUSES)[number]

/** The hours of one cause. */
export interface CoverPart {
  readonly cause: CoverCause
  /** Pump hours. */
  readonly run_h: number
  /** Heat a bare m² sheds more than a covered one in them, J/m²; negative where film is ahead. */
  readonly bareAhead_Jm2: number
  /** Mean of plate minus air in them, K. */
  readonly plateAboveAir_K: number
}

/** Why one cover sheds more than the other: both at the same plate temperatures, hour by hour. */
export interface CoverReasons {
  /** Heat given off in the pump hours, J/m². */
  readonly bare_Jm2: number
  readonly film_Jm2: number
  readonly run_h: number
  readonly parts: readonly CoverPart[]
}

const SUB_STEPS = 4

/**
 * Puts a bare and a covered panel through the plate temperatures of one simulated design, so that area, store and
 * plan are out of the question, and splits the difference by cause: film shut by dew or frost; plate warmer than
 * the air, where wind helps; plate colder than the air, where wind harms.
 * @param year  of the design whose plate temperatures and pump hours are taken
 * @returns null when its pump never runs
 * @throws RangeError when the records differ in length
 */
export function coverReasons(bare: PanelHours, film: PanelHours, year: YearResult): CoverReasons | null {
  if (bare.hours !== year.hours || film.hours !== year.hours)
    throw new RangeError(`cover reasons: ${bare.hours}, ${film.hours} and ${year.hours} hours do not match`)
  const bareSide = new Side(bare)
  const filmSide = new Side(film)
  const sums = { wetFilm: emptySum(), warmPlate: emptySum(), coldPlate: emptySum() }
  const total = { bare_Jm2: 0, film_Jm2: 0, run_h: 0 }
  for (let h = 0; h < year.hours; h++) {
    const plate_C = year.plate_C[h]!
    if (Number.isNaN(plate_C)) continue
    const bare_Jm2 = bareSide.shed_Jm2(h, plate_C)
    const film_Jm2 = filmSide.shed_Jm2(h, plate_C)
    const run = year.pumpRun_frac[h]!
    if (!(run > 0)) continue
    const above_K = plate_C - bare.air_C[h]!
    const cause =
      filmSide.water_kgm2 >= FULL_COVER_KGM2 ? 'wetFilm' : above_K >= 0 ? 'warmPlate' : 'coldPlate'
    const sum = sums[cause]
    sum.run_h += run
    sum.bareAhead_Jm2 += run * (bare_Jm2 - film_Jm2)
    sum.above_Kh += run * above_K
    total.run_h += run
    total.bare_Jm2 += run * bare_Jm2
    total.film_Jm2 += run * film_Jm2
  }
  if (total.run_h === 0) return null
  const parts = COVER_CAUSES.filter((cause) => sums[cause].run_h > 0).map((cause) => {
    const { run_h, bareAhead_Jm2, above_Kh } = sums[cause]
    return { cause, run_h, bareAhead_Jm2, plateAboveAir_K: above_Kh / run_h }
  })
  return { ...total, parts }
}

const emptySum = () => ({ run_h: 0, bareAhead_Jm2: 0, above_Kh: 0 })

/** One panel led through given plate temperatures, with the dew it gathers on the way. */
class Side {
  water_kgm2 = 0
  private readonly panel: PanelHours
  private readonly tangent: PanelTangent = { q_Wm2: 0, slope_Wm2K: 0, water_kgm2s: 0 }

  constructor(panel: PanelHours) {
    this.panel = panel
  }

  /** Heat leaving the plate in an hour, J/m². */
  shed_Jm2(hour: number, plate_C: number): number {
    const { panel, tangent } = this
    const step_s = HOUR_S / SUB_STEPS
    let shed_Jm2 = 0
    for (let k = 0; k < SUB_STEPS; k++) {
      panelTangent(panel, hour, plate_C, this.water_kgm2, tangent)
      shed_Jm2 += tangent.q_Wm2 * step_s
      const water_kgm2s = waterUnderSky_kgm2s(panel, hour, plate_C, this.water_kgm2, tangent)
      this.water_kgm2 = waterAfter_kgm2(this.water_kgm2, water_kgm2s, step_s, plate_C, panel.waterLimit_kgm2)
    }
    return shed_Jm2
  }
}
