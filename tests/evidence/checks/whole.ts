import { Stages } from '#studies/stages.ts'
import { type PanelTangent, panelTangent } from '#model/panels/plate'
import { designOf, type Prepared } from '#model/design/assembly'
import { type Scenario, defaultScenario } from '#model/design/scenario'
import { simulateYear, type YearResult } from '#model/building/year'
import { NO_END, once, type Check } from '../check.ts'
import { JULY, meanDaily, sampleClimate } from '../data/sample.ts'

const whole = (rest: Omit<Check, 'theme'>): Check => ({ theme: 'Whole systems', ...rest })

type Change = { readonly [G in keyof Scenario]?: Partial<Scenario[G]> }

function prepare(climate: string, change: Change = {}): Prepared {
  const start = defaultScenario()
  const merged = Object.fromEntries(
    Object.entries(start).map(([group, values]) => [
      group,
      { ...values, ...change[group as keyof Scenario] },
    ]),
  ) as unknown as Scenario
  return new Stages().prepare(merged, sampleClimate(climate))
}

/** Default workshop with 12 m² of bare panel and 1 m³, night only. */
function withPanels(climate: string, change: Change = {}): { p: Prepared; year: YearResult } {
  const p = prepare(climate, change)
  const year = simulateYear(designOf(p, { area_m2: 12, storeVolume_m3: 1, flow_kgsm2: 0.01 }).inputs)
  return { p, year }
}
const desert = once(() => withPanels('hot-desert'))
const humid = once(() => withPanels('humid-subtropical'))
const coast = once(() => withPanels('mediterranean-coast'))

/** Mean heat of a bare panel held at air temperature over the ten hours 20–6 of a July night, Wh/m². */
function nightAtAir_Whm2({ panel }: Prepared): number {
  const out: PanelTangent = { q_Wm2: 0, slope_Wm2K: 0, water_kgm2s: 0 }
  let sum = 0
  for (let h = JULY[0]; h < JULY[1]; h++) {
    if (h % 24 >= 6 && h % 24 < 20) continue
    panelTangent(panel, h, panel.air_C[h]!, 0, out)
    sum += out.q_Wm2
  }
  return sum / 31
}

/** Heat taken by the panels in July, kWh/m² a night and W/m² while the pump ran. */
function julyHeat({ year }: { year: YearResult }) {
  let heat = 0
  let run = 0
  for (let h = JULY[0]; h < JULY[1]; h++) {
    heat += year.panelHeat_W[h]!
    run += year.pumpRun_frac[h]!
  }
  return { night_kWhm2: heat / 12 / 31 / 1000, running_Wm2: heat / 12 / Math.max(run, 1e-9) }
}

/** Mean daily minimum of the tank over that of the outdoor air, July, K. */
function tankOverAirMinimum({ p, year }: { p: Prepared; year: YearResult }): number {
  return meanDaily(year.store_C, JULY, 'min') - meanDaily(p.weather.airTemp_C, JULY, 'min')
}

/** A shaded, insulated room of a mass; how far windows opened at night lower its mean daily highest, July, K. */
function nightVentDrop(
  built: Partial<Prepared['scenario']['room']>,
  slabThickness_m: number,
): { drop_K: number; under_K: number } {
  const gains_W = Array.from({ length: 24 }, () => 0)
  const room = {
    ...built,
    slabThickness_m,
    gains_W,
    shading_frac: 0.2,
    roofReflectance_frac: 0.8,
    wallReflectance_frac: 0.8,
    nightAirChange_1h: 15,
    airChange_1h: 0.3,
    airChangeWind_1hms: 0,
    slabInsulation_m2KW: slabThickness_m < 0.05 ? 3 : 0,
  }
  const plan = { setpoint_C: 18 }
  const shut = prepare('hot-desert', { room, plan })
  const open = prepare('hot-desert', { room: { ...room, nightVent: true }, plan })
  const highest = (p: Prepared) => meanDaily(p.doNothing.room_C, JULY, 'max')
  return {
    drop_K: highest(shut) - highest(open),
    under_K: meanDaily(open.weather.airTemp_C, JULY, 'max') - highest(open),
  }
}
const heavy = once(() => nightVentDrop({ wallBuild: 'concreteOut', roofBuild: 'concreteOut' }, 0.2))
const light = once(() => nightVentDrop({ wallBuild: 'lightFrame', roofBuild: 'wool100' }, 0.02))

const GATE = 'the band that practice gives; a year in an invented climate must fall in it'

const HUMID_TANK =
  'just over the band: a panel of 60 % of the floor, with the field factor a new scenario starts with, carries a room’s heat on nights that hardly cool below the air'

export const wholeChecks: readonly Check[] = [
  whole({
    quantity: 'humid subtropical July, bare panel at air temperature, ten night hours',
    unit: 'Wh/m²',
    kind: 'published',
    source: 'fsec',
    where: 'theory 250–450 Wh/m² in a night of ten hours in Florida, about half in practice',
    got: () => nightAtAir_Whm2(humid().p),
    want: [250, 450],
    within: 0,
    because: 'the reported band of a theory like ours, in a climate like theirs',
  }),
  whole({
    quantity: 'hot desert July, 12 m² and 1 m³, night only: heat while the pump runs',
    unit: 'W/m²',
    kind: 'measured',
    source: 'erellEtzion',
    where: 'nightly mean more than 90 W/m² with a warm store; no upper end is given',
    got: () => julyHeat(desert()).running_Wm2,
    want: [90, NO_END],
    within: 22.5,
    because: '25 %, the band for incompletely reported field work',
    miss: 'just under the band: their radiator was fed with warm water, our tank is nearly as cold as the night when the loop runs on, and the field factor a new scenario starts with takes its share',
  }),
  whole({
    quantity: 'hot desert July, 12 m² and 1 m³, night only: heat a night',
    unit: 'kWh/m²',
    kind: 'common practice',
    source: 'commonPractice',
    got: () => julyHeat(desert()).night_kWhm2,
    want: [0.3, 0.9],
    within: 0,
    because: GATE,
  }),
  whole({
    quantity: 'humid subtropical July, 12 m² and 1 m³, night only: heat while the pump runs',
    unit: 'W/m²',
    kind: 'common practice',
    source: 'commonPractice',
    got: () => julyHeat(humid()).running_Wm2,
    want: [20, 50],
    within: 0,
    because: GATE,
  }),
  ...(
    [
      ['hot desert', desert],
      ['humid subtropical', humid],
      ['Mediterranean coast', coast],
    ] as const
  ).map(([name, run]) =>
    whole({
      quantity: `${name} July: mean daily minimum of the tank over that of the outdoor air`,
      unit: 'K',
      kind: 'measured' as const,
      source: 'roofPonds' as const,
      where: 'minimum pond temperature within 1.1 K of the minimum air temperature in all climates studied',
      got: () => tankOverAirMinimum(run()),
      want: 0,
      within: 1.1,
      because: '2 °F, as printed, for ponds over a whole roof; ours is a panel of 60 % of the floor',
      ...(run === humid ? { miss: HUMID_TANK } : {}),
    }),
  ),
  whole({
    quantity:
      'hot desert July, heavy shaded room with windows open at night: highest under the outdoor highest',
    unit: 'K',
    kind: 'measured',
    source: 'givoni',
    where:
      'upper end: outdoor 38 °C, indoor 24.5 °C at the most (abstract); the lower end, 7–8 K, is a teaching text’s rule and not in this study',
    got: () => heavy().under_K,
    want: [7, 13.5],
    within: 0,
    because: 'between the rule of thumb and the best that was measured',
  }),
  whole({
    quantity: 'hot desert July, light room: what windows open at night take off the daily highest',
    unit: 'K',
    kind: 'measured',
    source: 'givoni',
    where: 'almost no effect on the low-mass building',
    got: () => light().drop_K,
    want: [0, 1.5],
    within: 0,
    because: '“almost none”: a kelvin and a half in a climate with a larger daily range',
  }),
  whole({
    quantity: 'the same, heavy room over light room',
    unit: 'K',
    kind: 'measured',
    source: 'givoni',
    where: 'the heavy building gains from night air, the light one hardly',
    got: () => heavy().drop_K - light().drop_K,
    want: [0.5, 10],
    within: 0,
    because: 'the sign is the finding',
    miss: 'the sign is right; with films of 2.5 W/m²K inside and the windows shut by the setpoint, a shaded heavy room that is cool by itself gains hardly more than a light one',
  }),
]
