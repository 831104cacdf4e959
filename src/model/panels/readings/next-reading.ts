import { benchFit, type BenchFit } from './bench-fit.ts'
import { isWet } from './doubtful-readings.ts'
import type { BenchEstimate } from './estimate.ts'
import type { BenchMoment, BenchReadings, Cover, Light, WindClass } from './reading.ts'
import { unknownParameter, type BenchUnknown } from './unknowns.ts'
import { expectedCovariance } from '#model/basis/numbers'

/** One more reading that could be taken, and what it would leave. */
export interface ReadingProposal {
  readonly light: Light
  readonly wind: WindClass
  readonly cover: Cover
  /** True when a reference paint is to be added to the board. */
  readonly withReference: boolean
  /** In words: what to read. */
  readonly what: string
  /** Doubt in the heat of the coatings, W/m²: root sum of squares, now and with the reading. */
  readonly doubtNow_Wm2: number
  readonly doubtThen_Wm2: number
}

/**
 * What a slip in each property costs a panel, W/m² per unit: irradiance of a bright day, and the net radiation of a
 * black plate on a clear night (both round figures; they only rank the proposals).
 */
const WORTH_WM2 = { reflectance: 900, emittance: 100 } as const

/** A plain white paint to buy as a reference: handbook range of aged white wall paints. */
const BOUGHT_REFERENCE = {
  name: 'reference paint',
  known: {
    solarReflectance_frac: 0.8,
    solarReflectanceSd_frac: 0.02,
    emittance_frac: 0.9,
    emittanceSd_frac: 0.02,
  },
} as const

/** All proposals, the most telling first: one more moment with every sample on the board. Yields how far it is, 0…1. */
export function* readingProposals(
  readings: BenchReadings,
  estimate: BenchEstimate,
): Generator<number, ReadingProposal[]> {
  const now = doubt(readings, estimate.fit, estimate)
  const tried: ReadingProposal[] = []
  const all = candidates(readings)
  for (const candidate of all) {
    const extended = withReading(readings, candidate)
    const then = doubt(
      extended,
      benchFit(extended, (row) => isWet(extended.moments[row.moment]!, row.surface)),
      estimate,
    )
    tried.push({ ...candidate, what: inWords(readings, candidate), doubtNow_Wm2: now, doubtThen_Wm2: then })
    yield tried.length / all.length
  }
  return tried.sort((a, b) => a.doubtThen_Wm2 - b.doubtThen_Wm2)
}

type Candidate = Pick<ReadingProposal, 'light' | 'wind' | 'cover' | 'withReference'>

function candidates(readings: BenchReadings): Candidate[] {
  const metered = readings.moments.some((moment) => moment.wind === 'metered')
  const winds: WindClass[] = metered ? ['metered'] : ['calm', 'breezy']
  const covers: Cover[] = readings.board.film === null ? ['bare'] : ['bare', 'film']
  const reference = readings.samples.some((sample) => sample.known !== null)
  const lights: Light[] = ['sun', 'night', 'shade']
  return lights.flatMap((light) =>
    winds.flatMap((wind) =>
      covers.flatMap((cover) =>
        (reference ? [false] : [false, true]).map((withReference) => ({ light, wind, cover, withReference })),
      ),
    ),
  )
}

function withReading(readings: BenchReadings, candidate: Candidate): BenchReadings {
  const samples = candidate.withReference ? [...readings.samples, BOUGHT_REFERENCE] : readings.samples
  const moment = likelyMoment(readings, candidate)
  const surfaces = samples.map((_, sample) => ({
    sample,
    shown_C: moment.airTemp_C,
    cover: candidate.cover,
    thermometer: 'contact' as const,
  }))
  return { ...readings, samples, moments: [...readings.moments, { ...moment, surfaces }] }
}

/** Weather of the extra reading: as in the notes for that light where there is any, else a usual fine day or night. */
function likelyMoment(readings: BenchReadings, { light, wind }: Candidate): BenchMoment {
  const like = readings.moments.find((moment) => moment.light === light) ?? readings.moments[0]!
  const known = like.light === light
  return {
    time: null,
    airTemp_C: known ? like.airTemp_C : like.airTemp_C + (light === 'night' ? -6 : 3),
    dewPoint_C: known ? like.dewPoint_C : Math.min(like.dewPoint_C, like.airTemp_C - 14),
    light,
    sun_Wm2: light === 'sun' ? (known ? like.sun_Wm2 : 850) : null,
    skyLongwave_Wm2: null,
    cloud_frac: known ? like.cloud_frac : 0,
    wind,
    wind_ms: wind === 'metered' ? 1.5 : null,
    surfaces: [],
  }
}

/** Root sum of squares of the coatings' doubts, each in the watts it costs. */
function doubt(readings: BenchReadings, fit: BenchFit, estimate: BenchEstimate): number {
  const values = fit.unknowns.map((unknown) => valueFor(readings, unknown, estimate))
  const covariance = expectedCovariance(fit, values)
  let sum = 0
  fit.unknowns.forEach((unknown, k) => {
    if (unknown.kind === 'wind' || readings.samples[unknown.sample]!.known !== null) return
    sum += covariance.get(k, k) * WORTH_WM2[unknown.kind] ** 2
  })
  return Math.sqrt(sum)
}

/** The estimate's value of an unknown, or its prior where the notes do not have it. */
function valueFor(readings: BenchReadings, unknown: BenchUnknown, estimate: BenchEstimate): number {
  const same = (other: BenchUnknown) =>
    other.kind === 'wind' || unknown.kind === 'wind'
      ? other.kind === 'wind' && unknown.kind === 'wind' && other.wind === unknown.wind
      : other.kind === unknown.kind && other.sample === unknown.sample
  const k = estimate.fit.unknowns.findIndex(same)
  return k >= 0 ? estimate.result.values[k]! : unknownParameter(unknown, readings.samples).priorMean
}

const LIGHT_WORDS: Readonly<Record<Light, string>> = {
  sun: 'in full sun near noon',
  shade: 'in open shade',
  night: 'on a clear, dry night',
}
const WIND_WORDS: Readonly<Record<WindClass, string>> = {
  metered: 'with the wind metered',
  calm: 'in calm air',
  breezy: 'in a steady breeze',
}

function inWords(readings: BenchReadings, candidate: Candidate): string {
  const board = readings.samples.length === 1 ? 'the sample' : 'all samples side by side'
  const reference = candidate.withReference ? ', with a plain white reference paint beside them' : ''
  const cover = candidate.cover === 'film' ? ' under the film' : readings.board.film === null ? '' : ' bare'
  return `Read ${board}${cover} ${LIGHT_WORDS[candidate.light]}, ${WIND_WORDS[candidate.wind]}${reference}.`
}
