import { blackbody_Wm2 } from '#model/outdoors/air'
import { stop } from '#model/basis/words'
import { mean, meanError, measured, type Measured } from './measured.ts'

/** One moment in full sun: contact temperatures of the sample between a black and a white board of the same build, °C. */
export interface PairedMoment {
  readonly black_C: number
  readonly white_C: number
  readonly sample_C: number
}

/** Boards of known solar absorptance, one standard deviation each: ± 0.02 at 95 % is 0.01. */
export interface PairedReferences {
  readonly blackAbsorptance_frac: number
  readonly blackSd_frac: number
  readonly whiteAbsorptance_frac: number
  readonly whiteSd_frac: number
}

/** Error of one surface temperature against its neighbour's, gusts included, K. Common practice, no source. */
const READING_SD_K = 0.5
/**
 * What unlike emittances (± 0.03 at 95 %) of boards side by side do to the absorptance: 0.015 of about 130 W/m² to the sky,
 * for sample and white, over 900 W/m² of sun. Common practice, no source.
 */
const UNLIKE_SD = 0.003
/**
 * A board's loss by convection and through its back, W/m²K, usual, in still air and in wind: the boards' loss bends with
 * temperature, the more the less of it is convection. A small plate of 0.2 m at 1 m/s has 9 to 11 (see small-plate.ts).
 */
const LOSS_WM2K = { usual: 10, still: 5, windy: 20 } as const
/** Emittance of a paint: handbook tables, 0.8 to 0.97. */
const EMITTANCE = 0.9

/** The black board must be this much warmer than the white one, K. */
const LEAST_APART_K = 10

/**
 * Solar reflectance of a sample from boards beside it in the sun:
 *   α = α_w + (α_b − α_w)(L(T) − L(T_w))/(L(T_b) − L(T_w)),  R = 1 − α,  L(T) = εσT⁴ + hT
 * the mean over the moments; L is a board's loss, which bends: plain temperatures read white paints too high. All boards need the same size, back and emittance.
 * @throws ProblemError without moments, or where black and white hardly differ
 */
export function pairedReflectance(moments: readonly PairedMoment[], references: PairedReferences): Measured {
  const gap = moments.findIndex((moment) => !Object.values(moment).every(Number.isFinite))
  if (gap >= 0)
    throw stop(
      'paired-boards-gap',
      `Moment ${gap + 1} lacks a temperature of one of the three boards.`,
      'Give as many readings for each board as there are moments.',
      { field: 'moments' },
    )
  const apart = moments.map(({ black_C, white_C }) => black_C - white_C)
  if (moments.length === 0 || apart.some((k) => !(k >= LEAST_APART_K)))
    throw stop(
      'paired-boards-alike',
      moments.length === 0
        ? 'No moment is given.'
        : `In one moment black and white are only ${Math.min(...apart).toFixed(1)} K apart: at least ${LEAST_APART_K} K are needed.`,
      'Read all three boards within a minute, in full sun near noon and little wind.',
      { field: 'moments' },
    )
  const { blackAbsorptance_frac, whiteAbsorptance_frac, blackSd_frac, whiteSd_frac } = references
  const span = blackAbsorptance_frac - whiteAbsorptance_frac
  if (!(span > 0.3))
    throw stop(
      'paired-boards-references',
      `The black board (${blackAbsorptance_frac}) must take in at least 0.3 more of the sun than the white one (${whiteAbsorptance_frac}).`,
      'Give the absorptance of each: black paint 0.95, good white paint 0.1 to 0.2.',
      { field: 'blackAbsorptance_frac' },
    )
  const partsAt = (loss_Wm2K: number) => moments.map((moment) => partOf(moment, loss_Wm2K))
  const parts = partsAt(LOSS_WM2K.usual)
  const part = mean(parts)
  const bend = mean(partsAt(LOSS_WM2K.still)) - mean(partsAt(LOSS_WM2K.windy))
  const onePart = (READING_SD_K * Math.hypot(1, 1 - part, part)) / mean(apart)
  return measured(1 - whiteAbsorptance_frac - span * part, [
    {
      of: 'the white reference',
      sd: Math.abs(1 - part) * whiteSd_frac,
      next: 'Use a white board whose solar reflectance was measured to ± 0.01, or a sample kept from a measured batch.',
    },
    {
      of: 'the black reference',
      sd: Math.abs(part) * blackSd_frac,
      next: 'Use a matt black of known absorptance.',
    },
    {
      of: 'gusts and the readings',
      sd: span * meanError(parts, onePart),
      next: 'Read more moments, exchange the places of the boards between them, and wait for calm air.',
    },
    { of: 'unlike emittance or back', sd: UNLIKE_SD, next: 'Build all boards alike.' },
    {
      of: 'the bend of the heat loss',
      sd: (span * Math.abs(bend)) / 2,
      next: 'Take a white reference nearer to the sample.',
    },
  ])
}

/** Where a sample's heat loss lies between those of white (0) and black (1), –. */
function partOf({ black_C, white_C, sample_C }: PairedMoment, loss_Wm2K: number): number {
  const loss = (temp_C: number) => EMITTANCE * blackbody_Wm2(temp_C) + loss_Wm2K * temp_C
  return (loss(sample_C) - loss(white_C)) / (loss(black_C) - loss(white_C))
}
