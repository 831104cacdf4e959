import { Stages } from '#studies/stages.ts'
import { designOf } from '#model/design/assembly'
import { defaultScenario } from '#model/design/scenario'
import { simulateYear } from '#model/building/year'
import { besideOdex } from '../../rooms/building/year/odex-course.ts'
import { once, type Check } from '../check.ts'
import { JULY, sampleClimate } from '../data/sample.ts'

const integration = (rest: Omit<Check, 'theme'>): Check => ({ theme: 'Integration', ...rest })
const LENGTH_h = 15 * 24
/** Places with the first hour of a hot fortnight. */
const PLACES = [
  ['hot-desert', JULY[0]],
  ['high-dry-plateau', JULY[0]],
  ['semi-arid-south', 5 * 24],
  ['humid-subtropical', JULY[0]],
] as const

/** Default workshop with 12 m² and a cubic metre, night only; a hot fortnight in one climate. */
function fortnight(climate: string, first: number) {
  const prepared = new Stages().prepare(defaultScenario(), sampleClimate(climate))
  const { inputs } = designOf(prepared, { area_m2: 12, storeVolume_m3: 1, flow_kgsm2: 0.01 })
  return {
    apart: besideOdex(inputs, first, LENGTH_h),
    ledger: simulateYear(inputs, { span: [first, first + LENGTH_h] }).ledger,
  }
}

export const integrationChecks: readonly Check[] = PLACES.flatMap(([climate, first]) => {
  const run = once(() => fortnight(climate, first))
  const row = (name: string, got: () => number): Check =>
    integration({
      quantity: `${climate}, a hot fortnight with 12 m² and 1 m³: ${name}, largest difference from a general ODE solver`,
      unit: 'K',
      kind: 'independent calculation',
      source: 'odex',
      got,
      want: [0, 0.05],
      within: 0,
      because: 'a twentieth of a kelvin, asked of the hour loop from the start',
    })
  return [
    row('tank', () => run().apart.tank_K),
    row('room air, mean of the hour', () => run().apart.air_K),
    row('plate while the loop runs', () => run().apart.running_K),
    row('plate at rest', () => run().apart.resting_K),
    integration({
      quantity: `${climate}, the same fortnight: energy not accounted for, over all that flowed`,
      unit: '–',
      kind: 'conservation',
      source: 'balance',
      got: () => Math.abs(run().ledger.residual_J) / run().ledger.throughput_J,
      want: [0, 1e-9],
      within: 0,
      because: 'what goes in is what comes out and what is stored, to rounding',
    }),
  ]
})
