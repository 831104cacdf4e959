import { HOUR_ERRORS } from './errors.ts'
import type { Departure } from './departure.ts'
import { departedOutdoors, departedPanel } from './departed.ts'
import type { AsBuiltInputs } from './inputs-type.ts'
import { STEPS_AN_HOUR } from './plant.ts'
import {
  emptyPanelHour,
  LONGEST_STEP_S,
  panelBalance,
  panelSetting,
  readPanelHour,
  waterAfter_kgm2,
  type PanelHour,
  type PanelSetting,
} from '#model/panels/plate'

/** Stretches of plate along the fluid in the invented panel. */
const STRETCHES = 12

/** How the fluid passes in one hour. */
export interface Passing {
  readonly area_m2: number
  readonly capacityRate_WK: number
  readonly fluidToPlate_Wm2K: number
}

interface Part {
  readonly share_frac: number
  readonly setting: PanelSetting
  readonly hour: PanelHour
}

/**
 * The invented panel: the full plate balance (not the reduced hours) stretch by stretch along the fluid, under weather
 * that is a little off its record.
 */
export class RehearsedPanel {
  private readonly outdoors
  private readonly parts: readonly Part[]
  private water_kgm2 = 0
  private skyDay_Wm2 = 0

  constructor(
    private readonly inputs: AsBuiltInputs,
    fault: Departure,
    private readonly normal: () => number,
  ) {
    // The panel lives on true time; what the logger's clock makes of it comes last.
    this.outdoors = departedOutdoors(inputs, { ...fault, clock_h: 0 })
    const spec = departedPanel(inputs.panel, fault)
    const part = (share_frac: number, film: typeof spec.film) => ({
      share_frac,
      setting: panelSetting({ ...spec, film }),
      hour: emptyPanelHour(),
    })
    const torn = spec.film === null ? 0 : fault.torn_frac
    this.parts = [part(1 - torn, spec.film), ...(torn > 0 ? [part(torn, null)] : [])]
  }

  /** Weather of an hour as it truly was: sky, wind and sun a little off the record. */
  begin(hour: number): void {
    const { normal } = this
    if (hour === 0 || (hour + 12) % 24 === 0) this.skyDay_Wm2 = HOUR_ERRORS.skyDay_Wm2 * normal()
    const cloud_frac = this.inputs.weather.cloud_frac[hour]!
    const skyHour = Math.hypot(HOUR_ERRORS.skyHour_Wm2, HOUR_ERRORS.cloudSky_Wm2 * cloud_frac)
    const more = this.skyDay_Wm2 + skyHour * normal()
    const wind = Math.exp(HOUR_ERRORS.windLog * normal())
    const sun = 1 + HOUR_ERRORS.sun_frac * normal()
    const { weather, sky, plane } = this.outdoors
    for (const part of this.parts) {
      readPanelHour(part.setting, weather, sky, plane, hour, part.hour)
      // A sky formula mostly errs in the window, where a clear sky is not yet black.
      part.hour.window_Wm2 = Math.max(0, part.hour.window_Wm2 + 0.75 * more)
      part.hour.offWindow_Wm2 += 0.25 * more
      part.hour.forced_Wm2K *= wind
      part.hour.sun_Wm2 = Math.max(0, part.hour.sun_Wm2 * sun)
    }
  }

  /** One hour with the pump running: outlet and mean plate, °C. */
  run(in_C: number, passing: Passing): { readonly out_C: number; readonly plate_C: number } {
    let out_C = 0
    let plate_C = 0
    const limit_kgm2 = this.parts[0]!.setting.waterLimit_kgm2
    for (let left = STEPS_AN_HOUR; left > 0;) {
      const { water_kgm2s, ...step } = this.alongFluid(in_C, passing)
      const after = waterAfter_kgm2(this.water_kgm2, water_kgm2s, LONGEST_STEP_S, step.plate_C, limit_kgm2)
      // Where the water stays as it is, so does all else to the end of the hour.
      const steps = after === this.water_kgm2 ? left : 1
      this.water_kgm2 = after
      out_C += (step.out_C * steps) / STEPS_AN_HOUR
      plate_C += (step.plate_C * steps) / STEPS_AN_HOUR
      left -= steps
    }
    return { out_C, plate_C }
  }

  /** The fluid through the panel in stretches, each in balance with its piece of plate. */
  private alongFluid(in_C: number, { area_m2, capacityRate_WK, fluidToPlate_Wm2K }: Passing) {
    const { fieldFactor_frac } = this.inputs
    const perStretch = area_m2 / STRETCHES
    let fluid_C = in_C
    let plates = 0
    let water_kgm2s = 0
    for (let k = 0; k < STRETCHES; k++) {
      const plate_C = this.stretchPlate_C(fluid_C, fluidToPlate_Wm2K / fieldFactor_frac)
      fluid_C -= (perStretch * fieldFactor_frac * this.shed_Wm2(plate_C)) / capacityRate_WK
      plates += plate_C / STRETCHES
      const { setting, hour } = this.parts[0]!
      water_kgm2s += panelBalance(setting, hour, plate_C, this.water_kgm2).water_kgm2s / STRETCHES
    }
    return { out_C: fluid_C, plate_C: plates, water_kgm2s }
  }

  private shed_Wm2(plate_C: number): number {
    return this.parts.reduce(
      (sum, { share_frac, setting, hour }, i) =>
        sum + share_frac * panelBalance(setting, hour, plate_C, i === 0 ? this.water_kgm2 : 0).q_Wm2,
      0,
    )
  }

  /** Plate temperature at which it sheds what the fluid beside it gives, °C, by secant. */
  private stretchPlate_C(fluid_C: number, fluidToPlate_Wm2K: number): number {
    const excess = (plate_C: number) => this.shed_Wm2(plate_C) - fluidToPlate_Wm2K * (fluid_C - plate_C)
    let before = fluid_C
    let atBefore = excess(before)
    let now = before - atBefore / (fluidToPlate_Wm2K + 6)
    for (let i = 0; i < 30; i++) {
      const atNow = excess(now)
      if (Math.abs(atNow) < 1e-4 || atNow === atBefore) break
      const next = now - (atNow * (now - before)) / (atNow - atBefore)
      before = now
      atBefore = atNow
      now = next
    }
    return now
  }
}
