import { AIR_MEASURES, BUILDING_MEASURES, volume_m3 } from '#model/design/measures'
import { defaultScenario, type PartialScenario, type Scenario } from '#model/design/scenario'
import { airConditionerPower_W } from '#model/building/equipment'
import { surfaceFactor_frac } from '#inside/model/design/measures/mould.ts'
import { nightVent_WK } from '#inside/model/building/room/air-change.ts'
import { saturationPressure_Pa } from '#model/outdoors/air'
import { sampleWeather } from '../../../src/shell/samples.ts'
import type { Check } from '../check.ts'

const measure = (rest: Omit<Check, 'theme'>): Check => ({ theme: 'Measures beside panels', ...rest })

/** The default description with some of its room changed, and so much of a measure. */
function withMeasure(id: string, amount: number, room: PartialScenario['room'] = {}): Scenario {
  const base = defaultScenario()
  const found = [...BUILDING_MEASURES, ...AIR_MEASURES].find((one) => one.id === id)!
  const own = { wallBuild: 'own', roofBuild: 'own' } as const
  return found.apply(
    { ...base, room: { ...base.room, ...own, ...room } },
    amount,
    sampleWeather('continental'),
  )
}

const BARE = { roofU_Wm2K: 7.142, wallU_Wm2K: 7.142 }
/** Heat through a bare dark sheet with insulation under it, outside face of the air at 68.6 °C, 30 °C inside. */
const HOT_K = 68.6 - 30

/** Insulation: share of the measure (1 is 100 mm), U-value and heat that a handbook sum gives, apart from this program. */
const FOAM_ROWS = [
  ['insulateRoof', 0.5, 0.637, 24.6],
  ['insulateRoof', 1, 0.333, 12.9],
  ['insulateWalls', 0.5, 0.637, 24.6],
  ['insulateWalls', 1, 0.333, 12.9],
] as const

const foamChecks = FOAM_ROWS.map(([id, amount, , want]) =>
  measure({
    quantity: `${id}: heat through a bare sheet with ${100 * amount} mm of foam, 38.6 K across`,
    unit: 'W/m²',
    kind: 'independent calculation',
    source: 'iso6946',
    got: () => {
      const { room } = withMeasure(id, amount, BARE)
      return (id === 'insulateRoof' ? room.roofU_Wm2K : room.wallU_Wm2K) * HOT_K
    },
    want,
    within: 0.1,
    because: 'printed to a tenth',
  }),
)

/** Sunlight that a measure leaves, of that let in before. */
const left_frac = (id: 'shade' | 'glazing'): number => {
  const before = defaultScenario().room
  const { room } = withMeasure(id, 1)
  return (room.shading_frac * room.windowGain_frac) / (before.shading_frac * before.windowGain_frac)
}

/** Watts that 50 m³ lose at so many air changes and 5 K. */
const ventilation_W = (changes_1h: number): number => {
  const { room, site } = defaultScenario()
  const weather = sampleWeather('continental')
  const spec = { ...room, terrain: site.terrain, nightVent: true, nightAirChange_1h: changes_1h }
  return nightVent_WK(spec as never, 50, weather) * 5
}

const carnot = (evaporating_C: number, condensing_C: number): number =>
  (0.45 * (evaporating_C + 273.15)) / (condensing_C - evaporating_C)
const machine = { rated_W: 3000, ratedCop_frac: 3.2, sensible_frac: 1 }
const efficiencyAgainst35 = (outdoor_C: number): number =>
  airConditionerPower_W(machine, 1000, 35) / airConditionerPower_W(machine, 1000, outdoor_C)

export const measurePhysicsChecks: readonly Check[] = [
  ...foamChecks,
  measure({
    quantity: 'shade: sunlight left by outside blinds, beside shutters and slats',
    unit: '',
    kind: 'published',
    source: 'din4108',
    fromMemory: true,
    got: () => left_frac('shade'),
    want: [0.25, 0.3],
    within: 0,
    because: 'the range of the table',
  }),
  measure({
    quantity: 'shade: sunlight left by outside blinds, beside the most that awnings take (77 %, west)',
    unit: '',
    kind: 'published',
    source: 'doeAwnings',
    where: 'up to 65 % south, 77 % west, as quoted; the figure itself was not opened',
    fromMemory: true,
    got: () => left_frac('shade'),
    want: [0.23, 1],
    within: 0,
    because: 'the figure is said to be the most',
  }),
  measure({
    quantity: 'glazing: U-value of a single pane (5.7) with a second one',
    unit: 'W/m²·K',
    kind: 'published',
    source: 'iso10077',
    fromMemory: true,
    got: () => withMeasure('glazing', 1, { windowU_Wm2K: 5.7 }).room.windowU_Wm2K,
    want: 2.8,
    within: 0.15,
    because: 'the table’s two panes, 12 to 16 mm apart, are 2.9 to 2.7',
  }),
  measure({
    quantity: 'glazing: resistance that a second pane adds',
    unit: 'm²·K/W',
    kind: 'published',
    source: 'iso6946',
    fromMemory: true,
    got: () => 1 / withMeasure('glazing', 1, { windowU_Wm2K: 5.7 }).room.windowU_Wm2K - 1 / 5.7,
    want: [0.17, 0.18],
    within: 0,
    because: 'still air, 15 to 25 mm, heat flowing sideways',
  }),
  ...(
    [
      [4, 335],
      [8, 670],
      [12, 1005],
    ] as const
  ).map(([changes_1h, want]) =>
    measure({
      quantity: `night air: heat carried out of 50 m³ by ${changes_1h} air changes an hour, 5 K`,
      unit: 'W',
      kind: 'common practice' as const,
      source: 'commonPractice' as const,
      got: () => ventilation_W(changes_1h),
      want,
      within: 0.08 * want,
      because:
        '0.335 W·h/m³K is air at sea level and 20 °C; the climate’s nights are cooler and its air denser',
    }),
  ),
  measure({
    quantity: 'night fan: heat carried out for its electricity, 5 K',
    unit: '',
    kind: 'independent calculation',
    source: 'commonPractice',
    got: () => {
      const fan = AIR_MEASURES.find(({ id }) => id === 'nightFan')!
      const s = withMeasure('nightFan', 1)
      const flow_m3s = (s.room.nightAirChange_1h * volume_m3(s)) / 3600
      return (1200 * 5 * flow_m3s) / fan.power_W(defaultScenario())
    },
    want: 12,
    within: 0.01,
    because: '1200 ΔT over 500 W per m³/s',
  }),
  measure({
    quantity: 'mass: heat capacity of 50 kg of water on each m² of floor',
    unit: 'J/m²·K',
    kind: 'published',
    source: 'iapws',
    where: 'specific heat at 20 °C and 101.3 kPa, 4.18 kJ/kg K',
    got: () => withMeasure('mass', 1, { contents_Jm2K: 0 }).room.contents_Jm2K,
    want: 50 * 4182,
    within: 200,
    because: 'specific heat at 20 °C, three digits',
  }),
  measure({
    quantity: 'mass: the same beside 90 mm of concrete',
    unit: 'J/m²·K',
    kind: 'published',
    source: 'iso10456',
    fromMemory: true,
    got: () => withMeasure('mass', 1, { contents_Jm2K: 0 }).room.contents_Jm2K,
    want: 0.09 * 2300 * 1000,
    within: 5000,
    because: 'the table’s 2300 kg/m³ and 1000 J/kg·K; 90 mm to the next 2 mm',
  }),
  measure({
    quantity:
      'air conditioner: efficiency at 45 °C outdoors over that at 35 °C, beside 0.45 of Carnot, 8 °C inside',
    unit: '',
    kind: 'independent calculation',
    source: 'carnot',
    got: () => efficiencyAgainst35(45),
    want: carnot(8, 55) / carnot(8, 45),
    within: 0.05,
    because: 'half a per cent a kelvin, the spread of the slope remembered',
  }),
  measure({
    quantity:
      'air conditioner: efficiency at 25 °C outdoors over that at 35 °C, beside 0.45 of Carnot, 8 °C inside',
    unit: '',
    kind: 'independent calculation',
    source: 'carnot',
    got: () => efficiencyAgainst35(25),
    want: carnot(8, 35) / carnot(8, 45),
    within: 0.05,
    because: 'half a per cent a kelvin, the spread of the slope remembered',
    miss: 'a straight slope from 35 °C on: Carnot’s efficiency curves up as the air outside gets mild, so ours is cautious there',
  }),
  measure({
    quantity: 'mould: surface that is 80 % humid in a room of 20 °C and 50 %',
    unit: '°C',
    kind: 'published',
    source: 'din4108',
    fromMemory: true,
    got: () => surfaceAt80_C(0.5 * saturationPressure_Pa(20)),
    want: 12.6,
    within: 0.05,
    because: 'printed to a tenth',
  }),
  measure({
    quantity: 'mould: temperature factor of a corner of an outside wall of U 0.73, the least that is allowed',
    unit: '',
    kind: 'published',
    source: 'din4108',
    fromMemory: true,
    got: () => surfaceFactor_frac(0.73, 0.25),
    want: [0.7, 1],
    within: 0,
    because: 'the plain wall lies over the 0.70 that corners and edges must reach',
  }),
]

/** Temperature at which a vapour pressure is 80 % of saturation, °C, by halving. */
function surfaceAt80_C(vapour_Pa: number): number {
  let [low_C, high_C] = [0, 30]
  for (let k = 0; k < 50; k++) {
    const middle_C = 0.5 * (low_C + high_C)
    if (saturationPressure_Pa(middle_C) * 0.8 < vapour_Pa) low_C = middle_C
    else high_C = middle_C
  }
  return low_C
}
