import { isResistance, type Construction, type Layer } from './layer.ts'

/** Where the mass of a wall or roof lies. */
export const MASS_PLACES = ['through', 'inside', 'bothSides', 'outside'] as const
export type MassPlace = (typeof MASS_PLACES)[number]

/** A wall or roof of which no layers are known. */
export interface Described {
  /** With usual films on both sides, W/m²K. */
  readonly U_Wm2K: number
  readonly mass_kgm2: number
  readonly place: MassPlace
}

/** Films that are part of a U-value, m²K/W: ISO 6946:2017, table 7, horizontal flow. */
const FILMS_m2KW = 0.17
/** Mineral materials; timber has 1600, but is light. J/kgK, ISO 10456. */
const SPECIFIC_HEAT_JKGK = 900
/** Of a mass layer beside a resistance: W/mK, kg/m³ (ISO 10456, masonry of medium weight). */
const MASONRY = { conductivity_WmK: 1, density_kgm3: 1800, specificHeat_JkgK: SPECIFIC_HEAT_JKGK }
/** Least resistance without films: a thin sheet, m²K/W. */
const SHEET_m2KW = 0.002
/** Least mass: a sheet of metal or a board, kg/m². */
const LEAST_MASS_KGM2 = 1

/**
 * Layers that have a U-value, a mass and the place of the mass. A U-value and an areal heat capacity alone do not
 * fix a wall: the place decides. Against layers of eight rooms: within 0.12 K in the year's peak; adobe under an
 * earth-on-timber roof 0.54 K (measured by a fine finite-volume building).
 * @throws RangeError for numbers that are not above 0
 */
export function constructionOf({ U_Wm2K, mass_kgm2, place }: Described): Construction {
  if (!(U_Wm2K > 0)) throw new RangeError(`U-value must be above 0, got ${U_Wm2K}`)
  if (!(mass_kgm2 >= 0)) throw new RangeError(`mass must be 0 or more, got ${mass_kgm2}`)
  const bare_m2KW = Math.max(SHEET_m2KW, 1 / U_Wm2K - FILMS_m2KW)
  const mass = Math.max(LEAST_MASS_KGM2, mass_kgm2)
  if (place === 'through') return [throughout(bare_m2KW, mass)]
  const masses = place === 'bothSides' ? [mass / 2, mass / 2] : [mass]
  const layers = masses.map((share_kgm2): Layer => ({
    thickness_m: share_kgm2 / MASONRY.density_kgm3,
    ...MASONRY,
  }))
  const own_m2KW = layers.reduce((sum, layer) => sum + layer.thickness_m / layer.conductivity_WmK, 0)
  if (own_m2KW >= bare_m2KW) return [throughout(bare_m2KW, mass)]
  const insulation = { resistance_m2KW: bare_m2KW - own_m2KW }
  const [first, second] = layers
  if (place === 'inside') return [first!, insulation]
  if (place === 'outside') return [insulation, first!]
  return [first!, insulation, second!]
}

/** One layer: of a homogeneous wall only resistance and capacity matter. */
function throughout(resistance_m2KW: number, mass_kgm2: number): Layer {
  const thickness_m = 0.1
  return {
    thickness_m,
    conductivity_WmK: thickness_m / resistance_m2KW,
    density_kgm3: mass_kgm2 / thickness_m,
    specificHeat_JkgK: SPECIFIC_HEAT_JKGK,
  }
}

/** Share of the mass on one side of the insulation at which the other is forgotten. */
const MOST_OF_IT = 0.8

/** A U-value, a mass and its place in place of layers (`constructionOf` goes back). Films as in a U-value. */
export function describedAs(layers: Construction): Described {
  const resistance = (part: Construction[number]) =>
    isResistance(part) ? part.resistance_m2KW : part.thickness_m / part.conductivity_WmK
  const mass = (part: Construction[number]) => (isResistance(part) ? 0 : part.thickness_m * part.density_kgm3)
  const bare_m2KW = layers.reduce((sum, part) => sum + resistance(part), 0)
  const mass_kgm2 = layers.reduce((sum, part) => sum + mass(part), 0)
  const most = layers.reduce((best, part, i) => (resistance(part) > resistance(layers[best]!) ? i : best), 0)
  const inside = layers.slice(0, most).reduce((sum, part) => sum + mass(part), 0) / mass_kgm2
  const within = mass(layers[most]!) / mass_kgm2
  const place: MassPlace =
    within > 0.5
      ? 'through'
      : inside > MOST_OF_IT
        ? 'inside'
        : 1 - inside - within > MOST_OF_IT
          ? 'outside'
          : 'bothSides'
  return { U_Wm2K: 1 / (FILMS_m2KW + bare_m2KW), mass_kgm2, place }
}
