/**
 * Field notes made by the full panel model with noise, for tests: conditions go the way a panel hour goes (weather
 * record → sky → plane → balance), not through the bench's own code; every error is drawn afresh.
 */
import {
  readingProposals,
  USUAL_BOARD,
  type BenchEstimate,
  type BenchMoment,
  type BenchReadings,
  type BenchSample,
  type Cover,
  type Light,
  type ReadingProposal,
  type WindClass,
} from '#model/panels/readings'
import type { FilmOptics } from '#model/panels/coating'
import { panelBalance, emptyPanelHour, readPanelHour, panelSetting } from '#model/panels/plate'
import { skyHours } from '#model/outdoors/sky'
import type { WeatherRecord } from '#model/outdoors/weather'

export interface Optics {
  readonly solarReflectance_frac: number
  readonly emittance_frac: number
}

/** One moment to be read, by intention. */
export interface MomentPlan {
  readonly light: Light
  readonly wind: WindClass
  readonly air_C: number
  readonly dewPoint_C: number
  readonly sun_Wm2: number
  readonly cover?: Cover
}

export const POLYETHYLENE: FilmOptics = {
  solarTransmittance_frac: 0.9,
  solarReflectance_frac: 0.08,
  windowTransmittance_frac: 0.86,
  windowReflectance_frac: 0.08,
  offWindowTransmittance_frac: 0.8,
  offWindowReflectance_frac: 0.08,
  gap_m: 0.02,
  flutter_frac: 0.3,
}

/** Standard normal numbers from a uniform source (Box & Muller 1958). */
export function normals(uniform: () => number): () => number {
  return () => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform())
}

/** Errors as the bench states them; written out again here so that a change of one without the other shows. */
const SD = { probe: 0.3, probeShared: 0.3, air: 0.5, sunGain: 0.05, skyAll: 6, skyHour: 8, gust: 0.3 }
const CLASS = {
  calm: { mean: 0.5, log: 0.4 },
  breezy: { mean: 2, log: 0.35 },
  metered: { mean: 1.5, log: 0.25 },
}

/**
 * Wind at which the panel's straight line (3.0 W/m²K per m/s) has the coefficient of a plate of 0.2 m along the wind:
 * 0.664 Re^½ Pr^⅓ k/L with ν 15.6e-6, k 0.0262, Pr 0.71 is 8.79 W/m²K at 1 m/s (the rounded air of a table).
 */
const lineWind_ms = (wind_ms: number) => (8.79 * Math.sqrt(wind_ms)) / 3.0

/** Reads a board by the plan, with errors from `normal` (pass () => 0 for none). */
export function fieldNotes(
  plans: readonly MomentPlan[],
  samples: readonly BenchSample[],
  truths: readonly Optics[],
  normal: () => number,
): BenchReadings {
  const film = plans.some((plan) => plan.cover === 'film') ? POLYETHYLENE : null
  const shared = {
    probe: SD.probeShared * normal(),
    sunGain: SD.sunGain * normal(),
    sky: SD.skyAll * normal(),
    wind: {
      calm: CLASS.calm.log * normal(),
      breezy: CLASS.breezy.log * normal(),
      metered: CLASS.metered.log * normal(),
    },
    trueFilm: film === null ? null : otherFilm(film, 0.02 * normal(), 0.04 * normal()),
  }
  const moments = plans.map((plan): BenchMoment => {
    const cls = CLASS[plan.wind]
    const gust = plan.wind === 'metered' ? Math.hypot(0.15, 0.15 / 1.5) : SD.gust
    const sunError = plan.light === 'sun' ? 5 + 0.02 * plan.sun_Wm2 : plan.light === 'shade' ? 30 : 0
    const truth = {
      ...plan,
      air_C: plan.air_C + SD.air * normal(),
      sun_Wm2: Math.max(0, plan.sun_Wm2 * (1 + shared.sunGain) + sunError * normal()),
      sky_Wm2: shared.sky + Math.hypot(SD.skyHour, plan.light === 'shade' ? 12 : 0) * normal(),
      wind_ms: Math.exp(shared.wind[plan.wind]) * lineWind_ms(cls.mean * Math.exp(gust * normal())),
    }
    return {
      time: null,
      airTemp_C: plan.air_C,
      dewPoint_C: plan.dewPoint_C,
      light: plan.light,
      sun_Wm2: plan.light === 'sun' ? plan.sun_Wm2 : null,
      skyLongwave_Wm2: null,
      cloud_frac: 0,
      wind: plan.wind,
      wind_ms: plan.wind === 'metered' ? cls.mean : null,
      surfaces: samples.map((_, sample) => ({
        sample,
        shown_C:
          restingByPanelRoom_C(truth, truths[sample]!, plan.cover === 'film' ? shared.trueFilm : null) +
          shared.probe +
          SD.probe * normal(),
        cover: plan.cover ?? 'bare',
        thermometer: 'contact',
      })),
    }
  })
  return {
    board: { ...USUAL_BOARD, film },
    samples,
    moments,
    infraredSetting_frac: 0.95,
    basis: 'Made by a test.',
  }
}

function otherFilm(film: FilmOptics, solar: number, infrared: number): FilmOptics {
  return {
    ...film,
    solarTransmittance_frac: Math.min(0.92, film.solarTransmittance_frac + solar),
    windowTransmittance_frac: Math.min(0.92, film.windowTransmittance_frac + infrared),
    offWindowTransmittance_frac: Math.min(0.92, film.offWindowTransmittance_frac + infrared),
  }
}

/** Resting temperature through the panel room alone: one-hour record, sky, plane, balance, bisection. */
function restingByPanelRoom_C(
  truth: MomentPlan & { readonly sky_Wm2: number; readonly wind_ms: number },
  optics: Optics,
  film: FilmOptics | null,
): number {
  const one = (value: number) => Float64Array.of(value)
  const record: WeatherRecord = {
    site: { name: 'test', latitude_deg: 40, longitude_deg: 0, altitude_m: 0, utcOffset_h: 0 },
    start_utcMs: 0,
    hours: 1,
    radiationMiddle_h: 0.5,
    airTemp_C: one(truth.air_C),
    dewPoint_C: one(truth.dewPoint_C),
    pressure_Pa: one(101325),
    // The record's wind is at 10 m in open country; a panel at 10 m in the open meets it unchanged.
    wind_ms: one(truth.wind_ms),
    globalHorizontal_Wm2: one(truth.sun_Wm2),
    directNormal_Wm2: one(0),
    diffuseHorizontal_Wm2: one(truth.sun_Wm2),
    cloud_frac: one(0),
    origins: {},
    basis: 'test',
  }
  const options = {
    model: 'matsunobuCoimbraPrata',
    altitudeTerm: false,
    useMeasured: true,
    deficitFactor_frac: 1,
  } as const
  const modelled = skyHours(record, options).total_Wm2[0]!
  const sky = skyHours({ ...record, skyLongwave_Wm2: one(modelled + truth.sky_Wm2) }, options)
  const setting = panelSetting({
    coating: {
      solarReflectance_frac: optics.solarReflectance_frac,
      windowEmittance_frac: optics.emittance_frac,
      offWindowEmittance_frac: optics.emittance_frac,
    },
    film,
    tilt_deg: 0,
    azimuth_deg: 0,
    horizon_deg: 5,
    groundAlbedo_frac: 0.2,
    height_m: 10,
    terrain: 'open',
    windModel: 'watmuff1977',
    windExposure_frac: 1,
    freeConvectionLength_m: 0.05,
    backLoss_Wm2K: 1,
    heatCapacity_Jm2K: 0,
  })
  const hour = emptyPanelHour()
  const zero = one(0)
  const plane = {
    beam_Wm2: zero,
    diffuse_Wm2: zero,
    total_Wm2: one(truth.light === 'night' ? 0 : truth.sun_Wm2),
    cosIncidence: zero,
  }
  readPanelHour(setting, record, sky, plane, 0, hour)
  let [low, high] = [truth.air_C - 60, truth.air_C + 100]
  for (let i = 0; i < 50; i++) {
    const middle = 0.5 * (low + high)
    if (panelBalance(setting, hour, middle, 0).q_Wm2 < 0) low = middle
    else high = middle
  }
  return 0.5 * (low + high)
}

export const REFERENCE: BenchSample = {
  name: 'Reference white',
  known: {
    solarReflectance_frac: 0.8,
    solarReflectanceSd_frac: 0.02,
    emittance_frac: 0.9,
    emittanceSd_frac: 0.02,
  },
}

export const unknown = (name: string): BenchSample => ({ name, known: null })

export const NOON: MomentPlan = { light: 'sun', wind: 'calm', air_C: 30, dewPoint_C: 4, sun_Wm2: 920 }
export const AFTERNOON: MomentPlan = { ...NOON, wind: 'breezy', sun_Wm2: 700 }
export const CALM_NIGHT: MomentPlan = { light: 'night', wind: 'calm', air_C: 20, dewPoint_C: -6, sun_Wm2: 0 }
export const BREEZY_NIGHT: MomentPlan = { ...CALM_NIGHT, wind: 'breezy', air_C: 18 }
export const SHADE: MomentPlan = { light: 'shade', wind: 'calm', air_C: 29, dewPoint_C: 4, sun_Wm2: 60 }

/** The readings proposed, in one go. */
export function allProposals(readings: BenchReadings, estimate: BenchEstimate): ReadingProposal[] {
  const steps = readingProposals(readings, estimate)
  for (;;) {
    const step = steps.next()
    if (step.done === true) return step.value
  }
}

/** The one that narrows most. */
export const nextReading = (readings: BenchReadings, estimate: BenchEstimate): ReadingProposal =>
  allProposals(readings, estimate)[0]!
