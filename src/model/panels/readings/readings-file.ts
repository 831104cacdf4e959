import * as v from 'valibot'
import { dewPointFromHumidity_C } from '#model/outdoors/air'
import {
  COVERS,
  LIGHTS,
  THERMOMETERS,
  USUAL_BOARD,
  WIND_CLASSES,
  type BenchMoment,
  type BenchReadings,
} from './reading.ts'
import { WIND_MODELS } from '#model/panels/plate'
import { ProblemError, stop, type Problem } from '#model/basis/words'

const finite = v.pipe(v.number(), v.finite())
const share = v.pipe(finite, v.minValue(0), v.maxValue(1))
const maybe = v.optional(v.nullable(finite), null)
const name = v.pipe(v.string(), v.minLength(1), v.maxLength(80))

const FILM = v.strictObject({
  solarTransmittance_frac: share,
  solarReflectance_frac: share,
  windowTransmittance_frac: share,
  windowReflectance_frac: share,
  offWindowTransmittance_frac: share,
  offWindowReflectance_frac: share,
  gap_m: v.pipe(finite, v.minValue(0.0005), v.maxValue(0.5)),
  /** Files written before films fluttered have a taut one. */
  flutter_frac: v.optional(v.pipe(finite, v.minValue(0), v.maxValue(1)), 0),
})

const BOARD = v.strictObject({
  tilt_deg: v.optional(v.pipe(finite, v.minValue(0), v.maxValue(90)), USUAL_BOARD.tilt_deg),
  backLoss_Wm2K: v.optional(v.pipe(finite, v.minValue(0), v.maxValue(50)), USUAL_BOARD.backLoss_Wm2K),
  altitude_m: v.optional(v.pipe(finite, v.minValue(-450), v.maxValue(6000)), USUAL_BOARD.altitude_m),
  horizon_deg: v.optional(v.pipe(finite, v.minValue(0), v.maxValue(80)), USUAL_BOARD.horizon_deg),
  freeConvectionLength_m: v.optional(
    v.pipe(finite, v.minValue(0.005), v.maxValue(2)),
    USUAL_BOARD.freeConvectionLength_m,
  ),
  /** Of older files: a board's wind is now worked out by its size, and this is not used. */
  windModel: v.optional(v.picklist(WIND_MODELS)),
  film: v.optional(v.nullable(FILM), null),
})

const KNOWN = v.strictObject({
  solarReflectance_frac: share,
  solarReflectanceSd_frac: share,
  emittance_frac: share,
  emittanceSd_frac: share,
})

const MOMENT = v.strictObject({
  time: v.optional(v.nullable(v.pipe(v.string(), v.maxLength(80))), null),
  airTemp_C: finite,
  dewPoint_C: v.optional(finite),
  relativeHumidity_frac: v.optional(v.pipe(share, v.minValue(0.01))),
  light: v.picklist(LIGHTS),
  sun_Wm2: maybe,
  skyLongwave_Wm2: maybe,
  cloud_frac: v.optional(share, 0),
  wind: v.picklist(WIND_CLASSES),
  wind_ms: maybe,
  surfaces: v.array(
    v.strictObject({
      sample: name,
      shown_C: finite,
      cover: v.optional(v.picklist(COVERS), 'bare'),
      thermometer: v.optional(v.picklist(THERMOMETERS), 'contact'),
    }),
  ),
})

const READINGS = v.strictObject({
  duskbankReadings: v.literal(1),
  basis: v.optional(v.pipe(v.string(), v.maxLength(500)), ''),
  board: v.optional(BOARD, {}),
  samples: v.pipe(
    v.array(v.strictObject({ name, known: v.optional(v.nullable(KNOWN), null) })),
    v.minLength(1),
    v.maxLength(40),
  ),
  infraredSetting_frac: v.optional(share, 0.95),
  moments: v.pipe(v.array(MOMENT), v.minLength(1), v.maxLength(500)),
})

type WrittenMoment = v.InferOutput<typeof MOMENT>

/**
 * Reads field notes from JSON text: `duskbankReadings: 1`, board, samples, moments; surfaces name their sample. Humidity
 * is a dew point or a relative humidity.
 * @throws ProblemError naming file and field
 */
export function readReadings(text: string, file: string): BenchReadings {
  const parsed = v.safeParse(READINGS, jsonOf(text, file))
  if (!parsed.success) throw new ProblemError(parsed.issues.slice(0, 10).map((issue) => said(issue, file)))
  const { samples, moments, board, basis, infraredSetting_frac } = parsed.output
  const names = samples.map((sample) => sample.name)
  return {
    basis,
    board,
    samples,
    infraredSetting_frac,
    moments: moments.map((moment, i) => momentOf(moment, names, { file, line: i + 1 })),
  }
}

function momentOf(
  written: WrittenMoment,
  names: readonly string[],
  at: { readonly file: string; readonly line: number },
): BenchMoment {
  const { relativeHumidity_frac, dewPoint_C, surfaces, ...rest } = written
  if (dewPoint_C === undefined && relativeHumidity_frac === undefined) {
    throw stop(
      'bench-no-humidity',
      `Moment ${at.line} has neither a dew point nor a relative humidity.`,
      'Add dewPoint_C or relativeHumidity_frac: the sky’s warmth hangs on it.',
      { ...at, field: 'dewPoint_C' },
    )
  }
  return {
    ...rest,
    dewPoint_C: dewPoint_C ?? dewPointFromHumidity_C(rest.airTemp_C, relativeHumidity_frac!),
    surfaces: surfaces.map(({ sample, ...surface }) => {
      const index = names.indexOf(sample)
      if (index >= 0) return { ...surface, sample: index }
      throw stop(
        'bench-unknown-sample',
        `Moment ${at.line} reads “${sample}”, which is not among the samples (${names.join(', ')}).`,
        'Write the name as it is in the list of samples.',
        { ...at, field: 'sample' },
      )
    }),
  }
}

/** Field notes as JSON text that `readReadings` reads back. */
export function writeReadings(readings: BenchReadings): string {
  const moments = readings.moments.map((moment) => ({
    ...moment,
    surfaces: moment.surfaces.map((surface) => ({
      ...surface,
      sample: readings.samples[surface.sample]!.name,
    })),
  }))
  return `${JSON.stringify({ duskbankReadings: 1, ...readings, moments }, null, 2)}\n`
}

function jsonOf(text: string, file: string): unknown {
  try {
    return JSON.parse(text)
  } catch (error) {
    throw stop(
      'bench-not-json',
      `The file is not JSON (${(error as Error).message}).`,
      'Start from the example notes: coating --example.',
      { file },
    )
  }
}

function said(issue: v.BaseIssue<unknown>, file: string): Problem {
  const field = v.getDotPath(issue) ?? 'the whole file'
  return {
    code: 'bench-file',
    severity: 'error',
    message: `${issue.message}.`,
    remedy: 'Mend that field; the example notes show every one.',
    place: { file, field },
  }
}
