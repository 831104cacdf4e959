import { blendedConvection_Wm2K, freeConvection_Wm2K } from '#model/air/convection.ts'
import type { ConvectionCurve } from '#model/panel/hours.ts'
import type { PanelHour } from '#model/panel/hour-inputs.ts'
import type { PanelSetting } from '#model/panel/setting.ts'

/** Face-to-air differences at which a side's curve meets the full convection, K: near, middle and far. */
interface FitPoints {
  readonly near_K: number
  readonly middle_K: number
  readonly far_K: number
}
/** A face colder than the air is seldom more than 25 K colder; a hotter one runs to 45 K and beyond. */
const COLD_POINTS: FitPoints = { near_K: 0.8, middle_K: 6, far_K: 25 }
const HOT_POINTS: FitPoints = { near_K: 0.8, middle_K: 10, far_K: 45 }

/** An empty curve for so many hours, to be filled by `fitConvection`. */
export function emptyCurve(hours: number, side: 'cold' | 'hot'): ConvectionCurve {
  return {
    base: new Float64Array(hours),
    root: new Float64Array(hours),
    line: new Float64Array(hours),
    span_K: (side === 'cold' ? COLD_POINTS : HOT_POINTS).far_K,
  }
}

/** Convection at a signed difference, face minus air, W/m²K. */
function convection_Wm2K(setting: PanelSetting, input: PanelHour, difference_K: number): number {
  const free = freeConvection_Wm2K(
    setting.free,
    input.air_C + difference_K,
    input.air_C,
    input.pressure_Pa,
    setting.spec.freeConvectionLength_m,
  )
  return blendedConvection_Wm2K(free, input.forced_Wm2K)
}

/** Sets one hour of a curve through the full convection at the side's three points. */
export function fitConvection(
  setting: PanelSetting,
  input: PanelHour,
  side: 'cold' | 'hot',
  curve: ConvectionCurve,
  hour: number,
): void {
  const points = side === 'cold' ? COLD_POINTS : HOT_POINTS
  const sign = side === 'cold' ? -1 : 1
  const near = Math.sqrt(points.near_K)
  const middle = Math.sqrt(points.middle_K)
  const far = Math.sqrt(points.far_K)
  const atNear = convection_Wm2K(setting, input, sign * points.near_K)
  const atMiddle = convection_Wm2K(setting, input, sign * points.middle_K)
  const atFar = convection_Wm2K(setting, input, sign * points.far_K)
  // Newton's form in √s, written out in powers.
  const first = (atMiddle - atNear) / (middle - near)
  const second = ((atFar - atMiddle) / (far - middle) - first) / (far - near)
  curve.base[hour] = atNear - first * near + second * near * middle
  curve.root[hour] = first - second * (near + middle)
  curve.line[hour] = second
}
