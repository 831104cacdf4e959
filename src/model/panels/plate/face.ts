import {
  EVAPORATION_HEAT_FALL_JKGK,
  EVAPORATION_HEAT_JKG,
  LOWEST_C,
  SATURATION_PA,
  SEGMENTS,
  STEPS_PER_K,
  STILL_SPAN_K,
} from '#model/outdoors/air'
import { slopeAt, valueAt, type Polynomial5 } from '#model/basis/numbers'
import { FilmGap } from './film-gap.ts'
import { FaceCurve, STILL_ROOT } from './face-curve.ts'
import type { PanelHours, PanelPoint } from './hours.ts'
import { changeHeat_Jkg, evaporationLimit_kgm2s, PATCHY_K, wetness_frac } from './water.ts'

/**
 * The exposed face in one hour: that hour's numbers copied from the panel's columns once for the dozens of times they
 * are read in it, and what the face does at one temperature. Its methods take and give numbers in fields, which V8
 * leaves where they are; arguments of a call that it does not inline are boxed (the year takes half as long again).
 */
export class Face {
  panel: PanelHours | null = null
  hour = -1
  air_C = 0
  backLoss_Wm2K = 0
  private vapour_Pa = 0
  private massTransfer = 0
  private dryGain_Wm2 = 0
  private wetGain_Wm2 = 0
  private readonly cold = new FaceCurve()
  private readonly hot = new FaceCurve()
  /** Convection within 1 K of the air, a straight line: at the air's temperature, and its slope. */
  still_Wm2K = 0
  stillRise_Wm2K2 = 0
  /** Under the face, where it is a film. */
  readonly gap = new FilmGap()
  private readonly mixed: Polynomial5 = new Float64Array(6)

  /** Temperature of the face, °C, and fastest evaporation, kg/m² s (0: the face only gathers dew). Set before the methods below. */
  temp_C = 0
  limit_kgm2s = 0
  /** Convection, W/m²K, and its change with temperature, W/m²K² (`convect`). */
  h_Wm2K = 0
  rise_Wm2K2 = 0
  /** Evaporation, kg/m² s (negative: dew or frost), its change with temperature, kg/m² s K, and its heat, J/kg (`evaporate`). */
  evaporation_kgm2s = 0
  evaporationSlope_kgm2sK = 0
  changeHeat_Jkg = 0
  /** Longwave and irradiance out less in, W/m², and its slope, W/m²K, of a bare plate (`radiate`); its wet share. */
  radiated_Wm2 = 0
  radiatedSlope_Wm2K = 0
  wet_frac = 0

  /** Copies one hour of a panel. */
  set(panel: PanelHours, hour: number): void {
    this.panel = panel
    this.hour = hour
    this.air_C = panel.air_C[hour]!
    this.vapour_Pa = panel.vapour_Pa[hour]!
    this.massTransfer = panel.massTransfer[hour]!
    this.dryGain_Wm2 = panel.dryGain.plate_Wm2[hour]!
    this.wetGain_Wm2 = panel.wetGain.plate_Wm2[hour]!
    this.backLoss_Wm2K = panel.backLoss_Wm2K
    if (panel.gap !== null) this.gap.set(panel.gap, this.air_C, hour)
    this.cold.set(panel.cold, hour)
    this.hot.set(panel.hot, hour)
    const cold = this.cold.at(STILL_ROOT)
    const hot = this.hot.at(STILL_ROOT)
    this.still_Wm2K = 0.5 * (cold + hot)
    this.stillRise_Wm2K2 = (hot - cold) / (2 * STILL_SPAN_K)
  }

  /** Convection at `temp_C`. */
  convect(): void {
    const y = this.temp_C - this.air_C
    const distance = y < 0 ? -y : y
    if (distance < STILL_SPAN_K) {
      this.h_Wm2K = this.still_Wm2K + this.stillRise_Wm2K2 * y
      this.rise_Wm2K2 = this.stillRise_Wm2K2
      return
    }
    const { constant, first, second, third, span_K } = y < 0 ? this.cold : this.hot
    const w = Math.sqrt(Math.sqrt(distance < span_K ? distance : span_K))
    this.h_Wm2K = constant + w * (first + w * (second + w * third))
    const slope = first + w * (2 * second + w * 3 * third)
    this.rise_Wm2K2 = distance < span_K ? (0.25 * w * slope) / y : 0
  }

  /**
   * Evaporation or dew with the convection that `convect` found. Both factors of h (e_sat − e_air) move with the
   * temperature; the slope is held at zero where still air would make it negative, so that a step taken with it stays
   * stable. At its limit evaporation does not change.
   */
  evaporate(): void {
    const { temp_C, limit_kgm2s } = this
    const place = (temp_C - LOWEST_C) * STEPS_PER_K
    const i = place < 0 ? 0 : place < SEGMENTS ? Math.floor(place) : SEGMENTS - 1
    const step_Pa = SATURATION_PA[i + 1]! - SATURATION_PA[i]!
    const excess_Pa = SATURATION_PA[i]! + step_Pa * (place - i) - this.vapour_Pa
    this.evaporation_kgm2s = this.evaporationSlope_kgm2sK = 0
    if (excess_Pa >= 0 && limit_kgm2s === 0) return
    if (temp_C < PATCHY_K) this.freeze()
    else this.changeHeat_Jkg = EVAPORATION_HEAT_JKG - EVAPORATION_HEAT_FALL_JKGK * temp_C
    const wish = this.massTransfer * this.h_Wm2K * excess_Pa
    this.evaporation_kgm2s = wish < limit_kgm2s ? wish : limit_kgm2s
    if (wish >= limit_kgm2s) return
    const slope = this.h_Wm2K * step_Pa * STEPS_PER_K + this.rise_Wm2K2 * excess_Pa
    if (slope > 0) this.evaporationSlope_kgm2sK = this.massTransfer * slope
  }

  private freeze(): void {
    this.changeHeat_Jkg = changeHeat_Jkg(this.temp_C)
  }

  /** Sets temperature, wet share and limit of a bare plate at a point. */
  expose(point: PanelPoint): void {
    const { water_kgm2 } = point
    this.temp_C = point.plate_C
    if (water_kgm2 <= 0) {
      this.wet_frac = this.limit_kgm2s = 0
      return
    }
    this.wet_frac = wetness_frac(water_kgm2)
    this.limit_kgm2s = evaporationLimit_kgm2s(water_kgm2)
  }

  /** Radiation of a bare plate, its dry and wet share together. */
  radiate(): void {
    const { temp_C, wet_frac } = this
    const emission = this.emission()
    const gain_Wm2 = this.dryGain_Wm2 + wet_frac * (this.wetGain_Wm2 - this.dryGain_Wm2)
    this.radiated_Wm2 = valueAt(emission, temp_C) - gain_Wm2
    this.radiatedSlope_Wm2K = slopeAt(emission, temp_C)
  }

  private emission(): Polynomial5 {
    const { wet_frac } = this
    const dry = this.panel!.dryExchange.plateEmission
    const wet = this.panel!.wetExchange.plateEmission
    if (wet_frac === 0) return dry
    return wet_frac === 1 ? wet : this.mix(dry, wet)
  }

  private mix(dry: Polynomial5, wet: Polynomial5): Polynomial5 {
    const { wet_frac, mixed } = this
    for (let i = 0; i < 6; i++) mixed[i] = dry[i]! + wet_frac * (wet[i]! - dry[i]!)
    return mixed
  }
}
