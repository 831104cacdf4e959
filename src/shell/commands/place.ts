import { stop } from '#model/basis/words'
import { PLACE_CREDITS } from '#model/outdoors/place'
import { note } from '../output.ts'
import { asksForPlace, foundPlace, notePlace } from '../place-source.ts'
import type { Command } from './command.ts'

const MONTHS = 'Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec'.split(' ')

export const place: Command = {
  summary:
    'the monthly climate of a place by the name of its town, who its neighbours are, and how far to trust it',
  word: 'town',
  options: {},
  run(options) {
    if (!asksForPlace(options))
      throw stop('no-place', 'No place is named.', 'Write place Kraków, or place --at 36.1,-79.95.')
    const found = foundPlace(options)
    const { months, nearby, site } = found
    note(
      `${site.name}: ${site.latitude_deg.toFixed(2)}, ${site.longitude_deg.toFixed(2)}, ${Math.round(site.altitude_m)} m, UTC ${site.utcOffset_h < 0 ? '−' : '+'} ${Math.abs(site.utcOffset_h)} h`,
    )
    note('Made from these places (share, distance, height over yours):')
    for (const { weight, apart_km, higher_m, latitude_deg, longitude_deg } of nearby.neighbours)
      note(
        `  ${(100 * weight).toFixed(0).padStart(3)} %  ${Math.round(apart_km)} km  ${Math.round(higher_m)} m  at ${latitude_deg.toFixed(2)}, ${longitude_deg.toFixed(2)}`,
      )
    notePlace(found)
    note(PLACE_CREDITS.join(' '))
    const table = {
      month: MONTHS,
      airTemp_C: months.airTemp_C,
      dailyRange_K: months.dailyRange_K,
      humidity_frac: months.humidity_frac,
      sunshine_frac: months.sunshine_frac,
      wind_ms: months.wind_ms,
    }
    return { body: { kind: 'table', table }, invented: [] }
  },
}
