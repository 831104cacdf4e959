import type { ChartConfiguration } from 'chart.js'
import type { Ledger } from '#model/building/year'
import { baseOptions, quantityAxis } from '#ui/chart/base-options.ts'
import type { TableOf } from '#ui/chart/DataTable.svelte'
import type { Ink } from '#ui/chart/ink.ts'
import type { ShownQuantity } from '#ui/words/quantity.ts'

export interface LedgerLine {
  readonly label: string
  /** Positive: into the building, loop or store; negative: out of it. */
  readonly heat_J: number
}

/** The year's heat by cause; lines that are nothing are left out. */
export function ledgerLines(ledger: Ledger): readonly LedgerLine[] {
  const lines = [
    { label: 'Sunlight and people', heat_J: ledger.gains_J },
    { label: 'Walls, roof and air', heat_J: ledger.envelope_J },
    { label: 'Ground under the slab', heat_J: ledger.ground_J },
    { label: 'Windows open at night', heat_J: ledger.nightVent_J },
    { label: 'Pipes', heat_J: ledger.pipes_J },
    { label: 'Store, from outdoors', heat_J: ledger.storeGainFromOutside_J },
    ...(ledger.latent_J > 0 ? [{ label: 'Vapour condensed on the coil', heat_J: ledger.latent_J }] : []),
    { label: 'Pump and fan', heat_J: ledger.pumpHeat_J },
    { label: 'Panels, heat given off', heat_J: -ledger.panelOut_J },
  ]
  const most = Math.max(...lines.map(({ heat_J }) => Math.abs(heat_J)))
  return lines.filter(({ heat_J }) => Math.abs(heat_J) > most * 1e-6).sort((a, b) => b.heat_J - a.heat_J)
}

export function ledgerConfig(
  lines: readonly LedgerLine[],
  energy: ShownQuantity,
  ink: Ink,
): ChartConfiguration {
  const base = baseOptions(ink)
  return {
    type: 'bar',
    data: {
      labels: lines.map(({ label }) => label),
      datasets: [
        {
          label: 'Heat in (right) and out (left)',
          data: lines.map(({ heat_J }) => energy.toShown(heat_J)),
          backgroundColor: lines.map(({ heat_J }) => (heat_J > 0 ? ink.without : 'transparent')),
          borderColor: lines.map(({ heat_J }) => (heat_J > 0 ? ink.without : ink.room)),
          borderWidth: 2,
        },
      ],
    },
    options: {
      ...base,
      indexAxis: 'y',
      interaction: { mode: 'nearest', axis: 'y', intersect: false },
      scales: {
        x: quantityAxis(ink, `← out   ${energy.symbol} a year   in →`, {
          grid: { color: ink.grid },
        }),
        y: { ticks: { color: ink.text, autoSkip: false }, grid: { display: false } },
      },
      plugins: { ...base.plugins, legend: { display: false } },
    },
  }
}

export function ledgerTable(ledger: Ledger, energy: ShownQuantity): TableOf {
  return {
    caption: 'Heat in and out over the simulated year',
    columns: ['Through', `Heat in (+) or out (−), ${energy.symbol}`],
    rows: [
      ...ledgerLines(ledger).map(({ label, heat_J }) => [label, energy.fixed(heat_J, 1)]),
      ['Left in building and store at the end', energy.fixed(ledger.stored_J, 1)],
      ['Taken from the room into the store', energy.fixed(ledger.delivered_J, 1)],
      [
        'What the balance does not close by',
        (ledger.residual_J / ledger.throughput_J).toExponential(1) + ' of the throughput',
      ],
    ],
  }
}
