import type { FilmOptics } from '#model/panels/coating'

/**
 * Forced convection outside a fluttering film over that of a rigid plate: 1.4 ± 0.1 (Schuepp 1972, Boundary-Layer
 * Meteorology 2, 263: model leaves), reached by a single loose film and growing to it from a taut one in a straight line
 * (common practice, no source).
 */
const FLUTTER_GAIN = 0.4
/**
 * Flutter of a single loose film: engineering choice, no measurement of flutter conductance was found; 0.3 was set before the
 * field cases were run, and the range 0 to 0.5 is carried into the answer's range.
 */
const SINGLE_FILM = 0.3

/** Factor on the forced convection outside: 1 for a bare plate and a taut film. */
export function outsideFactor_frac(film: FilmOptics | null): number {
  return film === null ? 1 : 1 + FLUTTER_GAIN * Math.min(1, film.flutter_frac / SINGLE_FILM)
}

/**
 * Conductance that a fluttering film adds to its gap, W/m²K: its flutter times the forced convection outside it. A moving film
 * pumps air; in a calm there is none.
 * @param forced_Wm2K  forced convection of a rigid plate there
 */
export function flutter_Wm2K(film: FilmOptics, forced_Wm2K: number): number {
  return film.flutter_frac * outsideFactor_frac(film) * forced_Wm2K
}
