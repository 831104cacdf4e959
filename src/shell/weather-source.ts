import { existsSync, readFileSync, statSync } from 'node:fs'
import { likest, problemSentence, ProblemError, stop } from '#model/basis/words'
import {
  textOfFile,
  readMappingFile,
  type OpenedWeather,
  STAMPS,
  type Stamp,
  type OpenOptions,
  type TimeChoices,
} from '#model/outdoors/intake'
import { isWholeYear, type Site, type WeatherRecord } from '#model/outdoors/weather'
import { answered, studies } from './answered.ts'
import { textOf, type Options } from './options.ts'
import { optionalNumber } from './number-option.ts'
import { note } from './output.ts'
import { answersOf, assumptionsOf, openQuestions, saveMapping } from './weather-questions.ts'
import { asksForPlace, weatherOfPlace } from './place-source.ts'
import { sampleNames, sampleWeather } from './samples.ts'

/** Refused before reading: no hourly or one-minute year is as large, bytes. */
const LARGEST_FILE_B = 150_000_000

/** Standard input, by its name. */
const STANDARD_INPUT = '-'

/** The bytes of a weather file, or of standard input. @throws ProblemError where there are none to read */
function bytesFrom(file: string): Uint8Array {
  if (file === STANDARD_INPUT) return read(0, 'standard input')
  if (!existsSync(file)) {
    const near = likest(file, sampleNames())
    throw stop(
      'no-weather',
      'There is no such file or sample climate.',
      `${near === null ? '' : `Did you mean ${near}? `}Sample climates: ${sampleNames().join(', ')}.`,
      { file },
    )
  }
  const { size } = statSync(file)
  if (statSync(file).isDirectory()) {
    throw stop('weather-no-file', 'This is a folder, not a file.', 'Name the weather file inside it.', {
      file,
    })
  }
  if (size > LARGEST_FILE_B) {
    throw stop(
      'weather-too-large',
      `The file has ${Math.round(size / 1e6)} MB.`,
      'Cut it to the one year that is wanted.',
      { file },
    )
  }
  return read(file, file)
}

function read(source: string | 0, file: string): Uint8Array {
  try {
    return readFileSync(source)
  } catch (error) {
    throw stop(
      'cannot-read',
      `The weather could not be read (${(error as Error).message}).`,
      'Check the name, and that you may read it.',
      { file },
    )
  }
}

/** What the weather reader made of a file, with its report; problems are not yet judged. */
export function openedFile(file: string, options: Options): OpenedWeather {
  return answered(
    studies.readWeather({
      text: textOfFile(bytesFrom(file), decoded, file),
      file,
      acceptLongGaps: options.values['accept-long-gaps'] === true,
      site: siteOf(options),
      time: timeOf(options),
      ...mappingOf(options),
      answers: answersOf(options),
    }),
  )
}

const decoded = (some: Uint8Array, encoding: string, strict: boolean): string =>
  new TextDecoder(encoding, { fatal: strict }).decode(some)

function mappingOf(options: Options): Pick<OpenOptions, 'mapping'> {
  const file = options.values['mapping']
  return typeof file === 'string' ? { mapping: readMappingFile(textOf(file), file) } : {}
}

/** The place as given on the command line; what is not given is left to the file. */
function siteOf(options: Options): Partial<Site> {
  const latitude_deg = optionalNumber(options, 'latitude', [-90, 90])
  const longitude_deg = optionalNumber(options, 'longitude', [-180, 180])
  const altitude_m = optionalNumber(options, 'altitude', [-430, 9000])
  const utcOffset_h = optionalNumber(options, 'utc-offset', [-12, 14])
  const given = { latitude_deg, longitude_deg, altitude_m, utcOffset_h }
  return Object.fromEntries(Object.entries(given).filter(([, value]) => value !== undefined))
}

function timeOf(options: Options): TimeChoices {
  const clockOffset_h = optionalNumber(options, 'clock-offset', [-12, 14])
  const shift_h = optionalNumber(options, 'clock-shift', [-24, 24])
  const stamp = options.values['stamp']
  if (stamp !== undefined && !STAMPS.some((known) => known === stamp)) {
    throw stop('bad-stamp', `--stamp ${String(stamp)} is not known.`, `Use ${STAMPS.join(', ')}.`)
  }
  return {
    ...(clockOffset_h === undefined ? {} : { clockOffset_h }),
    ...(shift_h === undefined ? {} : { shift_h }),
    ...(stamp === undefined ? {} : { stamp: stamp as Stamp }),
  }
}

/** The weather that --weather names. @throws ProblemError when there is none, or it can't be used */
export function weatherOf(options: Options): WeatherRecord {
  const named = options.values['weather']
  if (asksForPlace(options)) {
    if (named === undefined) return weatherOfPlace(options)
    throw stop(
      'two-weathers',
      'A weather file and a place are both given.',
      'Give one of --weather, --town and --at.',
    )
  }
  if (typeof named !== 'string') {
    throw stop(
      'no-weather',
      'No weather is given.',
      `Add --town NAME, --at LATITUDE,LONGITUDE, --weather FILE or one of ${sampleNames().join(', ')}.`,
    )
  }
  if (sampleNames().includes(named)) return sampleWeather(named)
  const opened = openedFile(named, options)
  saveMapping(opened, options)
  const questions = openQuestions(opened, named)
  for (const problem of opened.problems) {
    if (problem.severity === 'warning') note(`warning: ${problemSentence(problem)}`)
  }
  if (opened.record === null) {
    throw new ProblemError([
      ...opened.problems.filter((problem) => problem.severity === 'error'),
      ...questions,
    ])
  }
  if (questions.length > 0) throw new ProblemError(questions)
  for (const line of assumptionsOf(opened)) note(`assumed: ${line}`)
  return opened.record
}

/** The same, refused unless it is a whole year. */
export function yearOf(options: Options): WeatherRecord {
  const weather = weatherOf(options)
  if (isWholeYear(weather)) return weather
  throw stop(
    'not-a-year',
    `The weather has ${weather.hours} hours; a year has 8760.`,
    'Use the sky and panel subcommands for shorter records, or give a whole year.',
    { file: String(options.values['weather']) },
  )
}
