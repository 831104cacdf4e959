import { formatNumber, type UnitSystem } from '#model/basis/units'
import { inchText } from './inches.ts'

const INCH_m = 0.0254
const MM = 1000
const MM2 = 1e6

/** Boards and mats of insulation of US trade, in (common practice, no source). */
const BOARDS_in = [0.5, 0.75, 1, 1.5, 2, 2.5, 3, 3.5, 4, 5.5, 6, 8, 10, 12] as const
/** Aluminium and steel sheet and profiles of US trade, in (common practice, no source). */
const SHEETS_in = [0.02, 0.025, 0.032, 0.04, 0.05, 0.063, 0.08, 0.09, 0.125, 0.188, 0.25] as const
/** Round ducts of US trade, in (common practice, no source). */
const DUCTS_in = [3, 4, 5, 6, 7, 8, 9, 10, 12, 14, 16, 18, 20, 24] as const
/** Round ducts of EN 1506, mm (from memory). */
const DUCTS_mm = [63, 80, 100, 125, 160, 200, 250, 315, 400, 500, 630] as const
/** Wire gauges with the metric sections that they are used in place of, mm² (common practice, no source). */
const WIRES = [
  ['20 AWG', 0.5],
  ['18 AWG', 0.75],
  ['16 AWG', 1],
  ['14 AWG', 1.5],
  ['12 AWG', 2.5],
  ['10 AWG', 4],
] as const
/** A section or thickness this little under what was asked for is that, as a share (common practice, no source). */
const NEAR_frac = 0.02

const SOLD = ['board', 'sheetMetal', 'duct', 'wire', 'depth'] as const
export type Sold = (typeof SOLD)[number]

/** True for what is named by the size of its trade. */
export const isSold = (unit: string): unit is Sold => SOLD.some((sold) => sold === unit)

/** The next size that is no smaller, and the largest where none is. */
const next = (sizes: readonly number[], asked: number): number =>
  sizes.find((size) => size >= asked * (1 - NEAR_frac)) ?? Math.max(asked, sizes.at(-1)!)

const nearest = (sizes: readonly number[], asked: number): number =>
  sizes.reduce((best, size) => (Math.abs(size - asked) < Math.abs(best - asked) ? size : best))

/**
 * What is sold by a size of its trade: US boards the nearest, sheet metal and ducts the next that is no smaller, wires of the
 * gauge that is no thinner; in SI the length or section itself, ducts as they are sold. `value` in m, of a wire in m².
 */
export function soldText(value: number, unit: Sold, digits: number, system: UnitSystem): string {
  const us = system === 'us'
  const inches = value / INCH_m
  switch (unit) {
    case 'board':
      return us ? inchText(nearest(BOARDS_in, inches) * INCH_m) : metric(value, digits)
    case 'sheetMetal':
      return us ? `${next(SHEETS_in, inches).toFixed(3)} in` : metric(value, digits)
    case 'duct':
      return us ? `${formatNumber(next(DUCTS_in, inches), 2)} in` : `${next(DUCTS_mm, value * MM)} mm`
    case 'wire':
      return us
        ? (WIRES.find(([, section_mm2]) => section_mm2 >= value * MM2 * (1 - NEAR_frac)) ?? WIRES.at(-1)!)[0]
        : `${formatNumber(value * MM2, 2)} mm²`
    case 'depth':
      return us ? inchText(Math.round(2 * inches) * 0.5 * INCH_m) : metric(value, digits)
  }
}

const metric = (length_m: number, digits: number): string => `${formatNumber(length_m * MM, digits)} mm`
