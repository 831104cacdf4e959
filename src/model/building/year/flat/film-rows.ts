import type { PanelHours } from '#model/panels/plate'

/** Numbers of an hour under a film: what plate and film gain in the order dry, wet; the film at equilibrium and its slope; the gap. */
export const FILM_DRY_WM2 = 0
export const FILM_WET_WM2 = 1
export const FILM_C = 2
export const FILM_SLOPE = 3
export const FLUTTER_WM2K = 4
export const ONSET_K = 5
export const PER_FILM = 6

/** Where the polynomials of exchange begin, of the dry plate and then of the wet one. */
export const PLATE_EMISSION = 0
export const FILM_TO_PLATE = 6
export const PLATE_TO_FILM = 12
export const FILM_EMISSION = 18
export const PER_EXCHANGE = 24

/** What of a film the flat year reads: one row an hour, and the polynomials. */
interface FilmNumbers {
  readonly filmRows: Float64Array
  readonly filmExchange: Float64Array
}

const NONE: FilmNumbers = { filmRows: new Float64Array(0), filmExchange: new Float64Array(0) }

const known = new WeakMap<PanelHours, FilmNumbers>()

/** The film over a panel, empty arrays where there is none. Worked out once a panel. */
export function filmNumbersOf(panel: PanelHours): FilmNumbers {
  const { gap, dryGain, wetGain, surface_C, surfaceSlope } = panel
  if (gap === null) return NONE
  const found = known.get(panel)
  if (found !== undefined) return found
  const filmRows = new Float64Array(PER_FILM * panel.hours)
  const columns = [
    [FILM_DRY_WM2, dryGain.film_Wm2],
    [FILM_WET_WM2, wetGain.film_Wm2],
    [FILM_C, surface_C],
    [FILM_SLOPE, surfaceSlope],
    [FLUTTER_WM2K, gap.flutter_Wm2K],
    [ONSET_K, gap.onset_K],
  ] as const
  for (const [i, column] of columns)
    for (let h = 0, at = i; h < panel.hours; h++, at += PER_FILM) filmRows[at] = column[h]!
  const filmExchange = new Float64Array(2 * PER_EXCHANGE)
  ;[panel.dryExchange, panel.wetExchange].forEach((exchange, k) => {
    const from = PER_EXCHANGE * k
    filmExchange.set(exchange.plateEmission, from + PLATE_EMISSION)
    filmExchange.set(exchange.filmToPlate, from + FILM_TO_PLATE)
    filmExchange.set(exchange.plateToFilm, from + PLATE_TO_FILM)
    filmExchange.set(exchange.filmEmission, from + FILM_EMISSION)
  })
  const made = { filmRows, filmExchange }
  known.set(panel, made)
  return made
}
