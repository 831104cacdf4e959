import { existsSync, readFileSync, statSync } from 'node:fs'
import { problemSentence, ProblemError, stop } from '#model/problem.ts'
import { readMappingFile } from '#model/weather/mapping-file.ts'
import { openWeather, type OpenedWeather } from '#model/weather/open.ts'
import { isWholeYear, type WeatherRecord } from '#model/weather/record.ts'
import { textOf, type Options } from './options.ts'
import { note } from './output.ts'
import { sampleNames, sampleWeather } from './samples.ts'

/** Refused before reading: no hourly or one-minute year is as large, bytes. */
const LARGEST_FILE_B = 150_000_000

/** What the weather reader made of a file, with its report; problems are not yet judged. */
export function openedFile(file: string, options: Options): OpenedWeather {
  if (!existsSync(file)) {
    throw stop(
      'no-weather',
      'There is no such file or sample climate.',
      `Sample climates: ${sampleNames().join(', ')}.`,
      { file },
    )
  }
  if (statSync(file).size > LARGEST_FILE_B) {
    throw stop(
      'weather-too-large',
      `The file has ${Math.round(statSync(file).size / 1e6)} MB.`,
      'Cut it to the one year that is wanted.',
      { file },
    )
  }
  const mappingFile = options.values['mapping'] as string | undefined
  const mapping =
    mappingFile === undefined ? {} : { mapping: readMappingFile(textOf(mappingFile), mappingFile) }
  const acceptLongGaps = options.values['accept-long-gaps'] === true
  return openWeather(readFileSync(file, 'utf8'), { file, acceptLongGaps, ...mapping })
}

/** The weather that --weather names. @throws ProblemError when there is none, or it can't be used */
export function weatherOf(options: Options): WeatherRecord {
  const named = options.values['weather']
  if (typeof named !== 'string') {
    throw stop(
      'no-weather',
      'No weather is given.',
      `Add --weather FILE or one of ${sampleNames().join(', ')}.`,
    )
  }
  if (sampleNames().includes(named)) return sampleWeather(named)
  const opened = openedFile(named, options)
  for (const problem of opened.problems) {
    if (problem.severity === 'warning') note(`warning: ${problemSentence(problem)}`)
  }
  if (opened.record === null) {
    throw new ProblemError(opened.problems.filter((problem) => problem.severity === 'error'))
  }
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
