import { STILL_SPAN_K } from '#model/outdoors/air'
import type { ConvectionCurve } from './hours.ts'

/** Fourth root of the span about the air's temperature within which convection is a straight line. */
export const STILL_ROOT = STILL_SPAN_K ** 0.25

/** Convection from one side's faces in one hour: see `ConvectionCurve`. */
export class FaceCurve {
  constant = 0
  first = 0
  second = 0
  third = 0
  span_K = 0

  set(curve: ConvectionCurve, hour: number): void {
    this.constant = curve.constant[hour]!
    this.first = curve.first[hour]!
    this.second = curve.second[hour]!
    this.third = curve.third[hour]!
    this.span_K = curve.span_K
  }

  /** W/m²K at a fourth root of the difference. */
  at(w: number): number {
    return this.constant + w * (this.first + w * (this.second + w * this.third))
  }
}
