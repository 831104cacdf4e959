import { FLUIDS, LAYOUTS, type LoopSpec } from './spec.ts'

/** Least and greatest a loop's numbers may be; the stage refuses what lies outside. */
const RANGES: readonly (readonly [keyof LoopSpec, min: number, max: number])[] = [
  ['glycol_frac', 0, 0.6],
  ['flow_kgsm2', 0, 1],
  ['plateThickness_m', 1e-5, 0.1],
  ['plateConductivity_WmK', 0.01, 1000],
  ['tubeSpacing_m', 0.001, 2],
  ['tubeOuterDiameter_m', 0.001, 1],
  ['tubeInnerDiameter_m', 0.001, 1],
  ['moduleLength_m', 0.05, 50],
  ['moduleWidth_m', 0.05, 50],
  ['pipeLength_m', 0, 10000],
  ['pipeInsulation_m', 0, 1],
  ['lift_m', 0, 100],
  ['pumpEfficiency_frac', 0.001, 1],
]

/** Throws RangeError with quantity, value and range when a loop is not one. */
export function checkLoopSpec(spec: LoopSpec): void {
  if (!FLUIDS.includes(spec.fluid)) throw new RangeError(`loop fluid must be one of ${FLUIDS.join(', ')}`)
  if (!LAYOUTS.includes(spec.layout))
    throw new RangeError(`plate layout must be one of ${LAYOUTS.join(', ')}`)
  for (const [name, min, max] of RANGES) {
    const value = spec[name] as number
    if (!(value >= min && value <= max))
      throw new RangeError(`loop ${name} must be ${min}…${max}, got ${value}`)
  }
  const bore_m = spec.pipeInnerDiameter_m
  if (bore_m !== null && !(bore_m >= 0.001 && bore_m <= 3))
    throw new RangeError(`loop pipeInnerDiameter_m must be 0.001…3 or null, got ${bore_m}`)
  const { place } = spec
  if (place && !(place.across_m > 0 && place.down_m > 0))
    throw new RangeError(`loop place must be above 0 m, got ${place.across_m} × ${place.down_m}`)
  if (spec.tubeInnerDiameter_m > spec.tubeOuterDiameter_m)
    throw new RangeError(
      `loop tubeInnerDiameter_m must not exceed tubeOuterDiameter_m, got ${spec.tubeInnerDiameter_m} in ${spec.tubeOuterDiameter_m}`,
    )
}
