import { expect, test } from 'vitest'
import { Stages } from '#studies/stages.ts'
import { designOf } from '#model/design/assembly'
import { type Scenario, withField, defaultScenario } from '#model/design/scenario'
import { simulateYear } from '#model/building/year'
import { sampleWeather } from '../../../../src/shell/samples.ts'
import { hotDays } from './hot-days.ts'
import { besideOdex } from './odex-course.ts'

/*
 * Source: odex 2.0.4 (npm), an adaptive extrapolation solver after Hairer, Nørsett & Wanner, Solving Ordinary
 * Differential Equations I, II.9. Tolerance 0.05 K, as issue and design ask: a tenth of what a good room
 * thermometer shows. Label: independent calculation (same equations, another integrator, nothing linearised).
 */
const TOLERANCE_K = 0.05
const FORTNIGHT_h = 14 * 24

const CASES: readonly {
  climate: string
  area_m2: number
  volume_m3: number
  set: readonly [string, string][]
}[] = [
  { climate: 'hot-desert', area_m2: 15, volume_m3: 1.2, set: [['plan.kind', 'nightOnly']] },
  {
    climate: 'humid-subtropical',
    area_m2: 8,
    volume_m3: 0.4,
    set: [
      ['plan.kind', 'allDay'],
      ['store.place', 'outside'],
      ['panel.tilt_deg', '20'],
    ],
  },
  {
    climate: 'mediterranean-coast',
    area_m2: 12,
    volume_m3: 2,
    set: [
      ['cover.kind', 'film'],
      ['room.nightVent', 'true'],
      ['room.wallBuild', 'brick'],
      ['room.roofBuild', 'concreteOut'],
    ],
  },
  {
    climate: 'humid-subtropical',
    area_m2: 20,
    volume_m3: 0.8,
    set: [
      ['plan.kind', 'allDay'],
      ['store.deliveryKind', 'drained'],
      ['room.moisture_kgh', '0.3'],
    ],
  },
]

test.each(CASES)(
  '$climate: room, store and plate agree with odex within 0.05 K over the hottest fortnight',
  (one) => {
    let scenario: Scenario = defaultScenario()
    for (const [field, value] of one.set) scenario = withField(scenario, field, value)
    const prepared = new Stages().prepare(scenario, sampleWeather(one.climate))
    const candidate = { area_m2: one.area_m2, storeVolume_m3: one.volume_m3, flow_kgsm2: 0.01 }
    const { inputs } = designOf(prepared, candidate)
    const apart = besideOdex(inputs, prepared.yardstick.hotDayStarts_h[0]!, FORTNIGHT_h)
    console.log(
      `${one.climate}: air ${apart.air_K.toFixed(4)}, store ${apart.tank_K.toFixed(4)}, plate ${apart.running_K.toFixed(4)} running, ${apart.resting_K.toFixed(4)} at rest, K; pump ran ${apart.pumped_h} h`,
    )
    expect(apart.pumped_h).toBeGreaterThan(40)
    for (const off of [apart.air_K, apart.tank_K, apart.running_K, apart.resting_K])
      expect(off).toBeLessThan(TOLERANCE_K)
  },
)

const DELIVERIES = ['surface', 'drained', 'ceiling', 'floorPipes', 'roofPipes'] as const
/** Every store with everything that delivers from it; `every-pair.test.ts` holds the other names to these equations. */
const PAIRS = [
  ...(['mixed', 'layered'] as const).flatMap((kind) => DELIVERIES.map((by) => [kind, by] as const)),
  ['slab', 'surface'] as const,
  ...(['surface', 'ceiling', 'roofPipes'] as const).map((by) => ['building', by] as const),
]
/** The plate alone under the sky in a place where it dries off by day: the same for all stores, K. */
const RESTING_K = 0.1

test.each(PAIRS)(
  '%s store, %s: air, store and running plate agree with odex within 0.05 K over four hot days; the ledger closes to 1e-9',
  (kind, by) => {
    const { inputs, first_h: first } = hotDays(kind, by, 1)
    const apart = besideOdex(inputs, first, 4 * 24)
    const { ledger, dewHeld_h, condensate_kg } = simulateYear(inputs, { span: [first, first + 4 * 24] })
    console.log(
      `${kind} ${by}: air ${apart.air_K.toFixed(4)}, store ${apart.tank_K.toFixed(4)}, plate ${apart.running_K.toFixed(4)} running, ${apart.resting_K.toFixed(4)} at rest, K; pump ran ${apart.pumped_h} h, held by dew ${dewHeld_h} h, ${condensate_kg.toFixed(2)} kg condensed`,
    )
    expect(apart.pumped_h).toBeGreaterThan(4)
    for (const name of ['air_K', 'tank_K', 'running_K'] as const)
      expect(apart[name], name).toBeLessThan(TOLERANCE_K)
    expect(apart.resting_K).toBeLessThan(RESTING_K)
    expect(Math.abs(ledger.residual_J)).toBeLessThan(1e-9 * ledger.throughput_J)
  },
)
