import { STILL_SPAN_K } from '#model/air/convection.ts'
import type { ConvectionCurve, PanelHours } from '#model/panel/hours.ts'

const PER_STILL_SPAN = 0.5 / STILL_SPAN_K
const STILL_ROOT = STILL_SPAN_K ** 0.25

/** Coefficient of one side at a fourth root of the difference, W/m²K. */
function onCurve(curve: ConvectionCurve, hour: number, w: number): number {
  return curve.constant[hour]! + w * (curve.first[hour]! + w * (curve.second[hour]! + w * curve.third[hour]!))
}

/** Convection of the exposed face from the reduced curves, W/m²K. @param y_K face minus air */
export function faceConvection_Wm2K(panel: PanelHours, hour: number, y_K: number): number {
  const s = y_K < 0 ? -y_K : y_K
  if (s >= STILL_SPAN_K) {
    const curve = y_K < 0 ? panel.cold : panel.hot
    return onCurve(curve, hour, Math.sqrt(Math.sqrt(s < curve.span_K ? s : curve.span_K)))
  }
  const cold = onCurve(panel.cold, hour, STILL_ROOT)
  const hot = onCurve(panel.hot, hour, STILL_ROOT)
  return cold + (hot - cold) * (y_K + STILL_SPAN_K) * PER_STILL_SPAN
}

/** Its change with the difference, W/m²K². */
export function faceConvectionRise_Wm2K2(panel: PanelHours, hour: number, y_K: number): number {
  const s = y_K < 0 ? -y_K : y_K
  if (s >= STILL_SPAN_K) {
    const curve = y_K < 0 ? panel.cold : panel.hot
    if (s >= curve.span_K) return 0
    const w = Math.sqrt(Math.sqrt(s))
    const slope = curve.first[hour]! + w * (2 * curve.second[hour]! + w * 3 * curve.third[hour]!)
    return (0.25 * w * slope) / y_K
  }
  const cold = onCurve(panel.cold, hour, STILL_ROOT)
  const hot = onCurve(panel.hot, hour, STILL_ROOT)
  return (hot - cold) * PER_STILL_SPAN
}

/**
 * Slope of h (e_sat − e_air) with the face's temperature, W/m²K · Pa/K: both factors move. Held at zero where still
 * air would make it negative, so that a step taken with it stays stable.
 */
export function vapourSlope(h: number, rise: number, saturationSlope_PaK: number, excess_Pa: number): number {
  const slope = h * saturationSlope_PaK + rise * excess_Pa
  return slope > 0 ? slope : 0
}
