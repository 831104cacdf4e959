import { plausibleUnit } from './plausible.ts'
import type { Profile } from './profile.ts'
import type { Quantity } from './quantity.ts'
import type { ColumnGuess } from '../mapping.ts'

/** Offered for a column by its range alone, and how far range alone is to be believed. */
const OFFERED: readonly (readonly [Quantity, number])[] = [
  ['airTemp', 0.2],
  ['dewPoint', 0.15],
  ['relativeHumidity', 0.2],
  ['pressure', 0.3],
  ['windSpeed', 0.15],
  ['windDirection', 0.15],
  ['globalHorizontal', 0.2],
  ['directNormal', 0.15],
  ['diffuseHorizontal', 0.15],
  ['skyLongwave', 0.15],
  ['totalCloud', 0.1],
]

/** What else a column could be, by its range; without what it is taken for. */
export function alternativesOf(profile: Profile | null, taken: Quantity | undefined): ColumnGuess[] {
  if (profile === null) return []
  return OFFERED.flatMap(([quantity, confidence]) => {
    const unit = quantity === taken ? null : plausibleUnit(quantity, profile)
    return unit === null ? [] : [{ quantity, unit, confidence }]
  })
}
