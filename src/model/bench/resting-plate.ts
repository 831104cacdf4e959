import { panelBalance } from '#model/panel/balance.ts'
import type { PanelHour } from '#model/panel/hour-inputs.ts'
import type { PanelSetting } from '#model/panel/setting.ts'

/**
 * Temperature of a plate with nothing flowing in it, °C: where the full balance, dew included, gives no heat.
 * Illinois secant inside a bracket, to 1e-7 K.
 * @param water_kgm2  water or frost on its face
 */
export function restingPlate_C(setting: PanelSetting, hour: PanelHour, water_kgm2: number): number {
  const heat = (plate_C: number) => panelBalance(setting, hour, plate_C, water_kgm2).q_Wm2
  let low = hour.air_C - 60
  let high = hour.air_C + 110
  let atLow = heat(low)
  let atHigh = heat(high)
  for (let i = 0; i < 60 && high - low > 1e-7; i++) {
    const secant = (low * atHigh - high * atLow) / (atHigh - atLow)
    const next = secant > low && secant < high && i % 8 !== 7 ? secant : 0.5 * (low + high)
    const value = heat(next)
    if (Math.abs(value) < 1e-8) return next
    if (value > 0) {
      high = next
      atHigh = value
      atLow *= 0.5
    } else {
      low = next
      atLow = value
      atHigh *= 0.5
    }
  }
  return 0.5 * (low + high)
}
