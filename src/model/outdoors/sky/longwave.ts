import { HOUR_MS } from '#model/basis/hours'
import { blackbody_Wm2, WINDOW_EMISSION, vapourPressure_Pa } from '#model/outdoors/air'
import { valueAt } from '#model/basis/numbers'
import { windowPart_Wm2 } from './bands.ts'
import { clearEmissivity, type ClearSkyAir } from './clear.ts'
import { cloudBase_m, cloudyCrawfordDuchon, cloudyMartinBerdahl } from './cloud.ts'
import type { SkyHours, SkyOptions } from './hours.ts'
import type { WeatherRecord } from '#model/outdoors/weather'

/**
 * Longwave from the sky in every hour, on an open horizontal plane, W/m².
 *
 * A measured value wins where there is one (NaN hours fall back to the model); otherwise L = ε σ T⁴ with the
 * clear-sky formula chosen, then cloud: by Martin & Berdahl 1984 where cloud was observed (read from the file), by
 * Crawford & Duchon 1999 where it was worked out from sunlight.
 * @throws RangeError when an option makes no sense
 */
export function skyHours(weather: WeatherRecord, options: SkyOptions): SkyHours {
  if (!(options.deficitFactor_frac >= 0)) {
    throw new RangeError(`deficit factor ${options.deficitFactor_frac}, must be ≥ 0`)
  }
  const { hours } = weather
  const total_Wm2 = new Float64Array(hours)
  const window_Wm2 = new Float64Array(hours)
  const offWindow_Wm2 = new Float64Array(hours)
  const measured = new Uint8Array(hours)
  const readings = options.useMeasured ? weather.skyLongwave_Wm2 : undefined
  for (let i = 0; i < hours; i++) {
    const air = clearSkyAir(weather, i)
    const black = blackbody_Wm2(air.air_C)
    const reading = readings?.[i] ?? NaN
    measured[i] = Number.isFinite(reading) ? 1 : 0
    const total = measured[i] === 1 ? reading : black * skyEmissivity(weather, options, air, i)
    total_Wm2[i] = total
    const part = windowPart_Wm2(total, black, valueAt(WINDOW_EMISSION, air.air_C), air.vapour_Pa)
    window_Wm2[i] = Math.min(total, part)
    offWindow_Wm2[i] = total - window_Wm2[i]!
  }
  return { hours, total_Wm2, window_Wm2, offWindow_Wm2, measured }
}

function clearSkyAir(weather: WeatherRecord, hour: number): ClearSkyAir {
  const utc_h = (weather.start_utcMs / HOUR_MS + hour + 0.5) % 24
  return {
    air_C: weather.airTemp_C[hour]!,
    dewPoint_C: weather.dewPoint_C[hour]!,
    vapour_Pa: vapourPressure_Pa(weather.dewPoint_C[hour]!),
    pressure_Pa: weather.pressure_Pa[hour]!,
    altitude_m: weather.site.altitude_m,
    solarHour_h: utc_h + weather.site.longitude_deg / 15,
  }
}

/** Emissivity of the sky in one hour, clear-sky formula and cloud together, –. */
function skyEmissivity(weather: WeatherRecord, options: SkyOptions, air: ClearSkyAir, hour: number): number {
  const formula = clearEmissivity(options.model, options.altitudeTerm, air)
  const clear = Math.max(0, 1 - options.deficitFactor_frac * (1 - formula))
  const cloud = weather.cloud_frac[hour]!
  return weather.origins.cloud_frac?.kind === 'read'
    ? cloudyMartinBerdahl(clear, cloud, cloudBase_m(air.air_C, air.dewPoint_C))
    : cloudyCrawfordDuchon(clear, cloud)
}
