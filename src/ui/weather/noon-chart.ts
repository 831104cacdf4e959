import type { ChartConfiguration } from 'chart.js'
import type { NoonProfile } from '#model/outdoors/intake'
import { baseOptions, hoursAxis, quantityAxis } from '#ui/chart/base-options.ts'
import type { TableOf } from '#ui/chart/DataTable.svelte'
import type { Ink } from '#ui/chart/ink.ts'
import type { ShownQuantity } from '#ui/words/quantity.ts'

/** Hours either side of noon that are drawn. */
const REACH_H = 9

const points = (x: readonly number[], y: readonly number[], shown: ShownQuantity) =>
  x.flatMap((hour, i) => (Math.abs(hour) <= REACH_H ? [{ x: hour, y: shown.toShown(y[i]!) }] : []))

/** Measured light against the sun's height, both by hours from solar noon, with noon drawn. */
export function noonConfig(profile: NoonProfile, flux: ShownQuantity, ink: Ink): ChartConfiguration {
  const base = baseOptions(ink)
  const { fromNoon_h: x } = profile
  return {
    type: 'line',
    data: {
      datasets: [
        {
          label: 'Light in the file',
          data: points(x, profile.measured_Wm2, flux),
          borderColor: ink.room,
          borderWidth: 3,
          pointRadius: 2.5,
        },
        {
          label: 'Height of the sun, scaled',
          data: points(x, profile.sun_Wm2, flux),
          borderColor: ink.outdoor,
          borderWidth: 2,
          borderDash: [7, 4],
          pointRadius: 0,
        },
      ],
    },
    options: {
      ...base,
      parsing: false,
      scales: {
        x: hoursAxis(ink, 'hours from solar noon', [-REACH_H, REACH_H], 3),
        y: quantityAxis(ink, `mean, ${flux.symbol}`, { beginAtZero: true }),
      },
      plugins: {
        ...base.plugins,
        annotation: {
          annotations: {
            noon: {
              type: 'line',
              xMin: 0,
              xMax: 0,
              borderColor: ink.limit,
              borderWidth: 1.5,
              borderDash: [2, 3],
            },
          },
        },
      },
    },
  }
}

export function noonTable(profile: NoonProfile, flux: ShownQuantity): TableOf {
  return {
    caption: 'Mean light by hours from solar noon',
    columns: ['Hours from noon', `Light in the file, ${flux.symbol}`, `Sun, scaled, ${flux.symbol}`],
    rows: profile.fromNoon_h.map((hour, i) => [
      hour.toFixed(2),
      flux.fixed(profile.measured_Wm2[i]!, 0),
      flux.fixed(profile.sun_Wm2[i]!, 0),
    ]),
  }
}
