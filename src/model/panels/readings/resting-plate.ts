import { panelBalance, type PanelHour, type PanelSetting } from '#model/panels/plate'

/** First guess of a plate's slope, W/m²K: a bare plate in light wind. It only sets the bracket. */
const GUESSED_SLOPE_WM2K = 6
/** Heat is called nothing below this, W/m²: 1e-6 K at most. */
const NOTHING_WM2 = 1e-6

/**
 * Temperature of a plate with nothing flowing in it, °C: where the full balance, dew included, gives no heat.
 * A bracket stepped out from the air temperature, then the Illinois secant.
 * @param water_kgm2  water or frost on its face
 */
export function restingPlate_C(setting: PanelSetting, hour: PanelHour, water_kgm2: number): number {
  const heat = (plate_C: number) => panelBalance(setting, hour, plate_C, water_kgm2).q_Wm2
  let near = hour.air_C
  let atNear = heat(near)
  let far = near - atNear / GUESSED_SLOPE_WM2K
  let atFar = heat(far)
  for (let i = 0; i < 30 && atNear * atFar > 0; i++) {
    const step = 2 * (far - near)
    near = far
    atNear = atFar
    far += step
    atFar = heat(far)
  }
  for (let i = 0; i < 60 && Math.abs(atFar) > NOTHING_WM2; i++) {
    const next = (near * atFar - far * atNear) / (atFar - atNear)
    const value = heat(next)
    if (value * atFar < 0) {
      near = far
      atNear = atFar
    } else atNear *= 0.5
    far = next
    atFar = value
  }
  return far
}
