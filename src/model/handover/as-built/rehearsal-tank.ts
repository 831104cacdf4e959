import type { Departure } from './departure.ts'
import type { AsBuiltInputs } from './inputs-type.ts'

/** Litres of tank, and W/K of load by day and of loss, per m² of panel in the invented plant. */
const TANK_Lm2 = 100
const LOAD_Wm2K = 10
const LOSS_Wm2K = 0.3
const LOAD_HOURS = [11, 20] as const
/** Below this the invented pump stops: nothing may freeze, °C. */
const COLDEST_C = 4
const WATER_JKGK = 4186

/** The invented tank: cooled by the panel, warmed by a room by day and by what surrounds it. */
export class RehearsedTank {
  private store_C: number
  private readonly mean_C: number

  constructor(
    private readonly inputs: AsBuiltInputs,
    private readonly fault: Departure,
  ) {
    const { airTemp_C, hours } = inputs.weather
    this.mean_C = airTemp_C.reduce((sum, t) => sum + t, 0) / hours
    this.store_C = Math.max(COLDEST_C + 4, this.mean_C - 4)
  }

  room_C(hour: number): number {
    return Math.max(22, this.mean_C + 3) + 1.5 * Math.cos((2 * Math.PI * ((hour % 24) - 17)) / 24)
  }

  /** What the panel gets in an hour, °C, and whether the pump runs. */
  draw(hour: number): { readonly in_C: number; readonly store_C: number; readonly pumps: boolean } {
    const { mixing_frac } = this.fault
    const in_C = (1 - mixing_frac) * this.store_C + mixing_frac * this.room_C(hour) + 0.2
    return { in_C, store_C: this.store_C, pumps: in_C > COLDEST_C }
  }

  /** One hour on. @param heat_W  taken from the water by the panel */
  pass(hour: number, heat_W: number): void {
    const { area_m2 } = this.inputs
    const left = Math.max(0.05, 1 - (this.fault.leak_1d * hour) / 24)
    const local = hour % 24
    const loaded = local >= LOAD_HOURS[0] && local < LOAD_HOURS[1]
    const perKelvin = area_m2 * (LOSS_Wm2K + (loaded ? LOAD_Wm2K : 0))
    const capacity_JK = TANK_Lm2 * area_m2 * WATER_JKGK * left
    // Exactly, so that a nearly empty tank does not overshoot.
    const settled_C = this.room_C(hour) - heat_W / perKelvin
    this.store_C = settled_C + (this.store_C - settled_C) * Math.exp((-perKelvin * 3600) / capacity_JK)
  }
}
