import { type UnitSystem, formatNumber, formatQuantity } from '#model/basis/units'
import { feetText, inchText } from './inches.ts'
import { pipeSold, tubeSold, valveSold } from './pipe-sizes.ts'
import { isSold, soldText, type Sold } from './trade-sizes.ts'
import type { Figure, Text } from './wording.ts'

/** Metre of water at 4 °C, what heads are given in, Pa: NIST SP 811, appendix B.8. */
const METRE_WATER_Pa = 9806.65
/** Pound-force on a square foot, Pa: NIST SP 811, appendix B.8. */
const POUND_FOOT2_Pa = 47.88026
const LITRES_m3 = 1000
/** International foot, m. */
const FOOT_m = 0.3048
/** A length that is a rule of thumb is given in the US to half a foot, m. */
const HALF_FOOT_m = FOOT_m / 2
const INCH_m = FOOT_m / 12
/** h·ft²·°F/Btu in a m²K/W: NIST SP 811, appendix B.8 (0.176 1102 the other way). */
const US_R_m2KW = 1 / 0.1761102
/** Bar, and pound-force on a square inch, Pa: NIST SP 811, appendix B.8. */
const BAR_Pa = 100_000
const POUND_INCH2_Pa = 6894.757
/** Pound-force, N: NIST SP 811, appendix B.8. */
const POUND_FORCE_N = 4.4482216
/** Inch of water at 4 °C, Pa: NIST SP 811, appendix B.8. */
const INCH_WATER_Pa = 249.082
/** A valve’s Cv, gal/min at 1 psi, over its Kvs, m³/h at 1 bar: from gallon and psi as above. */
const CV_KVS = 1.156
const MIL_m = 2.54e-5

/** British thermal unit (International Table) in an hour, W: NIST SP 811, appendix B.8. */
const BTU_HOUR_W = 0.29307107
/** Lengths of `short` figures are no longer, m. */
const SHORT_m = 0.5

/** A number with its unit, held together by a no-break space. */
export function figureText(figure: Figure, system: UnitSystem): string {
  const { value, unit, digits } = figure
  const text = isSold(unit) ? soldText(value, unit, digits, system) : bareText({ ...figure, unit }, system)
  return unit === 'pipeBore' ? text : text.replaceAll(' ', '\u00a0')
}

type Bare = Figure & { readonly unit: Exclude<Figure['unit'], Sold> }

function bareText({ value, unit, digits, largest }: Bare, system: UnitSystem): string {
  switch (unit) {
    case 'liquidFlow':
      return flowText(value, 'water', system)
    case 'airFlow':
      return flowText(value, 'air', system)
    case 'head':
      return headText(value, digits, system)
    case 'content':
      return system === 'us'
        ? formatQuantity(value, 'm3', system, { digits })
        : `${formatNumber(value * LITRES_m3, digits)} L`
    case 'load':
      return system === 'us'
        ? `${formatNumber(value / POUND_FOOT2_Pa, digits)} lb/ft²`
        : `${formatNumber(value, digits)} Pa`
    case 'gauge':
      return system === 'us'
        ? `${formatNumber(value / POUND_INCH2_Pa, 2)} psi`
        : `${formatNumber(value / BAR_Pa, 2)} bar`
    case 'fanPressure':
      return system === 'us'
        ? `${formatNumber(value / INCH_WATER_Pa, digits)} in water`
        : `${formatNumber(value, digits)} Pa`
    case 'heat':
      return system === 'us'
        ? `${formatNumber(value / BTU_HOUR_W, digits)} Btu/h`
        : formatQuantity(value, 'W', system, { digits })
    case 'valveFlow':
      return system === 'us'
        ? `Cv ${formatNumber(3600 * CV_KVS * value, 2)}`
        : `Kvs ${formatNumber(3600 * value, 2)} m³/h`
    case 'span':
    case 'rough':
    case 'sectionModulus':
    case 'tubeOuter':
    case 'coatThickness':
      return builtText(value, unit, digits, system)
    case 'flowSpeed':
      return system === 'us'
        ? `${formatNumber(value / FOOT_m, digits)} ft/s`
        : `${formatNumber(value, digits)} m/s`
    case 'pipeBore':
      return boreText(value, system)
    case 'valveSize': {
      const sold = valveSold(value)
      return system === 'us' ? sold.thread : `DN ${sold.nominal} (${sold.thread})`
    }
    case 'force':
      return system === 'us'
        ? `${formatNumber(value / POUND_FORCE_N, digits)} lbf`
        : `${formatNumber(value / 1000, digits)} kN`
    case 'rValue':
      return system === 'us' ? `R-${formatNumber(value * US_R_m2KW, 2)}` : `R ${formatNumber(value, 2)} m²K/W`
    default:
      return system === 'us' && unit === 'm' && largest <= SHORT_m
        ? inchText(value)
        : formatQuantity(value, unit, system, { digits, largest })
  }
}

/** Lengths, and a rail’s section modulus, as builders, plumbers and painters give them. */
function builtText(
  length_m: number,
  unit: 'span' | 'rough' | 'sectionModulus' | 'tubeOuter' | 'coatThickness',
  digits: number,
  system: UnitSystem,
): string {
  switch (unit) {
    case 'span':
      return system === 'us' ? feetText(length_m) : formatQuantity(length_m, 'm', system, { digits })
    case 'rough':
      return system === 'us'
        ? feetText(Math.round(length_m / HALF_FOOT_m) * HALF_FOOT_m)
        : formatQuantity(length_m, 'm', system, { digits })
    case 'sectionModulus':
      return system === 'us'
        ? `${formatNumber(length_m / INCH_m ** 3, digits)} in³`
        : `${formatNumber(length_m * 1e6, digits)} cm³`
    case 'tubeOuter':
      return system === 'us' ? `${tubeSold(length_m)} in` : `${formatNumber(1000 * length_m, digits)} mm`
    case 'coatThickness':
      return system === 'us'
        ? `${formatNumber(length_m / MIL_m, 2)} mils`
        : `${formatNumber(1000 * length_m, digits)} mm`
  }
}

/** The size a pipe is sold in with its bore, and the bore that was asked for where that is another. */
function boreText(inner_m: number, system: UnitSystem): string {
  const bore = (length_m: number) => formatQuantity(length_m, 'm', system, { digits: 3, largest: 0.5 })
  const sold = pipeSold(inner_m, system)
  if (sold === null) return `at least ${bore(inner_m)} inside`
  const kind = sold.name.includes('type') ? '' : ' nominal'
  const size = system === 'us' ? `${sold.name}${kind}` : `${sold.name} mm`
  const [has, asked] = [bore(sold.inner_m), bore(inner_m)]
  if (has === asked) return `${size} (${has} inside)`
  return sold.inner_m > 1.025 * inner_m
    ? `${size} (${has} inside; at least ${asked} is asked for)`
    : `${size} (${has} inside; reckoned with ${asked})`
}

/** Less than this is not given as a column of water, Pa. */
const NO_COLUMN_Pa = 100
const KILO = 1000

/** `1870 Pa (0.19 m)`: the pressure, and the column of water that pump curves are drawn in. */
function headText(pressure_Pa: number, digits: number, system: UnitSystem): string {
  const head_m = pressure_Pa / METRE_WATER_Pa
  const column = formatQuantity(head_m, 'm', system, { digits: 2 })
  if (system === 'us') return `${column} of head`
  if (pressure_Pa < NO_COLUMN_Pa) return `${formatNumber(pressure_Pa, digits)} Pa`
  return pressure_Pa < KILO
    ? `${formatNumber(pressure_Pa, digits)} Pa (${column})`
    : `${formatNumber(pressure_Pa / KILO, digits)} kPa (${column})`
}

/** A wording as text in the reader's units. */
export function wordingText(wording: Text, system: UnitSystem): string {
  if (typeof wording === 'string') return wording
  return wording.map((part) => (typeof part === 'string' ? part : figureText(part, system))).join('')
}

const LITRES_MIN = 60_000
const GALLONS_MIN = 15_850.323
const CUBIC_METRES_HOUR = 3600
const CUBIC_FEET_MIN = 2118.88

/** A volume flow in the unit a pump or fan is bought by; `flow_m3s` in m³/s. */
export function flowText(flow_m3s: number, fluid: string, system: UnitSystem): string {
  const air = fluid === 'air'
  const [factor, symbol] =
    system === 'us'
      ? air
        ? [CUBIC_FEET_MIN, 'cfm']
        : [GALLONS_MIN, 'gpm']
      : air
        ? [CUBIC_METRES_HOUR, 'm³/h']
        : [LITRES_MIN, 'L/min']
  return `${Number((flow_m3s * factor).toPrecision(2))} ${symbol}`
}
