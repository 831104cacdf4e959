import { convectionFit, emptyCurve, fitConvection, type ConvectionFit } from './convection-fit.ts'
import type { Exchange } from './exchange.ts'
import { settleEquilibrium } from './equilibrium.ts'
import { Face } from './face.ts'
import { flutter_Wm2K, outsideFactor_frac } from './flutter.ts'
import { emptyPanelHour, massTransfer, readPanelHour, type PanelHour } from './hour-inputs.ts'
import type { Gain, PanelHours, PanelPoint } from './hours.ts'
import { gapOnset_K, panelSetting, type PanelSetting } from './setting.ts'
import type { PanelSpec } from './spec.ts'
import type { SkyHours } from '#model/outdoors/sky'
import type { PlaneIrradiance } from '#model/outdoors/sun'
import type { WeatherRecord } from '#model/outdoors/weather'

/**
 * Reduces every hour of a record to what the loop needs, for one panel build-up.
 * @param sun  irradiance on the panel's own plane (`planeIrradiance` with its tilt, azimuth, albedo and horizon)
 * @throws RangeError when lengths differ or the spec makes no sense
 */
export function reducePanelHours(
  weather: WeatherRecord,
  sun: PlaneIrradiance,
  sky: SkyHours,
  spec: PanelSpec,
): PanelHours {
  const { hours } = weather
  if (sun.total_Wm2.length !== hours) {
    throw new RangeError(`irradiance has ${sun.total_Wm2.length} hours, the weather ${hours}`)
  }
  if (sky.hours !== hours) throw new RangeError(`sky has ${sky.hours} hours, the weather ${hours}`)
  const setting = panelSetting(spec)
  const fit = convectionFit(setting)
  const panel = emptyPanelHours(setting, hours)
  const input = emptyPanelHour()
  const face = new Face()
  const scratch: PanelPoint = { plate_C: 0, water_kgm2: 0, q_Wm2: 0, slope_Wm2K: 0, water_kgm2s: 0 }
  for (let hour = 0; hour < hours; hour++) {
    readPanelHour(setting, weather, sky, sun, hour, input)
    writeHour(setting, fit, input, panel, hour)
    settleEquilibrium(panel, hour, face, scratch)
    panel.vapour_Pa[hour] = input.vapour_Pa
  }
  return panel
}

/** Everything of one hour but its equilibrium and its vapour pressure (see `settleEquilibrium`). */
function writeHour(
  setting: PanelSetting,
  fit: ConvectionFit,
  input: PanelHour,
  panel: PanelHours,
  hour: number,
): void {
  panel.air_C[hour] = input.air_C
  panel.massTransfer[hour] = massTransfer(input.pressure_Pa)
  writeGain(setting.dry, input, panel.dryGain, hour)
  writeGain(setting.wet, input, panel.wetGain, hour)
  panel.absorbedSun_Wm2[hour] = (setting.dry.plateSun + setting.dry.filmSun) * input.sun_Wm2
  const { film } = setting.spec
  if (film !== null && panel.gap !== null) {
    panel.gap.flutter_Wm2K[hour] = flutter_Wm2K(film, input.forced_Wm2K)
    panel.gap.onset_K[hour] = gapOnset_K(input.air_C, input.pressure_Pa, panel.gap.width_m, setting.gapTilt)
    input.forced_Wm2K *= outsideFactor_frac(film)
  }
  fitConvection(fit.cold, input, panel.cold, hour)
  fitConvection(fit.hot, input, panel.hot, hour)
}

function writeGain(exchange: Exchange, input: PanelHour, gain: Gain, hour: number): void {
  gain.plate_Wm2[hour] =
    exchange.plateWindow * input.window_Wm2 +
    exchange.plateOff * input.offWindow_Wm2 +
    exchange.plateSun * input.sun_Wm2
  gain.film_Wm2[hour] =
    exchange.filmWindow * input.window_Wm2 +
    exchange.filmOff * input.offWindow_Wm2 +
    exchange.filmSun * input.sun_Wm2
}

function emptyPanelHours(setting: PanelSetting, hours: number): PanelHours {
  const { spec } = setting
  const column = () => new Float64Array(hours)
  return {
    hours,
    equilibrium_C: column(),
    conductance_Wm2K: column(),
    surface_C: column(),
    surfaceSlope: column(),
    air_C: column(),
    vapour_Pa: column(),
    massTransfer: column(),
    cold: emptyCurve(hours, 'cold'),
    hot: emptyCurve(hours, 'hot'),
    dryGain: { plate_Wm2: column(), film_Wm2: column() },
    wetGain: { plate_Wm2: column(), film_Wm2: column() },
    absorbedSun_Wm2: column(),
    dryExchange: setting.dry,
    wetExchange: setting.wet,
    gap:
      spec.film === null
        ? null
        : { width_m: spec.film.gap_m, ...setting.gapTilt, onset_K: column(), flutter_Wm2K: column() },
    backLoss_Wm2K: setting.backLoss_Wm2K,
    heatCapacity_Jm2K: spec.heatCapacity_Jm2K,
    waterLimit_kgm2: setting.waterLimit_kgm2,
  }
}
