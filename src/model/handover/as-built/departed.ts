import { blackbody_Wm2, vapourPressure_Pa, WINDOW_EMISSION } from '#model/outdoors/air'
import { valueAt } from '#model/basis/numbers'
import { HOUR_MS } from '#model/basis/hours'
import type { Departure } from './departure.ts'
import type { AsBuiltInputs } from './inputs-type.ts'
import { reducePanelHours, type PanelHours, type PanelSpec } from '#model/panels/plate'
import { windowPart_Wm2, type SkyHours } from '#model/outdoors/sky'
import type { PlaneIrradiance } from '#model/outdoors/sun'
import type { WeatherRecord } from '#model/outdoors/weather'

/** Parts of the panel side by side: under its cover and, where a film is torn, without. */
export interface PanelPart {
  readonly share_frac: number
  readonly hours: PanelHours
}

/** The hours of the panel as it departs from the design (all but flow, bond and sensors). */
export function departedHours(inputs: AsBuiltInputs, departure: Departure): PanelPart[] {
  const { weather, sky, plane } = departedOutdoors(inputs, departure)
  const whole = departedPanel(inputs.panel, departure)
  const torn_frac = whole.film === null ? 0 : departure.torn_frac
  const part = (spec: PanelSpec, share_frac: number) => ({
    share_frac,
    hours: reducePanelHours(weather, plane, sky, spec),
  })
  if (torn_frac === 0) return [part(whole, 1)]
  return [part(whole, 1 - torn_frac), part({ ...whole, film: null }, torn_frac)]
}

/** Weather, sky and sunlight as the departed panel meets them, on the logger's clock. */
export function departedOutdoors(inputs: AsBuiltInputs, departure: Departure) {
  const weather = withLoggedAir(inputs, late(inputs.weather, departure.clock_h))
  return {
    weather,
    sky: departedSky(inputs, weather, departure),
    plane: departedPlane(inputs, departure),
  }
}

/** A record's columns as a clock that is ahead by so many hours dates them; the ends are held. */
function late<T extends object>(record: T, clock_h: number): T {
  if (clock_h === 0) return record
  const columns = Object.entries(record).map(([name, value]: [string, unknown]) => [
    name,
    value instanceof Float64Array ? moved(value, clock_h) : value,
  ])
  return Object.fromEntries(columns) as T
}

/** A column as a clock that is ahead by so many hours dates it; the ends are held. */
export function moved(column: Float64Array, by_h: number): Float64Array {
  if (by_h === 0) return column
  const last = column.length - 1
  return column.map((_, i) => {
    const at = Math.min(last, Math.max(0, i - by_h))
    const below = Math.floor(at)
    const part = at - below
    return part === 0 ? column[below]! : (1 - part) * column[below]! + part * column[below + 1]!
  })
}

/** The logger's own air temperature where it has one: it is measured beside the panel. */
function withLoggedAir({ log }: AsBuiltInputs, weather: WeatherRecord): WeatherRecord {
  const logged = log.air_C
  if (logged === null) return weather
  const airTemp_C = weather.airTemp_C.map((air, i) => (Number.isFinite(logged[i]) ? logged[i]! : air))
  const dewPoint_C = weather.dewPoint_C.map((dew, i) => Math.min(dew, airTemp_C[i]!))
  return { ...weather, airTemp_C, dewPoint_C }
}

/** The panel's spec with wind, dirt, veil and back. */
export function departedPanel(spec: PanelSpec, departure: Departure): PanelSpec {
  const windExposure_frac = Math.min(10, spec.windExposure_frac * Math.exp(departure.windLog))
  const backLoss_Wm2K = Math.max(0, spec.backLoss_Wm2K + departure.back_Wm2K)
  const clear = 1 - departure.veil_frac
  const { coating, film } = spec
  if (film !== null) {
    return {
      ...spec,
      windExposure_frac,
      backLoss_Wm2K,
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
    backLoss_Wm2K,
    coating: {
      solarReflectance_frac: Math.max(0, coating.solarReflectance_frac - departure.soil_frac),
      windowEmittance_frac: coating.windowEmittance_frac * clear,
      offWindowEmittance_frac: coating.offWindowEmittance_frac * clear,
    },
  }
}

/** The sky with its bias, and with what hides it: black at air temperature. */
function departedSky(inputs: AsBuiltInputs, weather: WeatherRecord, departure: Departure): SkyHours {
  const sky = late(inputs.sky, departure.clock_h)
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
function departedPlane(inputs: AsBuiltInputs, departure: Departure): PlaneIrradiance {
  const plane = late(inputs.plane, departure.clock_h)
  const { start_utcMs, site } = inputs.weather
  const first_h = start_utcMs / HOUR_MS + site.utcOffset_h + 0.5 - departure.clock_h
  const factor = (i: number) => {
    const dated = i >= departure.shadeFrom ? 1 - departure.shade_frac : 1
    const hour = (((first_h + i) % 24) + 24) % 24
    const daily = hour >= departure.dayShadeFrom_h && hour < departure.dayShadeTo_h
    return (1 + departure.sunGain_frac) * dated * (daily ? 1 - departure.dayShade_frac : 1)
  }
  const scaled = (column: Float64Array) => column.map((value, i) => value * factor(i))
  return {
    ...plane,
    beam_Wm2: scaled(plane.beam_Wm2),
    diffuse_Wm2: scaled(plane.diffuse_Wm2),
    total_Wm2: scaled(plane.total_Wm2),
  }
}
