import { WINDOW_EMISSION } from '#model/outdoors/air'
import { bisected, valueAt } from '#model/basis/numbers'
import { figure, words, type Wording } from '#model/basis/words'

/**
 * An infrared thermometer gathers radiation of about 8–14 µm and turns it into a temperature as if the surface had
 * the emissivity set on it and reflected surroundings at the instrument's own temperature. Outdoors a paint reflects
 * the sky, which is far colder: the reading comes out too low, most of all for poor emitters and clear nights.
 * The band 8–13 µm is taken for the instrument's.
 */
export interface InfraredView {
  /** Emittance of the surface in the window, 0…1, > 0. */
  readonly emittance_frac: number
  /** Emissivity set on the instrument, 0…1, > 0. */
  readonly setting_frac: number
  /** Sky radiation inside 8–13 µm that the surface reflects, W/m². */
  readonly skyWindow_Wm2: number
  /** Temperature the instrument takes for the reflected surroundings, °C (usually its own: air temperature). */
  readonly assumedSurroundings_C: number
}

/**
 * True surface temperature from a displayed one, °C.
 *   ε M(T) + (1 − ε) L_sky = ε_set M(T_shown) + (1 − ε_set) M(T_surroundings),  M: emission inside the window
 * @throws RangeError for an emittance or setting outside 0…1
 * Source: the balance of two grey surfaces every such instrument rests on; common practice, no source.
 */
export function irThermometerTrue_C(shown_C: number, view: InfraredView): number {
  requireView(view)
  const gathered =
    view.setting_frac * emission(shown_C) + (1 - view.setting_frac) * emission(view.assumedSurroundings_C)
  const own = (gathered - (1 - view.emittance_frac) * view.skyWindow_Wm2) / view.emittance_frac
  return temperatureOf(own)
}

/** What the instrument shows for a true surface temperature, °C: the inverse of `irThermometerTrue_C`. */
export function irThermometerShown_C(true_C: number, view: InfraredView): number {
  requireView(view)
  const gathered = view.emittance_frac * emission(true_C) + (1 - view.emittance_frac) * view.skyWindow_Wm2
  const taken =
    (gathered - (1 - view.setting_frac) * emission(view.assumedSurroundings_C)) / view.setting_frac
  return temperatureOf(taken)
}

/** A sentence when the correction is large enough to mislead, else null. */
export function infraredWarning(shown_C: number, view: InfraredView): Wording | null {
  const off_K = irThermometerTrue_C(shown_C, view) - shown_C
  if (Math.abs(off_K) < 0.5) return null
  const side = off_K > 0 ? 'low' : 'high'
  return words`The infrared thermometer reads about ${figure(Math.abs(off_K), 'K')} too ${side} here: set to emissivity ${view.setting_frac.toFixed(2)}, looking at a surface of ${view.emittance_frac.toFixed(2)} that reflects a cold sky. Put a strip of matt tape on each sample and read that, or use a contact probe.`
}

function emission(temp_C: number): number {
  return valueAt(WINDOW_EMISSION, temp_C)
}

const SEEN_C = [-60, 90] as const

/** Temperature whose window emission is this, °C, inside −60…90 °C (ends beyond), by bisection. */
function temperatureOf(emission_Wm2: number): number {
  const [low, high] = SEEN_C
  if (emission_Wm2 <= emission(low)) return low
  if (emission_Wm2 >= emission(high)) return high
  return bisected(emission, emission_Wm2, SEEN_C, 45)
}

function requireView(view: InfraredView): void {
  for (const [name, value] of [
    ['emittance', view.emittance_frac],
    ['emissivity setting', view.setting_frac],
  ] as const) {
    if (!(value > 0 && value <= 1)) throw new RangeError(`${name} must be above 0 and up to 1, got ${value}`)
  }
}
