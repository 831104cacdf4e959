import { figureText } from '#model/basis/words'
import { escaped } from '#model/handover/drawing'
import type { BuilderSheet } from '#model/handover/sheet'
import {
  displayUnit,
  formatFixed,
  formatNumber,
  heatUnit,
  toDisplay,
  type Unit,
  type UnitSystem,
} from '#model/basis/units'

const MONTHS = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec']

/** What thermometers show on clear nights, and the year by month. */
export function expectedHtml(sheet: BuilderSheet, system: UnitSystem): string {
  const shown = (unit: Unit) => (value: number, decimals: number) =>
    formatFixed(toDisplay(value, displayUnit(unit, system)), decimals)
  const symbol = (unit: Unit) => escaped(displayUnit(unit, system).symbol)
  const [t, k, heat] = [shown('C'), shown('K'), shown('J')]
  const watts = (value: number) => formatNumber(toDisplay(value, heatUnit(system)), 2)
  const span = (range: { low: number; high: number } | null, word: (value: number) => string) =>
    range === null ? '–' : `${word(range.low)} to ${word(range.high)}`
  const ranged = sheet.ranges !== null
  const nights = sheet.clearNights.map(({ outdoor_C, store_C, drop_K, heat_W, hours }) =>
    row([
      t(outdoor_C, 0),
      t(store_C, 1),
      `${k(drop_K.middle, 1)} (${span(drop_K, (v) => k(v, 1))})`,
      `${watts(heat_W.middle)} (${span(heat_W, watts)})`,
      String(hours),
    ]),
  )
  const months = sheet.months.map((month, i) =>
    row([
      MONTHS[i]!,
      t(month.outdoorMean_C, 1),
      t(month.roomPeak_C, 1),
      ...(ranged ? [span(month.roomPeakRange_C, (v) => t(v, 1))] : []),
      t(month.doNothingPeak_C, 1),
      heat(month.panelHeat_J, 0),
      ...(ranged ? [span(month.panelHeatRange_J, (v) => heat(v, 0))] : []),
      month.pumpRun_h.toFixed(0),
      heat(month.electric_J, 1),
    ]),
  )
  const clear =
    nights.length === 0
      ? ''
      : part(
          `A clear night, the loop running at ${figureText(sheet.flow, system)} (middle value; eight hours in ten)`,
          table(
            [
              `Outdoors, ${symbol('C')}`,
              `store, ${symbol('C')}`,
              `return colder than supply, ${symbol('K')}`,
              `heat given off, ${heatUnit(system).symbol}`,
              'hours',
            ],
            nights,
          ),
        )
  const year = table(
    [
      'Month',
      `outdoor mean, ${symbol('C')}`,
      `room, hottest, ${symbol('C')}`,
      ...(ranged ? ['range'] : []),
      `without panels, ${symbol('C')}`,
      `heat given off, ${symbol('J')}`,
      ...(ranged ? ['range'] : []),
      'runs, h',
      `electricity, ${symbol('J')}`,
    ],
    months,
  )
  return clear + part('What to expect, month by month', year, true)
}

/** A titled part of the sheet; `whole`: kept on one page. */
export function part(title: string, inside: string, whole = false): string {
  return `<section${whole ? ' class="whole"' : ''}><h2>${escaped(title)}</h2>${inside}</section>`
}

const row = (cells: readonly string[]): string =>
  `<tr>${cells.map((cell) => `<td class="number">${escaped(cell)}</td>`).join('')}</tr>`

const table = (heads: readonly string[], rows: readonly string[]): string =>
  `<table><tr>${heads.map((text) => `<th>${text}</th>`).join('')}</tr>${rows.join('')}</table>`
