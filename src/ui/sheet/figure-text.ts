import type { Figure, Wording } from '#model/sheet/words.ts'
import { GRAVITY_MS2 } from '#model/air/air-properties.ts'
import type { UnitSystem } from '#model/units/convert.ts'
import { formatNumber } from '#model/units/format.ts'
import { flowText, shownQuantity } from '#ui/words/quantity.ts'

/** Water at 4 °C: what heads are told in, kg/m³. */
const HEAD_WATER_kgm3 = 1000
/** Pound-force on a square foot, Pa: NIST SP 811, appendix B.8. */
const POUND_FOOT2_Pa = 47.88026
const LITRES_m3 = 1000
/** Inch of water at 4 °C, Pa: NIST SP 811, appendix B.8. */
const INCH_WATER_Pa = 249.082

/** A number of the sheet with its unit, held together by a no-break space. */
export function figureText(figure: Figure, system: UnitSystem): string {
  return bareText(figure, system).replaceAll(' ', '\u00a0')
}

function bareText({ value, unit, digits, largest }: Figure, system: UnitSystem): string {
  switch (unit) {
    case 'liquidFlow':
      return flowText(value, 'water', system)
    case 'airFlow':
      return flowText(value, 'air', system)
    case 'head':
      return headText(value, digits, system)
    case 'content':
      return system === 'us'
        ? shownQuantity('m3', system).text(value, digits)
        : `${formatNumber(value * LITRES_m3, digits)} L`
    case 'load':
      return system === 'us'
        ? `${formatNumber(value / POUND_FOOT2_Pa, digits)} lb/ft²`
        : `${formatNumber(value, digits)} Pa`
    case 'fanPressure':
      return system === 'us'
        ? `${formatNumber(value / INCH_WATER_Pa, digits)} in water`
        : `${formatNumber(value, digits)} Pa`
    default:
      return shownQuantity(unit, system, largest).text(value, digits)
  }
}

/** Less than this is not told as a column of water, Pa. */
const NO_COLUMN_Pa = 100

/** `1870 Pa (0.19 m)`: the pressure, and the column of water that pump curves are drawn in. */
function headText(pressure_Pa: number, digits: number, system: UnitSystem): string {
  const head_m = pressure_Pa / (HEAD_WATER_kgm3 * GRAVITY_MS2)
  const column = shownQuantity('m', system).text(head_m, 2)
  if (system === 'si' && pressure_Pa < NO_COLUMN_Pa) return `${formatNumber(pressure_Pa, digits)} Pa`
  return system === 'us' ? `${column} water` : `${formatNumber(pressure_Pa, digits)} Pa (${column})`
}

/** A line of the sheet as text. */
export function wordingText(wording: Wording, system: UnitSystem): string {
  return wording.map((part) => (typeof part === 'string' ? part : figureText(part, system))).join('')
}
