import { WINDOW_EMISSION } from '#model/outdoors/air'
import { valueAt } from '#model/basis/numbers'
import { stop } from '#model/basis/words'
import { mean, meanError, measured, type Measured } from './measured.ts'

/**
 * A sample and a strip of tape side by side on one warm plate, read by an infrared thermometer set to an emissivity of 1,
 * alternately; and crumpled foil in their place, which shows what they reflect. Methods: ASTM E1933, ISO 18434-1.
 */
export interface WarmPlate {
  readonly tape_C: readonly number[]
  readonly sample_C: readonly number[]
  readonly foil_C: readonly number[]
  readonly tapeEmittance_frac: number
  /** How well the tape is known, one standard deviation: ± 0.02 at 95 % is 0.01. */
  readonly tapeSd_frac: number
}

/** One reading with what differs between neighbouring spots of one plate, K; foil stands for uneven surroundings. Common practice, no source. */
const READING_SD_K = 0.4
const FOIL_SD_K = 1
/** The tape must be this much warmer than what it reflects, K: below, readings decide nothing. Common practice, no source. */
const LEAST_ABOVE_K = 15

/**
 * Emittance of the sample near its normal, in the band of the thermometer:
 *   ε_s = ε_t (S_s − S_r)/(S_t − S_r),  S the band signal of what was shown (tape, sample, foil)
 * Not the hemispherical value, which is 0.95–0.98 of it for paints, and not for metals or bare foil.
 * @throws ProblemError without readings, or with a plate too cold to tell
 */
export function warmPlateEmittance(plate: WarmPlate): Measured {
  check(plate)
  const { tapeEmittance_frac, tapeSd_frac } = plate
  const [tape, sample, foil] = [mean(plate.tape_C), mean(plate.sample_C), mean(plate.foil_C)]
  const at = (t: number, s: number, r: number, e = tapeEmittance_frac) =>
    (e * (signal(s) - signal(r))) / (signal(t) - signal(r))
  const value = at(tape, sample, foil)
  const moved = (changed: number) => Math.abs(changed - value)
  return measured(value, [
    {
      of: 'the tape’s own emittance',
      sd: moved(at(tape, sample, foil, tapeEmittance_frac + tapeSd_frac)),
      next: 'Use a tape whose emittance is printed by its maker, or paint of a known value.',
    },
    {
      of: 'the readings on tape and sample',
      sd: Math.hypot(
        moved(at(tape + meanError(plate.tape_C, READING_SD_K), sample, foil)),
        moved(at(tape, sample + meanError(plate.sample_C, READING_SD_K), foil)),
      ),
      next: 'Warm the plate further (60 to 80 °C) and alternate more readings, spot smaller than patch.',
    },
    {
      of: 'what the surfaces reflect',
      sd: moved(at(tape, sample, foil + Math.hypot(FOIL_SD_K, meanError(plate.foil_C, FOIL_SD_K)))),
      next: 'Work indoors away from lamps, windows and your own body, and read the foil at the same angle.',
    },
  ])
}

const signal = (temp_C: number) => valueAt(WINDOW_EMISSION, temp_C)

function check({ tape_C, sample_C, foil_C, tapeEmittance_frac, tapeSd_frac }: WarmPlate): void {
  for (const [field, values] of [
    ['tape', tape_C],
    ['sample', sample_C],
    ['foil', foil_C],
  ] as const) {
    if (values.length === 0 || values.some((v) => !(v > -30 && v < 100)))
      throw stop(
        'warm-plate-reading',
        `The ${field} needs at least one reading between −30 and 100 °C.`,
        'Read the thermometer again, in °C, on a plate of 60 to 80 °C.',
        { field },
      )
  }
  if (!(tapeEmittance_frac > 0.5 && tapeEmittance_frac <= 1) || !(tapeSd_frac >= 0))
    throw stop(
      'warm-plate-tape',
      `A tape of emittance ${tapeEmittance_frac} cannot serve as reference.`,
      'Use matt masking or vinyl tape, 0.95.',
      { field: 'tapeEmittance_frac' },
    )
  if (mean(tape_C) - mean(foil_C) < LEAST_ABOVE_K)
    throw stop(
      'warm-plate-too-cold',
      `The tape shows ${(mean(tape_C) - mean(foil_C)).toFixed(0)} K more than the foil: at least ${LEAST_ABOVE_K} K are needed, 40 K are good.`,
      'Warm the plate to 60 to 80 °C.',
      { field: 'tape' },
    )
}
