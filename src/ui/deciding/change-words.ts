import { isUnit } from '#model/basis/units'
import { figure, words, type Figure, type Wording } from '#model/basis/words'
import type { WayChange } from '#model/design/measures'
import { fieldAt } from '#model/design/scenario'

/** "Wall U-value: 2.06 W/m²K, with it 0.30 W/m²K." */
export function changeWords({ field: path, before, after }: WayChange): Wording {
  const field = fieldAt(path)?.field
  const unit = field !== undefined && 'unit' in field && isUnit(field.unit) ? field.unit : 'count'
  const shown = (value: number): Figure => figure(value, unit, 2)
  const name = path === 'room.gains_W' ? 'Heat inside, mean of the day' : (field?.label ?? path)
  return words`${name}: ${shown(before)}, with it ${shown(after)}.`
}
