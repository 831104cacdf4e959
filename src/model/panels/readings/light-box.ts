import { stop, figure, words, type Text } from '#model/basis/words'

/**
 * A light box (a white-painted sphere or box with a port, a lamp and a light meter) compares a sample with a
 * reference of known reflectance. Putting a darker sample in the port dims the whole box, so the plain ratio
 * of the two readings reads low; the substitution correction takes that out.
 */
export interface LightBox {
  /** Reflectance of the inner wall, 0…1. */
  readonly wallReflectance_frac: number
  /** Share of the inner surface taken by the sample port, 0…1. */
  readonly samplePort_frac: number
  /** Share taken by all other holes (lamp, meter), 0…1. */
  readonly otherPorts_frac: number
}

/** One comparison: repeated meter readings, in any one unit (lux, volts, counts). */
export interface LightBoxReading {
  readonly sample: readonly number[]
  readonly reference: readonly number[]
  /** Reading with the lamp off; subtracted from both. */
  readonly dark: number
  readonly referenceReflectance_frac: number
  /** How well the reference is known, one standard deviation. */
  readonly referenceUncertainty_frac: number
}

/** What the reading says, each value with its half-width at about 95 %. */
export interface LightBoxResult {
  /** R_ref S_s/S_r: what an uncorrected comparison would say. */
  readonly uncorrected_frac: number
  /** Reflectance in visible light, corrected for substitution. */
  readonly visible_frac: number
  readonly visibleHalfWidth_frac: number
  /** Solar reflectance that such a visible reading means, with the range it may have. */
  readonly solar_frac: number
  readonly solarLow_frac: number
  readonly solarHigh_frac: number
  /** The same range as heat at noon, W/m² (1000 W/m² of sun). */
  readonly noonSpread_Wm2: number
  readonly mayDecide: readonly string[]
  readonly mayNotDecide: readonly Text[]
}

/**
 * A light meter sees what the eye sees. A white coating of solar reflectance 0.80 reads about 0.90 in visible
 * light (common practice, no source), one without ultraviolet or infrared absorption reads the same in both: the solar value
 * lies 0 to 0.10 below the visible one, so its middle is 0.05 lower and its half-width 0.05.
 */
export const VISIBLE_TO_SOLAR = { shift_frac: -0.05, halfWidth_frac: 0.05 } as const

/**
 * Largest share of the wall that the port should take, –: up to it a wall known to ± 0.02 moves samples of 0.85 and more by
 * at most 0.005, the meter’s own error (own calculation, walls up to 0.95). At 0.034 it would be 0.010.
 */
export const PORT_LIMIT_FRAC = 0.012

/** Irradiance of a clear noon on a level plate, W/m²: what 0.01 of reflectance is reckoned against. */
const NOON_SUN_WM2 = 1000

/**
 * Sphere multiplier M = ρ/(1 − ρ(1 − f)) (–): how often light crosses a box of wall reflectance ρ with the
 * fraction f of its surface open. Goebel 1967, Applied Optics 6, 125 (from memory).
 * @throws RangeError outside 0 ≤ ρ < 1, 0 ≤ f ≤ 1
 */
export function sphereMultiplier(wallReflectance_frac: number, open_frac: number): number {
  requireFraction('wall reflectance', wallReflectance_frac)
  requireFraction('open fraction', open_frac)
  return wallReflectance_frac / (1 - wallReflectance_frac * (1 - open_frac))
}

/**
 * Reflectance of the sample, substitution error taken out:
 *   x = R_ref S_s/S_r,  A = ρ_w (1 − f_s − f_o),  R = x (1 − A)/(1 − A − f_s R_ref + x f_s)
 * @param ratio S_s/S_r, dark reading already taken off
 * @returns R, visible reflectance (–); not clipped, so that a bad reading shows
 * Source: integrating-sphere balance with the beam on the sample (closed form).
 */
export function substitutionCorrected(
  box: LightBox,
  ratio: number,
  referenceReflectance_frac: number,
): number {
  const wall = wallReturn(box)
  const x = referenceReflectance_frac * ratio
  return (
    (x * (1 - wall)) / (1 - wall - box.samplePort_frac * referenceReflectance_frac + x * box.samplePort_frac)
  )
}

/** The ratio S_s/S_r that a sample of reflectance R would give: the inverse of `substitutionCorrected`. */
export function expectedRatio(box: LightBox, reflectance_frac: number, reference_frac: number): number {
  const wall = wallReturn(box)
  return (
    (reflectance_frac * (1 - wall - box.samplePort_frac * reference_frac)) /
    (reference_frac * (1 - wall - box.samplePort_frac * reflectance_frac))
  )
}

/**
 * Works out a light-box comparison with its uncertainty: scatter of the repeats (never less than the meter's
 * own 0.5 %), the reference, and the wall reflectance known to ± 0.02.
 * @throws ProblemError for readings no box can give
 */
export function lightBoxResult(box: LightBox, reading: LightBoxReading): LightBoxResult {
  checkReading(box, reading)
  const sample = mean(reading.sample) - reading.dark
  const reference = mean(reading.reference) - reading.dark
  const ratio = sample / reference
  const visible_frac = substitutionCorrected(box, ratio, reading.referenceReflectance_frac)
  if (visible_frac > 1.02 || !Number.isFinite(visible_frac)) throw impossible(visible_frac)
  const visibleHalfWidth_frac = 2 * standardUncertainty(box, reading, ratio)
  const solar_frac = Math.min(1, visible_frac + VISIBLE_TO_SOLAR.shift_frac)
  const half = Math.hypot(VISIBLE_TO_SOLAR.halfWidth_frac, visibleHalfWidth_frac)
  const solarLow_frac = Math.max(0, solar_frac - half)
  const solarHigh_frac = Math.min(1, solar_frac + half)
  return {
    uncorrected_frac: reading.referenceReflectance_frac * ratio,
    visible_frac,
    visibleHalfWidth_frac,
    solar_frac,
    solarLow_frac,
    solarHigh_frac,
    noonSpread_Wm2: (solarHigh_frac - solarLow_frac) * NOON_SUN_WM2,
    ...verdicts(visibleHalfWidth_frac, half, box.samplePort_frac),
  }
}

function verdicts(visibleHalfWidth: number, solarHalfWidth: number, port_frac: number) {
  const step = (Math.SQRT2 * visibleHalfWidth).toFixed(3)
  return {
    mayDecide: [
      `Which of two coatings of the same kind is the brighter, when their readings differ by more than ${step}.`,
      'Whether another coat still helps: stop when it no longer changes the reading.',
      'Whether a coating has yellowed or soiled since its last reading in the same box.',
    ],
    mayNotDecide: [
      ...(port_frac > PORT_LIMIT_FRAC
        ? [
            `A difference under 0.01: the port takes ${(100 * port_frac).toFixed(1)} % of the wall, and over ${100 * PORT_LIMIT_FRAC} % the correction rests on how well the wall is known. Make the port smaller or the box larger.`,
          ]
        : []),
      words`The solar reflectance to better than ± ${solarHalfWidth.toFixed(2)}: half of sunlight is infrared that the meter does not see, and each 0.01 is ${figure(0.01 * NOON_SUN_WM2, 'Wm2')} at noon.`,
      'Which of two coatings with different pigments is cooler in the sun: put both on the test board instead.',
      'Anything about thermal emittance.',
    ],
  }
}

function standardUncertainty(box: LightBox, reading: LightBoxReading, ratio: number): number {
  const reference = reading.referenceReflectance_frac
  const at = (r: number, ref: number, b: LightBox = box) => substitutionCorrected(b, r, ref)
  const ratioError = ratio * Math.hypot(relativeError(reading.sample), relativeError(reading.reference))
  const wallShift = Math.min(0.02, (1 - box.wallReflectance_frac) / 2)
  const shifted = { ...box, wallReflectance_frac: box.wallReflectance_frac - wallShift }
  return Math.hypot(
    at(ratio + ratioError, reference) - at(ratio, reference),
    at(ratio, reference + reading.referenceUncertainty_frac) - at(ratio, reference),
    (at(ratio, reference, shifted) - at(ratio, reference)) / 2,
  )
}

/** Relative standard error of the mean, at least 0.5 % for the meter itself. */
function relativeError(values: readonly number[]): number {
  const m = mean(values)
  const squares = values.reduce((sum, v) => sum + (v - m) ** 2, 0)
  const scatter = values.length > 1 ? Math.sqrt(squares / (values.length - 1) / values.length) / m : 0
  return Math.max(0.005, scatter)
}

function checkReading(box: LightBox, reading: LightBoxReading): void {
  requireFraction('wall reflectance', box.wallReflectance_frac)
  requireFraction('sample port', box.samplePort_frac)
  requireFraction('other ports', box.otherPorts_frac)
  requireFraction('reference reflectance', reading.referenceReflectance_frac)
  for (const [field, values] of [
    ['sample', reading.sample],
    ['reference', reading.reference],
  ] as const) {
    if (values.length === 0 || values.some((v) => !Number.isFinite(v) || v < 0)) {
      throw stop(
        'light-box-reading-missing',
        `The ${field} has no usable meter reading.`,
        'Type at least one reading of zero or more.',
        { field },
      )
    }
  }
  if (mean(reading.reference) <= reading.dark) {
    throw stop(
      'light-box-too-dark',
      'The reference reads no more than the box with its lamp off.',
      'Check the lamp, the meter range and the dark reading.',
      { field: 'dark' },
    )
  }
}

function impossible(visible: number) {
  return stop(
    'light-box-above-one',
    `The sample comes out at a reflectance of ${visible.toFixed(2)}, more than all the light.`,
    'Check that sample and reference were not swapped, and that the lamp did not drift between them.',
    { field: 'sample' },
  )
}

function wallReturn(box: LightBox): number {
  return box.wallReflectance_frac * (1 - box.samplePort_frac - box.otherPorts_frac)
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length
}

function requireFraction(quantity: string, value: number): void {
  if (!(value >= 0 && value <= 1)) throw new RangeError(`${quantity} must be 0…1, got ${value}`)
}
