import { STILL_SPAN_K } from '#model/air/convection.ts'
import type { ConvectionCurve, PanelHours } from '#model/panel/hours.ts'

const PER_STILL_SPAN = 0.5 / STILL_SPAN_K
const STILL_ROOT = STILL_SPAN_K ** 0.25

/** Coefficient of one side at a fourth root of the difference, W/m²K. */
function onCurve(curve: ConvectionCurve, hour: number, w: number): number {
  return curve.constant[hour]! + w * (curve.first[hour]! + w * (curve.second[hour]! + w * curve.third[hour]!))
}

/** Fourth root of a face's distance from the air, held to the span of its side's curve. @param y_K face minus air */
export function faceRoot(panel: PanelHours, y_K: number): number {
  const s = y_K < 0 ? -y_K : y_K
  const span = y_K < 0 ? panel.cold.span_K : panel.hot.span_K
  return Math.sqrt(Math.sqrt(s < span ? s : span))
}

/** Convection of the exposed face from the reduced curves, W/m²K. @param root from `faceRoot` */
export function faceConvection_Wm2K(panel: PanelHours, hour: number, y_K: number, root: number): number {
  if (root >= STILL_ROOT) return onCurve(y_K < 0 ? panel.cold : panel.hot, hour, root)
  const cold = onCurve(panel.cold, hour, STILL_ROOT)
  const hot = onCurve(panel.hot, hour, STILL_ROOT)
  return cold + (hot - cold) * (y_K + STILL_SPAN_K) * PER_STILL_SPAN
}

/** Its change with the difference, W/m²K². @param root from `faceRoot` */
export function faceConvectionRise_Wm2K2(panel: PanelHours, hour: number, y_K: number, root: number): number {
  if (root >= STILL_ROOT) {
    const curve = y_K < 0 ? panel.cold : panel.hot
    if (y_K >= curve.span_K || y_K <= -curve.span_K) return 0
    const slope = curve.first[hour]! + root * (2 * curve.second[hour]! + root * 3 * curve.third[hour]!)
    return (0.25 * root * slope) / y_K
  }
  const cold = onCurve(panel.cold, hour, STILL_ROOT)
  const hot = onCurve(panel.hot, hour, STILL_ROOT)
  return (hot - cold) * PER_STILL_SPAN
}
