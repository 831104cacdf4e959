import type { ChartConfiguration } from 'chart.js'
import type { Estimated, SampleEstimate } from '#model/panels/readings'
import { baseOptions, quantityAxis } from '#ui/chart/base-options.ts'
import type { Ink } from '#ui/chart/ink.ts'
import { withInterval } from '#ui/bench/reading-words.ts'

interface Row {
  readonly label: string
  readonly solar: boolean
  readonly estimated: Estimated
}

function rowsOf(samples: readonly SampleEstimate[]): readonly Row[] {
  return samples.flatMap(({ name, solarReflectance, emittance }) => [
    { label: `${name}: reflectance`, solar: true, estimated: solarReflectance },
    { label: `${name}: emittance`, solar: false, estimated: emittance },
  ])
}

/** Intervals as bars (reflectance filled, emittance outlined), the estimates as diamonds on them. */
export function intervalConfig(samples: readonly SampleEstimate[], ink: Ink): ChartConfiguration {
  const rows = rowsOf(samples)
  const base = baseOptions(ink)
  const lowest = Math.min(...rows.map(({ estimated }) => estimated.low))
  return {
    type: 'bar',
    data: {
      // Two lines each, so that a phone has room for the bars.
      labels: rows.map(({ label }) => label.split(': ')),
      datasets: [
        {
          type: 'line',
          label: 'Estimate',
          data: rows.map(({ estimated }) => estimated.value),
          showLine: false,
          pointStyle: 'rectRot',
          pointRadius: 7,
          pointBackgroundColor: ink.ground,
          pointBorderColor: ink.text,
          pointBorderWidth: 2,
        },
        {
          label: '95 % interval',
          data: rows.map(({ estimated }) => [estimated.low, estimated.high] as [number, number]),
          backgroundColor: rows.map(({ solar }) => (solar ? ink.outdoor : 'transparent')),
          borderColor: rows.map(({ solar }) => (solar ? ink.outdoor : ink.room)),
          borderWidth: 2,
          borderSkipped: false,
          barThickness: 12,
        },
      ],
    },
    options: {
      ...base,
      indexAxis: 'y',
      interaction: { mode: 'nearest', axis: 'y', intersect: false },
      scales: {
        x: quantityAxis(ink, 'share of 1', { min: Math.max(0, Math.floor(lowest * 20) / 20), max: 1 }),
        y: { ticks: { color: ink.text, autoSkip: false }, grid: { display: false } },
      },
      plugins: {
        ...base.plugins,
        legend: { display: false },
        tooltip: { callbacks: { label: (item) => withInterval(rows[item.dataIndex]!.estimated) } },
      },
    },
  }
}

export function intervalSummary(samples: readonly SampleEstimate[]): string {
  const said = rowsOf(samples).map(({ label, estimated }) => `${label} ${withInterval(estimated)}`)
  return `Bars of 95 % intervals. ${said.join('; ')}.`
}
