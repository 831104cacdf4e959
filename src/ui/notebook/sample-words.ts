import type { Property } from '#model/panels/notebook'
import type { UnitSystem } from '#model/basis/units'
import { filmThickness } from '#ui/batch/amounts.ts'
import { ownQuantity, PERCENT } from '#ui/words/own-quantity.ts'

export const PROPERTY_WORDS: Readonly<Record<Property, string>> = {
  solarReflectance: 'Solar reflectance',
  emittance: 'Emittance',
  overBlack: 'Reflectance over black',
  overWhite: 'Reflectance over white',
}

/** An amount of a sample, as its axis and its boxes say it. */
export function amountWords(key: string, system: UnitSystem) {
  if (key === 'thickness') return { label: 'Dry thickness', quantity: filmThickness(system) }
  if (key === 'coats') return { label: 'Coats', quantity: ownQuantity('', 1) }
  if (key === 'porosity') return { label: 'Air in the dry film', quantity: PERCENT }
  const [kind, name] = [key.slice(0, key.indexOf(':')), key.slice(key.indexOf(':') + 1)]
  return {
    label: name,
    quantity: ownQuantity(kind === 'solid' ? 'g per g of binder' : 'mL per g of binder', 1),
  }
}
