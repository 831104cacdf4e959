import { evaporativeSupply, wetBulb_C } from '#model/building/equipment'
import { fanOffset_K } from '#model/design/target'
import { openingFlow_m3h } from '#inside/model/design/measures/night-flow.ts'
import { dewPointFromHumidity_C, SEA_LEVEL_PRESSURE_PA } from '#model/outdoors/air'
import type { Check } from '../check.ts'

const measure = (rest: Omit<Check, 'theme'>): Check => ({ theme: 'Measures beside panels', ...rest })

const outdoor = (air_C: number, humidity_frac: number) => ({
  air_C,
  dewPoint_C: dewPointFromHumidity_C(air_C, humidity_frac),
  pressure_Pa: SEA_LEVEL_PRESSURE_PA,
})

const supply = (
  air_C: number,
  humidity_frac: number,
  effectiveness_frac: number,
  kind: 'direct' | 'indirect',
) =>
  evaporativeSupply(outdoor(air_C, humidity_frac), {
    kind,
    effectiveness_frac,
    flow_m3h: 1000,
    fan_Wm3h: 0,
    cycles_count: 3,
  })

/** Outdoor °C, relative humidity, effectiveness → wet bulb, supply °C, evaporated L/h for 1000 m³/h. */
const COOLER_ROWS = [
  [35, 0.2, 0.85, 18.87, 21.29, 6.67],
  [35, 0.2, 0.7, 18.87, 23.71, 5.45],
  [40, 0.1, 0.85, 18.57, 21.78, 8.81],
  [30, 0.4, 0.85, 20.06, 21.55, 4.13],
  [32, 0.6, 0.85, 25.55, 26.52, 2.66],
] as const

const coolerChecks = COOLER_ROWS.flatMap(([air_C, rh, e, wet, supply_C, litres]): Check[] => {
  const state = `outdoors ${air_C} °C, ${100 * rh} %`
  const kind = 'independent calculation' as const
  const source = 'evaporativeHandbook' as const
  const because = 'printed to a hundredth; constants of moist air'
  return [
    ...(e === 0.85
      ? [
          measure({
            quantity: `wet bulb, ${state}`,
            unit: '°C',
            kind,
            source,
            got: () => wetBulb_C(air_C, dewPointFromHumidity_C(air_C, rh), SEA_LEVEL_PRESSURE_PA),
            want: wet,
            within: 0.03,
            because,
          }),
        ]
      : []),
    measure({
      quantity: `supply of a direct cooler, effectiveness ${e}, ${state}`,
      unit: '°C',
      kind,
      source,
      got: () => supply(air_C, rh, e, 'direct').temp_C,
      want: supply_C,
      within: 0.03,
      because,
    }),
    measure({
      quantity: `water evaporated by a direct cooler, effectiveness ${e}, ${state}`,
      unit: 'kg/h',
      kind,
      source,
      got: () => supply(air_C, rh, e, 'direct').evaporated_kgh,
      want: litres,
      within: 0.01 * litres,
      because,
    }),
  ]
})

export const measureChecks: readonly Check[] = [
  ...coolerChecks,
  ...(
    [
      [35, 0.2, 0.85, 1.92],
      [40, 0.1, 0.85, 1.75],
      [30, 0.4, 0.85, 1.83],
    ] as const
  ).map(([air_C, rh, e, want]) =>
    measure({
      quantity: `cooling of a room at 27 °C by a direct cooler, effectiveness ${e}, outdoors ${air_C} °C, ${100 * rh} %`,
      unit: 'kW',
      kind: 'independent calculation' as const,
      source: 'evaporativeHandbook' as const,
      got: () => {
        const { stream_WK, temp_C } = supply(air_C, rh, e, 'direct')
        return (stream_WK * (27 - temp_C)) / 1000
      },
      want,
      within: 0.01,
      because: 'printed to a hundredth',
    }),
  ),
  measure({
    quantity: 'supply of an indirect cooler, effectiveness 0.6, outdoors 35 °C, 20 %',
    unit: '°C',
    kind: 'independent calculation',
    source: 'evaporativeHandbook',
    got: () => supply(35, 0.2, 0.6, 'indirect').temp_C,
    want: 25.32,
    within: 0.03,
    because: 'printed to a hundredth',
  }),
  measure({
    quantity: 'air through an opening of 0.5 m², 1 m high, 5 K, 2 m/s',
    unit: 'm³/h',
    kind: 'independent calculation',
    source: 'en16798part7',
    where: 'its equation for an opening on one side, worked by hand',
    fromMemory: true,
    got: () => openingFlow_m3h(0.5, 1, 2, 5),
    want: 119.06,
    within: 0.01,
    because: 'worked by hand to a hundredth',
  }),
  ...(
    [
      [0.6, 1.2],
      [0.9, 1.8],
      [1.2, 2.2],
    ] as const
  ).map(([speed_ms, want]) =>
    measure({
      quantity: `what a fan is worth at ${speed_ms} m/s`,
      unit: 'K',
      kind: 'published' as const,
      source: 'en16798' as const,
      fromMemory: true as const,
      got: () => fanOffset_K(speed_ms),
      want,
      within: 1e-9,
      because: 'the table of the standard',
    }),
  ),
]
