import { stop } from '#model/basis/words'

/** Reflectance of one coat over two backgrounds, –, and its dry thickness. */
export interface Drawdown {
  readonly overBlack_frac: number
  readonly overWhite_frac: number
  readonly black_frac: number
  readonly white_frac: number
  readonly dryThickness_m: number
}

/** What a drawdown says of a coating. */
export interface Hiding {
  /** Scattering and absorption coefficients of the dry film, 1/m. */
  readonly scattering_1m: number
  readonly absorption_1m: number
  /** Reflectance of a film so thick that its background no longer shows. */
  readonly final_frac: number
  /** Reflectance over black by that over white; 0.98 counts as hiding (ISO 6504-3, from memory). */
  readonly contrast_frac: number
  /** Dry thickness over black that reaches 95 % and 98 % of the final reflectance, m. */
  readonly for95_m: number
  readonly for98_m: number
}

/** Two backgrounds must differ by so much for a film’s transparency to be seen, –. */
const LEAST_APART = 0.3
/** Below this b a film counts as without absorption, where coth(bSX)·b is 1/(SX). */
const NO_ABSORPTION = 1e-4

/**
 * Scattering, absorption and final reflectance from reflectances over black and white:
 *   b coth(bSX) = (1 + R R_g − a (R + R_g))/(R − R_g),  a = 1 + K/S,  b = √(a² − 1),  R_∞ = a − b
 * the same for both backgrounds, which gives a, and then SX. Kubelka & Munk 1931, Kubelka 1948 (from memory). Readings as
 * seen: the gloss at the film’s face is not taken out.
 * @throws ProblemError for reflectances that no film has
 */
export function hidingPower(drawdown: Drawdown): Hiding {
  check(drawdown)
  const { overBlack_frac: r0, overWhite_frac: r1, black_frac: g0, white_frac: g1 } = drawdown
  const free = (r: number, g: number) => (1 + r * g) / (r - g)
  const bound = (r: number, g: number) => (r + g) / (r - g)
  const found = (free(r0, g0) - free(r1, g1)) / (bound(r0, g0) - bound(r1, g1))
  const a = Math.max(1, found)
  const b = Math.sqrt(a * a - 1)
  const film = scatteringDepth(a, b, r0, g0)
  const scattering_1m = film / drawdown.dryThickness_m
  const final_frac = a - b
  const thickness = (share: number) => scatteringDepth(a, b, share * final_frac, g0) / scattering_1m
  return {
    scattering_1m,
    absorption_1m: (a - 1) * scattering_1m,
    final_frac,
    contrast_frac: r0 / r1,
    for95_m: thickness(0.95),
    for98_m: thickness(0.98),
  }
}

/**
 * Reflectance of a film of scattering depth SX over a background, –.
 *   R = (1 − R_g (a − b coth bSX))/(a − R_g + b coth bSX)
 */
export function filmReflectance_frac(a: number, depth: number, background_frac: number): number {
  const b = Math.sqrt(Math.max(0, a * a - 1))
  const bCoth = b < NO_ABSORPTION ? 1 / depth : b / Math.tanh(b * depth)
  return (1 - background_frac * (a - bCoth)) / (a - background_frac + bCoth)
}

/** SX that gives a reflectance over a background; 0 where the background already has it. */
function scatteringDepth(a: number, b: number, reflectance: number, background: number): number {
  if (reflectance <= background) return 0
  const bCoth = (1 + reflectance * background - a * (reflectance + background)) / (reflectance - background)
  if (b < NO_ABSORPTION) return 1 / bCoth
  return bCoth <= b ? Infinity : Math.atanh(b / bCoth) / b
}

function check({ overBlack_frac, overWhite_frac, black_frac, white_frac, dryThickness_m }: Drawdown): void {
  const inside = [overBlack_frac, overWhite_frac, black_frac, white_frac].every((r) => r >= 0 && r < 1)
  if (!inside || !(dryThickness_m > 0))
    throw stop(
      'hiding-range',
      'A reflectance must lie from 0 to below 1 and the thickness above 0.',
      'Type shares of 1, and the dry thickness of the film that was read.',
      { field: 'overBlack_frac' },
    )
  if (!(white_frac - black_frac >= LEAST_APART))
    throw stop(
      'hiding-backgrounds',
      `The backgrounds (${black_frac} and ${white_frac}) differ by less than ${LEAST_APART}.`,
      'Paint over a card that is black on one half and white on the other.',
      { field: 'white_frac' },
    )
  if (!(overBlack_frac > black_frac))
    throw stop(
      'hiding-black',
      `The film over black (${overBlack_frac}) is no lighter than the black (${black_frac}).`,
      'Check that black and white were not exchanged.',
      { field: 'overBlack_frac' },
    )
  if (!(overWhite_frac > overBlack_frac) || Math.abs(overWhite_frac - white_frac) < 1e-9)
    throw stop(
      'hiding-opaque',
      `Over white (${overWhite_frac}) the film must read more than over black (${overBlack_frac}), and not just what the white reads.`,
      'Where both read the same, the film hides already: read a thinner one.',
      { field: 'overWhite_frac' },
    )
}
