import * as v from 'valibot'
import { readRecipe, writeRecipe } from '#model/panels/paint'
import { ProblemError, stop } from '#model/basis/words'
import { PROPERTIES, type PaintSample, type SampleSeries } from './sample.ts'

const finite = v.pipe(v.number(), v.finite())
const share = v.pipe(finite, v.minValue(0), v.maxValue(1))
const text = (most: number) => v.optional(v.pipe(v.string(), v.maxLength(most)), '')

const MEASURED = v.pipe(
  v.strictObject({ value: share, low: share, high: share }),
  v.check(({ value, low, high }) => low <= value && value <= high, 'low, value and high must rise'),
)

const SAMPLE = v.strictObject({
  name: v.pipe(v.string(), v.minLength(1), v.maxLength(80)),
  date: text(40),
  recipe: v.unknown(),
  coats: v.pipe(finite, v.integer(), v.minValue(1), v.maxValue(50)),
  dryThickness_m: v.pipe(finite, v.minValue(1e-6), v.maxValue(0.01)),
  substrate: text(120),
  note: text(2000),
  measured: v.optional(
    v.strictObject(
      Object.fromEntries(PROPERTIES.map((name) => [name, v.optional(MEASURED)])) as Record<
        (typeof PROPERTIES)[number],
        v.OptionalSchema<typeof MEASURED, undefined>
      >,
    ),
    {},
  ),
})

const SERIES = v.strictObject({
  duskbankSamples: v.literal(1),
  basis: text(500),
  samples: v.pipe(v.array(SAMPLE), v.maxLength(500)),
})

/**
 * Reads a series of samples from JSON text (`duskbankSamples: 1`).
 * @throws ProblemError naming file and field
 */
export function readSeries(json: string, file: string): SampleSeries {
  const parsed = v.safeParse(SERIES, jsonOf(json, file))
  if (!parsed.success)
    throw new ProblemError(
      parsed.issues.slice(0, 10).map((issue) => ({
        code: 'samples-file',
        severity: 'error' as const,
        message: `${issue.message}.`,
        remedy: 'Mend that field; a saved example shows every one.',
        place: { file, field: v.getDotPath(issue) ?? 'the whole file' },
      })),
    )
  const { basis, samples } = parsed.output
  return checkedSeries({ basis, samples: samples.map((sample) => sampleOf(sample, file)) }, file)
}

/** The series, once no two samples have one name. @throws ProblemError */
export function checkedSeries(series: SampleSeries, file: string): SampleSeries {
  const names = series.samples.map(({ name }) => name)
  const twice = names.find((name, i) => names.indexOf(name) < i)
  if (twice === undefined) return series
  throw stop('samples-twice', `Two samples are called “${twice}”.`, 'Give each its own name.', {
    file,
    field: 'name',
  })
}

/** A series as JSON text that `readSeries` reads back. */
export function writeSeries({ basis, samples }: SampleSeries): string {
  const written = samples.map((sample) => ({
    ...sample,
    recipe: JSON.parse(writeRecipe(sample.recipe)) as unknown,
  }))
  return `${JSON.stringify({ duskbankSamples: 1, basis, samples: written }, null, 2)}\n`
}

function sampleOf(written: v.InferOutput<typeof SAMPLE>, file: string): PaintSample {
  const measured = Object.fromEntries(
    Object.entries(written.measured).filter(([, value]) => value !== undefined),
  ) as PaintSample['measured']
  return { ...written, measured, recipe: readRecipe(JSON.stringify(written.recipe ?? {}), file) }
}

function jsonOf(json: string, file: string): unknown {
  try {
    return JSON.parse(json)
  } catch (error) {
    throw stop(
      'samples-not-json',
      `The file is not JSON (${(error as Error).message}).`,
      'Open a file that this page saved, or a CSV file of samples.',
      { file },
    )
  }
}
