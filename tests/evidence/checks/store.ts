import { STEFAN_BOLTZMANN } from '#model/outdoors/air'
import { panelExchange_WK, simulateYear } from '#model/building/year'
import { FIELDS } from '#model/design/scenario'
import { storeModel, type StoreSpec } from '#model/building/store'
import { once, type Check } from '../check.ts'
import { allAt, plainLoop, plainPanel, plainPlant, plainRoom, plainTank } from '../models/bench-year.ts'
import { counterFlow, layersStep } from '../models/exchanger.ts'
import { decay_C } from '../models/lumped.ts'

const store = (rest: Omit<Check, 'theme'>): Check => ({ theme: 'Store', ...rest })
const HALF_TONNE_JK = 2088234.4
const STEP = 'a fiftieth of a kelvin: what quarter-hour steps of second order leave'

/** Course of a tank with a panel through the project's year loop; `steps` an hour, hour-end temperatures. */
function tankCourse(
  panel: readonly number[],
  gain: number,
  rate_WK: number,
  fluidToPlate: number,
  loss_WK: number,
  around_C: number,
) {
  const hours = 30
  const room = plainRoom({ hours, start_C: around_C, outdoor_C: () => around_C })
  const plant = plainPlant(
    plainPanel(hours, panel, gain, around_C),
    plainLoop(6, rate_WK, fluidToPlate),
    plainTank({ capacity_JK: HALF_TONNE_JK, loss_WK }),
  )
  return simulateYear({ room, plant, nightVentStop_C: 0 }, { warmUp_h: 0, settled: allAt(room, around_C) })
    .store_C
}

/** 0.5 m³ with 6 m² of a linear panel (U 9, F′ 0.95, equilibrium 8 °C), 0.06 kg/s, 2 W/K of loss to 22 °C. */
const linear = once(() => tankCourse([72 - 72, 9, 0, 0, 0, 0], 72, 0.06 * 4184, (9 * 0.95) / 0.05, 2, 22))

/** The same tank losing by T⁴ alone to a sky of −5 °C through a perfect loop. */
const radiating = once(() => {
  const s = 0.93 * STEFAN_BOLTZMANN
  const k = 273.15
  const emission = [s * k ** 4, 4 * s * k ** 3, 6 * s * k ** 2, 4 * s * k, s, 0]
  return tankCourse(emission, s * 268.15 ** 4, 1e6, 1e6, 0, 22)
})

/** n layers, full of warm water, fed at the bottom with cold at a steady rate: top-layer step response. */
function layerStep(n: number, theta: number): number {
  const hours = 30
  const rate_WK = HALF_TONNE_JK / (10 * 3600)
  const room = plainRoom({ hours, start_C: 30, outdoor_C: () => 30 })
  const plant = plainPlant(
    plainPanel(hours, [0, 1e5, 0, 0, 0, 0], 1e6, 30),
    plainLoop(6, rate_WK, 1e6),
    plainTank({ capacity_JK: HALF_TONNE_JK, layers: n }),
  )
  const year = simulateYear(
    { room, plant, nightVentStop_C: 0 },
    { warmUp_h: 0, stepsPerHour: 12, settled: allAt(room, 30) },
  )
  return (30 - year.storeTop_C[Math.round(theta * 10) - 1]!) / 20
}

/** A tank left alone: its temperature after so many hours in air of another temperature. */
function standby(spec: StoreSpec, hours: number): number {
  const model = storeModel(spec)
  const n = 24 * 12
  // The tank starts at 10 °C, as outdoors; from the second day outdoors is at 30 °C.
  const room = plainRoom({ hours: n, start_C: 10, outdoor_C: (h) => (h < 24 ? 10 : 30) })
  const plant = plainPlant(plainPanel(n, [0, 1, 0, 0, 0, 0], 0, 30), plainLoop(1, 0, 100), model, false)
  const year = simulateYear({ room, plant, nightVentStop_C: 0 }, { warmUp_h: 0, settled: allAt(room, 10) })
  return year.store_C[23 + hours]!
}

const fiveHundred: StoreSpec = {
  kind: 'mixed',
  volume_m3: 0.50265,
  layers: 1,
  insulation_m: 0.05,
  insulationConductivity_WmK: 0.035,
  fittingsFactor_frac: 1,
  place: 'outside',
  delivery_WK: 0,
  deliveryPower_W: 0,
  dewMargin_K: 0,
  deliveryKind: 'surface',
}

export const storeChecks: readonly Check[] = [
  ...(
    [
      [1, 20.9256],
      [4, 18.1915],
      [8, 15.4637],
      [10, 14.4055],
    ] as const
  ).map(([hours, want]) =>
    store({
      quantity: `mixed tank charged by a linear panel, after ${hours} h from 22 °C`,
      unit: '°C',
      kind: 'exact' as const,
      source: 'exact' as const,
      where: 'Hottel–Whillier panel with a tank: one exponential, worked out apart',
      got: () => linear()[hours - 1]!,
      want,
      within: 0.02,
      because: STEP,
    }),
  ),
  ...(
    [
      [1, 20.71694],
      [8, 13.442376],
    ] as const
  ).map(([hours, want]) =>
    store({
      quantity: `tank radiating by the fourth power alone, after ${hours} h from 22 °C to a sky of −5 °C`,
      unit: '°C',
      kind: 'exact' as const,
      source: 'exact' as const,
      where: 'implicit closed form, confirmed by a general ODE solver',
      got: () => radiating()[hours - 1]!,
      want,
      within: 0.02,
      because: STEP,
    }),
  ),
  store({
    quantity: 'panel with fluid as a heat exchanger of one stream: F_R A U_L (6 m², U 9, F′ 0.95, 0.06 kg/s)',
    unit: 'W/K',
    kind: 'independent calculation',
    source: 'duffieBeckman',
    where: 'eq. 6.7.4, worked out apart',
    got: () => {
      const toPlate = panelExchange_WK(plainLoop(6, 0.06 * 4184, (9 * 0.95) / 0.05), 9)
      return 1 / (1 / toPlate + 1 / (6 * 9))
    },
    want: 46.397944,
    within: 1e-4,
    because: 'our node form is an algebraic rewriting of it',
  }),
  ...([0.5, 1, 2, 3] as const).map((ntu) =>
    store({
      quantity: `effectiveness at ${ntu} transfer units, one stream at constant temperature`,
      unit: '–',
      kind: 'published' as const,
      source: 'kaysLondon' as const,
      where: 'C_min/C_max = 0',
      got: () => {
        const rate = 100
        const loop = plainLoop(ntu * 10, rate, 1e12)
        const toPlate = panelExchange_WK(loop, 10)
        return 1 / (1 / toPlate + 1 / (ntu * 10 * 10)) / rate
      },
      want: Number(counterFlow(ntu, 0).toFixed(5)),
      within: 2e-5,
      because: 'five printed digits',
    }),
  ),
  ...(
    [
      [5, 0.8],
      [5, 1.2],
      [8, 1],
    ] as const
  ).map(([n, theta]) =>
    store({
      quantity: `layered tank of ${n}, top layer after ${theta} volumes of cold fed at the bottom`,
      unit: '–',
      kind: 'exact' as const,
      source: 'exact' as const,
      where: 'tanks in series: regularised gamma function P(n, nθ)',
      got: () => layerStep(n, theta),
      want: Number(layersStep(n, theta).toFixed(5)),
      within: 0.004,
      because: 'what five-minute steps of second order leave',
    }),
  ),
  store({
    quantity: 'standby loss of an ideal 500 L tank with 50 mm of foam',
    unit: 'W/K',
    kind: 'independent calculation',
    source: 'exact',
    where: 'cylinder of 0.8 × 1.0 m, foam 0.035 W/mK, outer film 8 W/m²K, worked out apart',
    got: () => storeModel(fiveHundred).layerLoss_WK[0]!,
    want: 2.265,
    within: 0.03,
    because: 'ours is as high as wide: 0.5 % less skin',
  }),
  store({
    quantity: 'the same tank in air 20 K warmer: share of the difference left after 100 h',
    unit: '–',
    kind: 'exact',
    source: 'exact',
    where: 'exponential with a time constant of 256.6 h',
    got: () => (30 - standby(fiveHundred, 100)) / 20,
    want: Number(((decay_C(2.09e6, 2.09e6 / (256.6 * 3600), 10, 30, 100) - 30) / -20).toFixed(4)),
    within: 0.003,
    because: 'the skin differs by 0.5 %',
  }),
  store({
    quantity: 'standby loss of a 100 L tank with 50 mm of foam (0.037 W/mK)',
    unit: 'W/K',
    kind: 'published',
    source: 'faiman',
    where: 'ideal 0.90 W/K',
    got: () =>
      storeModel({ ...fiveHundred, volume_m3: 0.1, insulationConductivity_WmK: 0.037 }).layerLoss_WK[0]!,
    want: 0.9,
    within: 0.12,
    because: 'theirs counts no outer film (11 %) and a slimmer tank (2 %)',
  }),
  store({
    quantity: 'loss of real tanks over ideal ones: default of the fittings factor',
    unit: '–',
    kind: 'common practice',
    source: 'commonPractice',
    got: () => FIELDS.store.fittingsFactor_frac.default,
    want: [1.5, 2.5],
    within: 0,
    because: 'the usual span',
  }),
  store({
    quantity: 'heat capacity of a cubic metre of water',
    unit: 'kWh/K',
    kind: 'published',
    source: 'iapws',
    where: 'density × specific heat at 15 °C',
    got: () => storeModel({ ...fiveHundred, volume_m3: 1 }).layerCapacity_JK[0]! / 3.6e6,
    want: 1.1624,
    within: 0.001,
    because: 'four digits',
  }),
]
