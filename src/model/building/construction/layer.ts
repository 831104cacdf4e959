/** A homogeneous layer of a wall, roof or floor. */
export interface Layer {
  readonly thickness_m: number
  readonly conductivity_WmK: number
  readonly density_kgm3: number
  readonly specificHeat_JkgK: number
  /** What it is made of, for people; null or absent where only its numbers are known. */
  readonly material?: string
}

/** A part without mass: an air gap, or insulation of which only the resistance is known. */
export interface Resistance {
  readonly resistance_m2KW: number
}

/** Layers from the inside out. */
export type Construction = readonly (Layer | Resistance)[]

export function isResistance(part: Layer | Resistance): part is Resistance {
  return 'resistance_m2KW' in part
}

/**
 * Steady resistance of a construction without films, m²K/W. 0 for no layers.
 * @throws RangeError when a layer has a number that is not finite and above 0
 */
export function bareResistanceOf_m2KW(construction: Construction): number {
  checkConstruction(construction)
  return construction.reduce(
    (sum, part) =>
      sum + (isResistance(part) ? part.resistance_m2KW : part.thickness_m / part.conductivity_WmK),
    0,
  )
}

/** @throws RangeError naming the layer and its number when one is not finite and above 0 (a resistance may be 0) */
export function checkConstruction(construction: Construction): void {
  construction.forEach((part, at) => {
    for (const [name, value] of Object.entries(part) as [string, number | string][]) {
      if (name === 'material') continue
      const least = name === 'resistance_m2KW' ? 0 : Number.MIN_VALUE
      if (!(typeof value === 'number' && value >= least && Number.isFinite(value)))
        throw new RangeError(`layer ${at + 1}: ${name} must be above 0, got ${value}`)
    }
  })
}
