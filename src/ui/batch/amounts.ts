import { type UnitSystem, formatNumber } from '#model/basis/units'
import { CANS_gal, CANS_L, containersFor, type ContainerSizes, TUBS_kg, TUBS_lb } from '#model/panels/paint'
import { ownQuantity } from '#ui/words/own-quantity.ts'

// Exact: US pound, ounce, gallon and fluid ounce (NIST SP 811, appendix B).
const OUNCE_G = 28.349523125
const POUND_KG = 0.45359237
const GALLON_L = 3.785411784
const FLUID_OUNCE_ML = GALLON_L * (1000 / 128)
/** Below this many pounds or gallons the small unit is easier to measure. */
const SMALL = 0.5

/** A mass to buy or weigh, given in kg. */
export function massText(mass_kg: number, system: UnitSystem): string {
  if (system === 'us') {
    const pounds = mass_kg / POUND_KG
    return pounds < SMALL ? `${formatNumber((mass_kg * 1000) / OUNCE_G)} oz` : `${formatNumber(pounds)} lb`
  }
  return mass_kg < 1 ? `${formatNumber(mass_kg * 1000)} g` : `${formatNumber(mass_kg)} kg`
}

/** A volume to buy or measure, given in L. */
export function volumeText(volume_L: number, system: UnitSystem): string {
  if (system === 'us') {
    const gallons = volume_L / GALLON_L
    return gallons < SMALL
      ? `${formatNumber((volume_L * 1000) / FLUID_OUNCE_ML)} fl oz`
      : `${formatNumber(gallons)} gal`
  }
  return volume_L < 1 ? `${formatNumber(volume_L * 1000)} mL` : `${formatNumber(volume_L)} L`
}

/** What to buy of a powder or a liquid, in sizes that are sold: "2 × 5 kg + 1 kg". */
export function buyText(
  amount: { mass_kg: number; volume_L: number },
  liquid: boolean,
  system: UnitSystem,
): string {
  const us = system === 'us'
  if (liquid)
    return us
      ? containerText(amount.volume_L / GALLON_L, CANS_gal, (gal) => volumeText(gal * GALLON_L, 'us'))
      : containerText(amount.volume_L, CANS_L, (litres) => volumeText(litres, 'si'))
  return us
    ? containerText(amount.mass_kg / POUND_KG, TUBS_lb, (lb) => massText(lb * POUND_KG, 'us'))
    : containerText(amount.mass_kg, TUBS_kg, (kg) => massText(kg, 'si'))
}

const containerText = (amount: number, sizes: ContainerSizes, named: (size: number) => string): string =>
  containersFor(amount, sizes)
    .map(({ size, count }) => (count === 1 ? named(size) : `${count} × ${named(size)}`))
    .join(' + ') || 'none'

/** Boxes of the recipe: parts and millilitres stay as they are on any scale and cylinder. */
export const PER_GRAM = ownQuantity('g per g', 1)
export const ML_PER_GRAM = ownQuantity('mL per g', 1)
export const G_PER_ML = ownQuantity('g per mL', 1)
export const PLAIN = ownQuantity('', 1)

export const perMass = (system: UnitSystem) =>
  system === 'us' ? ownQuantity('per lb', POUND_KG) : ownQuantity('per kg', 1)
export const perVolume = (system: UnitSystem) =>
  system === 'us' ? ownQuantity('per gal', GALLON_L) : ownQuantity('per L', 1)
export const jarSize = (system: UnitSystem) =>
  system === 'us' ? ownQuantity('gal', 1 / GALLON_L) : ownQuantity('L', 1)
/** Wet mix covers so much in one coat; m² per L. */
export const spreadRate = (system: UnitSystem) =>
  system === 'us' ? ownQuantity('ft² per gal', GALLON_L / 0.3048 ** 2) : ownQuantity('m² per L', 1)
/** Thickness of a film in a unit a gauge shows. */
export const filmThickness = (system: UnitSystem) =>
  system === 'us' ? ownQuantity('mil', 1 / 25.4e-6) : ownQuantity('mm', 1000)
