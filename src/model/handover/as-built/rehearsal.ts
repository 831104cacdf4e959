import { HOUR_ERRORS } from './errors.ts'
import type { AsBuiltLog } from './log.ts'
import {
  AS_DESIGNED,
  departedPanel,
  departedPlane,
  departedSky,
  STEPS_AN_HOUR,
  type AsBuiltInputs,
  type Departure,
} from './plant.ts'
import { loopDuty } from '#model/panels/loop'
import {
  panelBalance,
  emptyPanelHour,
  readPanelHour,
  type PanelHour,
  panelSetting,
  type PanelSetting,
  LONGEST_STEP_S,
  waterAfter_kgm2,
} from '#model/panels/plate'

/** How the invented panel is run. */
export interface Rehearsal {
  readonly fault: Partial<Departure>
  /** Standard normal numbers; passed in, so that the same seed gives the same log. */
  readonly normal: () => number
  /** True: the pump runs all hours; false: only while the sun is down. */
  readonly allDay: boolean
  readonly flowMeter: boolean
  /** Inlet temperature, °C: mean and daily swing (coldest at 7, warmest at 19 local standard time). */
  readonly inletMean_C: number
  readonly inletSwing_K: number
}

/** Stretches of plate along the fluid in the invented panel. */
const STRETCHES = 12

/**
 * An invented logger record: a panel with a known fault under the weather of `inputs`, worked out with the full plate
 * balance (not the reduced hours) stretch by stretch along the fluid, with errors of sky, wind, sun and sensors.
 * `inputs.log` is not read.
 */
export function rehearsalLog(inputs: AsBuiltInputs, rehearsal: Rehearsal): AsBuiltLog {
  const fault = { ...AS_DESIGNED, ...rehearsal.fault }
  const { weather } = inputs
  const setting = panelSetting(departedPanel(inputs.panel, fault))
  const sky = departedSky(inputs, weather, fault)
  const plane = departedPlane(inputs.plane, fault)
  const duty = loopDuty(
    { ...inputs.loop, flow_kgsm2: inputs.loop.flow_kgsm2 * Math.exp(fault.flowLog) },
    inputs.area_m2,
  )
  const column = () => new Float64Array(weather.hours).fill(NaN)
  const panelIn_C = column()
  const panelOut_C = column()
  const flow_kgs = new Float64Array(weather.hours)
  const hour = emptyPanelHour()
  let water_kgm2 = 0
  let skyDay_Wm2 = 0
  for (let i = 0; i < weather.hours; i++) {
    if (i === 0 || (i + 12) % 24 === 0) skyDay_Wm2 = HOUR_ERRORS.skyDay_Wm2 * rehearsal.normal()
    readPanelHour(setting, weather, sky, plane, i, hour)
    unsettle(hour, weather.cloud_frac[i]!, skyDay_Wm2, rehearsal.normal)
    if (!rehearsal.allDay && weather.globalHorizontal_Wm2[i]! > 0) continue
    const in_C =
      rehearsal.inletMean_C + rehearsal.inletSwing_K * Math.cos((2 * Math.PI * ((i % 24) - 19)) / 24)
    let out_C = 0
    for (let k = 0; k < STEPS_AN_HOUR; k++) {
      const run = alongFluid(setting, hour, in_C, duty, inputs.fieldFactor_frac, water_kgm2)
      const { water_kgm2s, plate_C } = run
      water_kgm2 = waterAfter_kgm2(water_kgm2, water_kgm2s, LONGEST_STEP_S, plate_C, setting.waterLimit_kgm2)
      out_C += run.out_C / STEPS_AN_HOUR
    }
    panelIn_C[i] = in_C
    panelOut_C[i] = out_C - fault.offset_K + HOUR_ERRORS.sensors_K * rehearsal.normal()
    flow_kgs[i] = duty.flow_kgs
  }
  return {
    hours: weather.hours,
    panelIn_C,
    panelOut_C,
    flow_kgs: rehearsal.flowMeter ? flow_kgs : null,
    pumpRun_frac: flow_kgs.map((flow) => (flow > 0 ? 1 : 0)),
    air_C: null,
    store_C: null,
    room_C: null,
    basis: 'Invented for this tool: a computed panel with sensor and weather errors added.',
  }
}

/** The weather as it truly was: sky, wind and sun a little off the record. */
function unsettle(hour: PanelHour, cloud_frac: number, skyDay_Wm2: number, normal: () => number): void {
  const skyHour = Math.hypot(HOUR_ERRORS.skyHour_Wm2, HOUR_ERRORS.cloudSky_Wm2 * cloud_frac)
  const more = skyDay_Wm2 + skyHour * normal()
  // A sky formula mostly errs in the window, where a clear sky is not yet black.
  hour.window_Wm2 = Math.max(0, hour.window_Wm2 + 0.75 * more)
  hour.offWindow_Wm2 += 0.25 * more
  hour.forced_Wm2K *= Math.exp(HOUR_ERRORS.windLog * normal())
  hour.sun_Wm2 = Math.max(0, hour.sun_Wm2 * (1 + HOUR_ERRORS.sun_frac * normal()))
}

/** The fluid through the panel in stretches, each in balance with its piece of plate. */
function alongFluid(
  setting: PanelSetting,
  hour: PanelHour,
  in_C: number,
  duty: { area_m2: number; capacityRate_WK: number; fluidToPlate_Wm2K: number },
  fieldFactor_frac: number,
  water_kgm2: number,
) {
  const perStretch = duty.area_m2 / STRETCHES
  let fluid_C = in_C
  let plates = 0
  let water_kgm2s = 0
  for (let k = 0; k < STRETCHES; k++) {
    const plate_C = stretchPlate_C(
      setting,
      hour,
      fluid_C,
      duty.fluidToPlate_Wm2K / fieldFactor_frac,
      water_kgm2,
    )
    const state = panelBalance(setting, hour, plate_C, water_kgm2)
    fluid_C -= (perStretch * fieldFactor_frac * state.q_Wm2) / duty.capacityRate_WK
    plates += plate_C / STRETCHES
    water_kgm2s += state.water_kgm2s / STRETCHES
  }
  return { out_C: fluid_C, plate_C: plates, water_kgm2s }
}

/** Plate temperature at which it sheds what the fluid beside it gives, °C, by secant. */
function stretchPlate_C(
  setting: PanelSetting,
  hour: PanelHour,
  fluid_C: number,
  fluidToPlate_Wm2K: number,
  water_kgm2: number,
): number {
  const excess = (plate_C: number) =>
    panelBalance(setting, hour, plate_C, water_kgm2).q_Wm2 - fluidToPlate_Wm2K * (fluid_C - plate_C)
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
