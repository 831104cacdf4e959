import { openWeather, type OpenedWeather, type OpenOptions } from '#model/outdoors/intake'
import type { Study } from './study.ts'

/**
 * What a weather file's text holds, with every assumption, question and problem; never throws for anything a file can
 * hold. Text that arrives in pieces is pushed into a `WeatherReading`.
 */
export function* readWeather(
  _stages: unknown,
  { text, ...options }: OpenOptions & { readonly text: string },
): Study<OpenedWeather> {
  return { result: openWeather(text, options), remarks: [] }
}
