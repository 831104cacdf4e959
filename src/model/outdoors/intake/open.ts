import type { OpenedWeather, OpenOptions } from './options.ts'
import { WeatherReading } from './reading.ts'

export type { OpenedWeather, OpenOptions } from './options.ts'
export { WeatherReading } from './reading.ts'

/**
 * Opens a delimited weather table: finds its layout, reads it, checks its clock against the sun, judges and fills
 * it, works out what is missing. Never throws for anything a file can hold: what went wrong is in `problems`, and
 * `record` is null when that stopped the work.
 */
export function openWeather(text: string, options: OpenOptions): OpenedWeather {
  const reading = new WeatherReading(options)
  reading.push(text)
  return reading.finish()
}

/** The same from pieces of text that arrive in time, with a call after each; for big files in a worker. */
export async function openWeatherStream(
  pieces: AsyncIterable<string> | Iterable<string>,
  options: OpenOptions,
  progress: (taken_characters: number) => void = () => {},
): Promise<OpenedWeather> {
  const reading = new WeatherReading(options)
  for await (const piece of pieces) {
    reading.push(piece)
    progress(reading.taken)
    if (reading.refused) break
  }
  return reading.finish()
}
