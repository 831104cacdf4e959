import { saysInvented } from '#model/basis/words'
import type { WeatherRecord } from '#model/outdoors/weather'
import type { Options } from './options.ts'

/** Names of the invented data that a result rests on: the weather, and the description where none was given. */
export function inventedParts(options: Options, weather?: WeatherRecord): string[] {
  const parts = weather === undefined ? [] : inventedClimates([weather])
  if (options.values['scenario'] === undefined) parts.push('starting values of the room and the panel')
  return parts
}

/** The names of those climates whose hours nobody measured. */
export function inventedClimates(climates: readonly WeatherRecord[]): string[] {
  return climates.flatMap(({ basis, madeFrom, site }) => {
    if (madeFrom === 'months') return [`hours of ${site.name}, made from its monthly climate`]
    return saysInvented(basis) ? [`climate ${site.name}`] : []
  })
}
