import { blackbody_Wm2, WINDOW_EMISSION, vapourPressure_Pa } from '#model/outdoors/air'
import { valueAt } from '#model/basis/numbers'
import { runningHours, type AsBuiltLog } from './log.ts'
import { loopDuty, type LoopDuty, type LoopSpec } from '#model/panels/loop'
import {
  type PanelHours,
  type PanelTangent,
  reducePanelHours,
  type PanelSpec,
  panelTangent,
  LONGEST_STEP_S,
  waterAfter_kgm2,
} from '#model/panels/plate'
import { windowPart_Wm2, type SkyHours } from '#model/outdoors/sky'
import type { PlaneIrradiance } from '#model/outdoors/sun'
import type { WeatherRecord } from '#model/outdoors/weather'
import { panelExchange_WK } from '#model/building/year'

/** The panel as designed, with the weather and the log of the same hours. */
export interface AsBuiltInputs {
  readonly weather: WeatherRecord
  readonly sky: SkyHours
  /** Irradiance on the panel's own plane. */
  readonly plane: PlaneIrradiance
  readonly panel: PanelSpec
  readonly loop: LoopSpec
  readonly area_m2: number
  /** Share of the idealised radiator's exchange that was promised; the year is sized with the same. */
  readonly fieldFactor_frac: number
  readonly log: AsBuiltLog
}

/** How the built panel may differ from the design; all 0 is as designed. */
export interface Departure {
  /** Natural logarithm of true over designed wind exposure. */
  readonly windLog: number
  /** Added to the sky's longwave in every hour, W/m². */
  readonly sky_Wm2: number
  /** Added to the temperature difference by the pair of sensors, K. */
  readonly offset_K: number
  /** Natural logarithm of true over designed (or metered) flow. */
  readonly flowLog: number
  /** Solar reflectance lost to dirt (a film loses this much solar transmittance). */
  readonly soil_frac: number
  /** Share of infrared emittance (of a film: transmittance) lost. */
  readonly veil_frac: number
  /** Share of sky and sun hidden from hour `shadeFrom` on. */
  readonly shade_frac: number
  readonly shadeFrom: number
  /** Share of sunlight more than recorded. */
  readonly sunGain_frac: number
}

export const AS_DESIGNED: Departure = {
  windLog: 0,
  sky_Wm2: 0,
  offset_K: 0,
  flowLog: 0,
  soil_frac: 0,
  veil_frac: 0,
  shade_frac: 0,
  shadeFrom: 0,
  sunGain_frac: 0,
}

/** Dew and frost are stepped no longer than their evaporation limit allows: else more would dry than is there. */
export const STEPS_AN_HOUR = 3600 / LONGEST_STEP_S

/** Predicted temperature fall of the fluid (in − out), K, in the running hours of the log, in their order. */
export function predictedFall_K(
  inputs: AsBuiltInputs,
  hours: PanelHours,
  departure: Departure,
): Float64Array {
  const { log, area_m2, loop, fieldFactor_frac } = inputs
  const designed = loopDuty({ ...loop, flow_kgsm2: loop.flow_kgsm2 * Math.exp(departure.flowLog) }, area_m2)
  const running = new Set(runningHours(log))
  const fall_K = new Float64Array(running.size)
  const tangent: PanelTangent = { q_Wm2: 0, slope_Wm2K: 0, water_kgm2s: 0 }
  let water_kgm2 = 0
  let row = 0
  for (let hour = 0; hour < log.hours; hour++) {
    const duty = running.has(hour) ? hourDuty(designed, log, hour, departure.flowLog) : null
    let shed_W = 0
    for (let left = STEPS_AN_HOUR; left > 0;) {
      let plate_C = hours.equilibrium_C[hour]!
      if (duty === null) panelTangent(hours, hour, plate_C, water_kgm2, tangent)
      else
        plate_C = runningPlate_C(
          hours,
          hour,
          duty,
          fieldFactor_frac,
          log.panelIn_C[hour]!,
          water_kgm2,
          tangent,
        )
      const rate_kgm2s = tangent.water_kgm2s
      const after_kgm2 = waterAfter_kgm2(
        water_kgm2,
        rate_kgm2s,
        LONGEST_STEP_S,
        plate_C,
        hours.waterLimit_kgm2,
      )
      // Where the water stays as it is, so does all else to the end of the hour.
      const steps = after_kgm2 === water_kgm2 ? left : 1
      shed_W += ((duty?.area_m2 ?? 0) * fieldFactor_frac * tangent.q_Wm2 * steps) / STEPS_AN_HOUR
      water_kgm2 = after_kgm2
      left -= steps
    }
    if (duty !== null) fall_K[row++] = shed_W / duty.capacityRate_WK + departure.offset_K
  }
  return fall_K
}

/** The loop in one hour: at the metered flow where there is a meter. */
function hourDuty(designed: LoopDuty, log: AsBuiltLog, hour: number, flowLog: number): LoopDuty {
  if (log.flow_kgs === null) return designed
  const flow_kgs = log.flow_kgs[hour]! * Math.exp(flowLog)
  const specificHeat_JkgK = designed.capacityRate_WK / designed.flow_kgs
  return { ...designed, flow_kgs, capacityRate_WK: flow_kgs * specificHeat_JkgK }
}

/** Mean plate temperature at which the plate sheds what the fluid brings, °C; leaves its heat in `tangent`. */
function runningPlate_C(
  hours: PanelHours,
  hour: number,
  duty: LoopDuty,
  fieldFactor_frac: number,
  in_C: number,
  water_kgm2: number,
  tangent: PanelTangent,
): number {
  let plate_C = in_C
  for (let i = 0; i < 8; i++) {
    panelTangent(hours, hour, plate_C, water_kgm2, tangent)
    const slope_Wm2K = fieldFactor_frac * tangent.slope_Wm2K
    const exchange = panelExchange_WK(duty, slope_Wm2K)
    const excess_W = duty.area_m2 * fieldFactor_frac * tangent.q_Wm2 - exchange * (in_C - plate_C)
    const step = -excess_W / (duty.area_m2 * slope_Wm2K + exchange)
    if (Math.abs(step) < 1e-4) break
    plate_C += step
  }
  return plate_C
}

/** The hours of the panel as it departs from the design (all but flow and sensors). */
export function departedHours(inputs: AsBuiltInputs, departure: Departure): PanelHours {
  const weather = withLoggedAir(inputs)
  const sky = departedSky(inputs, weather, departure)
  const plane = departedPlane(inputs.plane, departure)
  return reducePanelHours(weather, plane, sky, departedPanel(inputs.panel, departure))
}

/** The logger's own air temperature where it has one: it is beside the panel. */
function withLoggedAir({ weather, log }: AsBuiltInputs): WeatherRecord {
  const logged = log.air_C
  if (logged === null) return weather
  const airTemp_C = weather.airTemp_C.map((air, i) => (Number.isFinite(logged[i]) ? logged[i]! : air))
  const dewPoint_C = weather.dewPoint_C.map((dew, i) => Math.min(dew, airTemp_C[i]!))
  return { ...weather, airTemp_C, dewPoint_C }
}

/** The panel's spec with wind, dirt and veil. */
export function departedPanel(spec: PanelSpec, departure: Departure): PanelSpec {
  const windExposure_frac = Math.min(10, spec.windExposure_frac * Math.exp(departure.windLog))
  const clear = 1 - departure.veil_frac
  const { coating, film } = spec
  if (film !== null) {
    return {
      ...spec,
      windExposure_frac,
      film: {
        ...film,
        solarTransmittance_frac: Math.max(0, film.solarTransmittance_frac - departure.soil_frac),
        windowTransmittance_frac: film.windowTransmittance_frac * clear,
        offWindowTransmittance_frac: film.offWindowTransmittance_frac * clear,
      },
    }
  }
  return {
    ...spec,
    windExposure_frac,
    coating: {
      solarReflectance_frac: Math.max(0, coating.solarReflectance_frac - departure.soil_frac),
      windowEmittance_frac: coating.windowEmittance_frac * clear,
      offWindowEmittance_frac: coating.offWindowEmittance_frac * clear,
    },
  }
}

/** The sky with its bias, and with what hides it: black at air temperature. */
export function departedSky(inputs: AsBuiltInputs, weather: WeatherRecord, departure: Departure): SkyHours {
  const { sky } = inputs
  const total_Wm2 = new Float64Array(sky.hours)
  const window_Wm2 = new Float64Array(sky.hours)
  for (let i = 0; i < sky.hours; i++) {
    const air_C = weather.airTemp_C[i]!
    const black = blackbody_Wm2(air_C)
    const blackWindow = valueAt(WINDOW_EMISSION, air_C)
    const hidden = i >= departure.shadeFrom ? departure.shade_frac : 0
    const open = sky.total_Wm2[i]! + departure.sky_Wm2
    const vapour = vapourPressure_Pa(weather.dewPoint_C[i]!)
    const window = Math.min(open, windowPart_Wm2(open, black, blackWindow, vapour))
    total_Wm2[i] = (1 - hidden) * open + hidden * black
    window_Wm2[i] = (1 - hidden) * window + hidden * blackWindow
  }
  const offWindow_Wm2 = total_Wm2.map((total, i) => total - window_Wm2[i]!)
  return { ...sky, total_Wm2, window_Wm2, offWindow_Wm2 }
}

/** Irradiance on the plane, misread or shaded. */
export function departedPlane(plane: PlaneIrradiance, departure: Departure): PlaneIrradiance {
  const factor = (i: number) =>
    (1 + departure.sunGain_frac) * (i >= departure.shadeFrom ? 1 - departure.shade_frac : 1)
  const scaled = (column: Float64Array) => column.map((value, i) => value * factor(i))
  return {
    ...plane,
    beam_Wm2: scaled(plane.beam_Wm2),
    diffuse_Wm2: scaled(plane.diffuse_Wm2),
    total_Wm2: scaled(plane.total_Wm2),
  }
}
