import type { ChartConfiguration } from 'chart.js'
import { response, responseAt, type ResponsePoint, enough } from '#model/panels/notebook'
import { baseOptions, quantityAxis } from '#ui/chart/base-options.ts'
import type { Ink } from '#ui/chart/ink.ts'

const STEPS = 40

/** Samples with their intervals, and the curve with its band once there are enough of them. */
export function responseConfig(
  points: readonly ResponsePoint[],
  range: readonly [number, number],
  shown: (x: number) => number,
  titles: { readonly x: string; readonly y: string },
  ink: Ink,
): ChartConfiguration {
  const curve = enough(points) ? response(points, ...range) : null
  const xs = Array.from({ length: STEPS + 1 }, (_, i) => range[0] + ((range[1] - range[0]) * i) / STEPS)
  const along = curve === null ? [] : xs.map((x) => ({ x: shown(x), ...responseAt(curve, x) }))
  const line = { showLine: true, pointRadius: 0, pointStyle: 'line' as const }
  return {
    type: 'scatter',
    data: {
      datasets: [
        {
          label: 'Samples',
          data: points.map(({ x, y }) => ({ x: shown(x), y: y.value })),
          pointStyle: 'rectRot',
          pointRadius: 7,
          pointBackgroundColor: ink.ground,
          pointBorderColor: ink.text,
          pointBorderWidth: 2,
        },
        ...points.map(({ x, y }) => ({
          ...line,
          label: '',
          data: [
            { x: shown(x), y: y.low },
            { x: shown(x), y: y.high },
          ],
          borderColor: ink.text,
          borderWidth: 2,
        })),
        ...(curve === null
          ? []
          : [
              {
                ...line,
                label: 'Curve',
                data: along.map(({ x, value }) => ({ x, y: value })),
                borderColor: ink.room,
                borderWidth: 2.5,
              },
              ...(['low', 'high'] as const).map((end) => ({
                ...line,
                label: end === 'low' ? 'Its 90 % band' : '',
                data: along.map((at) => ({ x: at.x, y: at[end] })),
                borderColor: ink.room,
                borderWidth: 1,
                borderDash: [5, 4],
              })),
            ]),
      ],
    },
    options: withoutUnnamed({
      ...baseOptions(ink),
      scales: { x: quantityAxis(ink, titles.x), y: quantityAxis(ink, titles.y) },
    }),
  }
}

/** The legend without the lines that have no name. */
function withoutUnnamed(options: ReturnType<typeof baseOptions>): ReturnType<typeof baseOptions> {
  const { legend } = options.plugins!
  return {
    ...options,
    plugins: {
      ...options.plugins,
      legend: { ...legend, labels: { ...legend!.labels, filter: ({ text }) => text !== '' } },
    },
  }
}
