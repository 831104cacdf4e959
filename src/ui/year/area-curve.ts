import type { ChartConfiguration } from 'chart.js'
import type { AreaRange } from '#live/area-range.svelte.ts'
import type { LiveAnswer } from '#live/messages.ts'
import { baseOptions, quantityAxis } from '#ui/chart/base-options.ts'
import type { TableOf } from '#ui/chart/DataTable.svelte'
import type { Ink } from '#ui/chart/ink.ts'
import type { ShownQuantity } from '#ui/words/quantity.ts'

/** Hours above the limit and the hottest hour against panel area, with the chosen point and its range. */
export function areaCurveConfig(
  answer: LiveAnswer,
  range: AreaRange | null,
  area: ShownQuantity,
  temperature: ShownQuantity,
  ink: Ink,
): ChartConfiguration {
  const { area_m2, hours_h, peak_C } = answer.sizing.curve
  const at = (values: readonly number[]) => area_m2.map((a, i) => ({ x: area.toShown(a), y: values[i]! }))
  return {
    type: 'line',
    data: {
      datasets: [
        {
          label: 'Hours above the limit',
          data: at(hours_h),
          borderColor: ink.room,
          backgroundColor: ink.room,
          borderWidth: 3,
          pointRadius: 3,
          pointStyle: 'circle' as const,
          yAxisID: 'y',
        },
        {
          label: 'Hottest hour',
          data: at(peak_C.map((t) => temperature.toShown(t))),
          borderColor: ink.without,
          backgroundColor: ink.ground,
          borderWidth: 2,
          borderDash: [8, 4],
          pointRadius: 4,
          pointStyle: 'triangle' as const,
          yAxisID: 'peak',
        },
      ],
    },
    options: {
      ...baseOptions(ink),
      interaction: { mode: 'nearest', intersect: false },
      scales: {
        x: quantityAxis(ink, `panel area, ${area.symbol}`, { type: 'linear', min: 0 }),
        y: quantityAxis(ink, 'hours in the year', { beginAtZero: true }),
        peak: quantityAxis(ink, `hottest, ${temperature.symbol}`, {
          position: 'right',
          grid: { display: false },
        }),
      },
      plugins: {
        ...baseOptions(ink).plugins,
        annotation: { annotations: marks(answer, range, area, ink) },
      },
    },
  }
}

function marks(
  answer: LiveAnswer,
  range: AreaRange | null,
  area: ShownQuantity,
  ink: Ink,
): Record<string, object> {
  const x = area.toShown(answer.area_m2)
  const label = {
    display: true,
    content: `chosen ${area.text(answer.area_m2)}`,
    position: 'end',
    backgroundColor: ink.ground,
    color: ink.text,
    font: { size: 11 },
    padding: 3,
  }
  const chosen = { type: 'line', xMin: x, xMax: x, borderColor: ink.limit, borderWidth: 1.5, label }
  if (!range) return { chosen }
  const band = {
    type: 'box',
    xMin: area.toShown(range.low_m2),
    xMax: area.toShown(range.high_m2 ?? answer.scenario.target.maxArea_m2),
    backgroundColor: ink.night,
    borderColor: ink.soft,
    borderDash: [3, 3],
    borderWidth: 1,
    drawTime: 'beforeDatasetsDraw',
  }
  return { band, chosen }
}

export function areaCurveTable(answer: LiveAnswer, area: ShownQuantity, temperature: ShownQuantity): TableOf {
  const { area_m2, hours_h, peak_C } = answer.sizing.curve
  return {
    caption: 'What each panel area does',
    columns: [`Area, ${area.symbol}`, 'Hours above the limit, h', `Hottest, ${temperature.symbol}`],
    rows: area_m2.map((a, i) => [area.fixed(a, 2), hours_h[i]!.toFixed(0), temperature.fixed(peak_C[i]!, 2)]),
  }
}
