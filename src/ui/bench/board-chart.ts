import type { ChartConfiguration } from 'chart.js'
import type { Light } from '#model/panels/readings'
import type { BoardLine } from '#ui/bench/board-prediction.ts'
import { LIGHT_WORDS } from '#ui/bench/reading-words.ts'
import { baseOptions, quantityAxis } from '#ui/chart/base-options.ts'
import type { Ink } from '#ui/chart/ink.ts'
import type { ShownQuantity } from '#ui/words/quantity.ts'

/** Points by shape: sun a circle, shade a triangle, night a square. */
const SHAPES: Readonly<Record<Light, string>> = { sun: 'circle', shade: 'triangle', night: 'rect' }

/** Surface temperature of each bare coating in each light, the air as a line. */
export function boardConfig(
  lines: readonly BoardLine[],
  lights: readonly Light[],
  air_C: number,
  temperature: ShownQuantity,
  ink: Ink,
): ChartConfiguration {
  const bare = lines.filter(({ cover }) => cover === 'bare')
  const base = baseOptions(ink)
  const colours: Record<Light, string> = { sun: ink.without, shade: ink.outdoor, night: ink.room }
  return {
    type: 'line',
    data: {
      // In lines, so that a phone has room for the points.
      labels: bare.map(({ coating }) => coating.split(/, | (?=white|coating|\()/)),
      datasets: lights.map((light) => ({
        label: LIGHT_WORDS[light],
        data: bare.map(({ by }) => temperature.toShown(by[light]!.surface_C)),
        showLine: false,
        pointStyle: SHAPES[light],
        pointRadius: 7,
        pointBorderWidth: 2,
        pointBackgroundColor: light === 'sun' ? colours.sun : 'transparent',
        borderColor: colours[light],
      })),
    },
    options: {
      ...base,
      indexAxis: 'y',
      interaction: { mode: 'nearest', axis: 'y', intersect: false },
      scales: {
        x: quantityAxis(ink, temperature.symbol),
        y: {
          type: 'category',
          offset: true,
          ticks: { color: ink.text, autoSkip: false },
          grid: { display: false },
        },
      },
      plugins: {
        ...base.plugins,
        legend: { position: 'bottom', labels: { usePointStyle: true, color: ink.text, padding: 14 } },
        annotation: {
          annotations: {
            air: {
              type: 'line',
              xMin: temperature.toShown(air_C),
              xMax: temperature.toShown(air_C),
              borderColor: ink.limit,
              borderWidth: 1.2,
              borderDash: [6, 4],
              label: {
                display: true,
                content: 'air',
                position: 'start',
                color: ink.text,
                backgroundColor: ink.ground,
              },
            },
          },
        },
      },
    },
  }
}
