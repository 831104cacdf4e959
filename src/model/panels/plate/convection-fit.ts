import {
  airConductivity_WmK,
  rayleighGroup,
  joinedLaws,
  STILL_SPAN_K,
  SEA_LEVEL_PRESSURE_PA,
} from '#model/outdoors/air'
import type { ConvectionCurve } from './hours.ts'
import type { PanelHour } from './hour-inputs.ts'
import type { PanelSetting } from './setting.ts'

/**
 * Face-to-air differences at which a side's curve meets the full convection, K: the end of the still span, two
 * between and the end of the curve. A face is seldom more than 35 K colder than the air; a hotter one runs
 * to 45 K and beyond.
 */
const COLD_DIFFERENCES_K = [-STILL_SPAN_K, -4, -14, -35] as const
const HOT_DIFFERENCES_K = [STILL_SPAN_K, 4, 24, 45] as const

/**
 * Free convection as scale × difference^power: the parts that depend on air alone, at sea level, for each kelvin of
 * mean temperature: k (gβ/να)^¼ and k (gβ/να)^⅓. With pressure they go as P^½ and P^⅔.
 */
const LOWEST_C = -100
const quarterScales = scaleTable((group) => group ** 0.25)
const thirdScales = scaleTable(Math.cbrt)

function scaleTable(power: (group: number) => number): Float64Array {
  return Float64Array.from({ length: 251 }, (_, i) => {
    const temp_C = LOWEST_C + i
    return airConductivity_WmK(temp_C) * power(rayleighGroup(temp_C, SEA_LEVEL_PRESSURE_PA))
  })
}

function fromTable(table: Float64Array, temp_C: number): number {
  const place = temp_C - LOWEST_C
  const i = place < 0 ? 0 : place > 249 ? 249 : Math.floor(place)
  return table[i]! + (table[i + 1]! - table[i]!) * (place - i)
}

/** One side's fit: where it is made and what of it does not change with the hour. */
interface SideFit {
  readonly difference_K: readonly number[]
  /** Quarter and third law at each difference, W/m²K per scale. */
  readonly quarter: readonly number[]
  readonly third: readonly number[]
  /** Fourth root of each difference: the variable of the curve. */
  readonly root: readonly number[]
}

/** What fitting one panel's convection needs of it: both sides. */
export interface ConvectionFit {
  readonly cold: SideFit
  readonly hot: SideFit
}

export function convectionFit(setting: PanelSetting): ConvectionFit {
  const length = setting.spec.freeConvectionLength_m
  const { coldQuarter, coldThird, hotQuarter, hotThird } = setting.free
  const side = (difference_K: readonly number[], quarter: number, third: number): SideFit => ({
    difference_K,
    quarter: difference_K.map((d) => quarter * (Math.abs(d) / length) ** 0.25),
    third: difference_K.map((d) => third * Math.cbrt(Math.abs(d))),
    root: difference_K.map((d) => Math.abs(d) ** 0.25),
  })
  return {
    cold: side(COLD_DIFFERENCES_K, coldQuarter, coldThird),
    hot: side(HOT_DIFFERENCES_K, hotQuarter, hotThird),
  }
}

/** Empty curves for so many hours, to be filled by `fitConvection`. */
export function emptyCurve(hours: number, side: 'cold' | 'hot'): ConvectionCurve {
  const column = () => new Float64Array(hours)
  const span_K = Math.abs((side === 'cold' ? COLD_DIFFERENCES_K : HOT_DIFFERENCES_K)[3])
  return { constant: column(), first: column(), second: column(), third: column(), span_K }
}

/** Sets one hour of a side's curve through the full convection (`balance.ts`) at its four differences. */
export function fitConvection(side: SideFit, input: PanelHour, curve: ConvectionCurve, hour: number): void {
  const third = Math.cbrt(input.pressure_Pa / SEA_LEVEL_PRESSURE_PA)
  const thirdPressure = third * third
  const quarterPressure = Math.sqrt(input.pressure_Pa / SEA_LEVEL_PRESSURE_PA)
  const h0 = convection_Wm2K(side, 0, input, quarterPressure, thirdPressure)
  const h1 = convection_Wm2K(side, 1, input, quarterPressure, thirdPressure)
  const h2 = convection_Wm2K(side, 2, input, quarterPressure, thirdPressure)
  const h3 = convection_Wm2K(side, 3, input, quarterPressure, thirdPressure)
  const [a, b, c, d] = side.root as readonly [number, number, number, number]
  // Newton's divided differences in the fourth root, written out in powers.
  const ab = (h1 - h0) / (b - a)
  const bc = (h2 - h1) / (c - b)
  const cd = (h3 - h2) / (d - c)
  const abc = (bc - ab) / (c - a)
  const cubic = ((cd - bc) / (d - b) - abc) / (d - a)
  curve.third[hour] = cubic
  curve.second[hour] = abc - cubic * (a + b + c)
  curve.first[hour] = ab - abc * (a + b) + cubic * (a * b + a * c + b * c)
  curve.constant[hour] = h0 - ab * a + abc * a * b - cubic * a * b * c
}

/** Free and forced convection joined at one of a side's differences, W/m²K. */
function convection_Wm2K(
  side: SideFit,
  at: number,
  input: PanelHour,
  quarterPressure: number,
  thirdPressure: number,
): number {
  const mean_C = input.air_C + 0.5 * side.difference_K[at]!
  const free = joinedLaws(
    side.quarter[at]! * quarterPressure * fromTable(quarterScales, mean_C),
    side.third[at]! * thirdPressure * fromTable(thirdScales, mean_C),
  )
  const forced = input.forced_Wm2K
  return Math.cbrt(free * free * free + forced * forced * forced)
}
