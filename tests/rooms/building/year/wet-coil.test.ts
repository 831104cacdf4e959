import { expect, test } from 'vitest'
import { simulateYear } from '#model/building/year'
import { designOf } from '#model/design/assembly'
import { defaultScenario, type Scenario, withField } from '#model/design/scenario'
import { WetCoil } from '#inside/model/building/year/wet-coil.ts'
import {
  AIR_SPECIFIC_HEAT_JKGK,
  evaporationHeat_Jkg,
  humidityRatio_frac,
  vapourPressure_Pa,
} from '#model/outdoors/air'
import { Stages } from '#studies/stages.ts'
import { sampleNames, sampleWeather } from '../../../../src/shell/samples.ts'

const PRESSURE_PA = 101_325
const ratio = (t_C: number): number => humidityRatio_frac(vapourPressure_Pa(t_C), PRESSURE_PA)

/*
 * Label: exact. The three flows of the coil meet at its surface: what air and vapour bring, the water takes; and the
 * vapour is that of the saturation curve, not of the chord alone.
 */
test('sensible and latent heat meet at one surface; vapour follows the saturation curve there', () => {
  const coil = new WetCoil(200)
  const at = { air_C: 27, water_C: 12, share: 1 }
  coil.prepare(at, 21, 80, PRESSURE_PA)
  coil.setOpen()
  const sensible_W = coil.openSensible_W(at.air_C, at.water_C)
  const latent_W = coil.openLatent_W(at.air_C, at.water_C)
  const surface_C = at.air_C - (sensible_W * 0.7) / 200
  expect(((surface_C - at.water_C) * 200) / 0.3).toBeCloseTo(sensible_W + latent_W, 6)
  const carried_WK = 1 / (1 / 80 + 0.7 / 200) / AIR_SPECIFIC_HEAT_JKGK
  const exact_W = carried_WK * evaporationHeat_Jkg(21) * (ratio(21) - ratio(surface_C))
  expect(Math.abs(latent_W / exact_W - 1)).toBeLessThan(0.01)
})

/* Label: exact. A surface at or over the dew point gives its dry share, UA, and nothing condenses. */
test('a coil over the dew point is the dry one', () => {
  const coil = new WetCoil(200)
  coil.prepare({ air_C: 27, water_C: 20, share: 1 }, 10, 80, PRESSURE_PA)
  coil.setOpen()
  expect(coil.openLatent_W(27, 20)).toBeLessThan(0)
  expect(coil.throttledLatent_W(1, 500, 20)).toBeLessThan(0)
})

/* Label: exact. Without air change nothing brings vapour that the coil has not taken already. */
test('with no air change nothing condenses for long', () => {
  const coil = new WetCoil(200)
  coil.prepare({ air_C: 27, water_C: 12, share: 1 }, 21, 0, PRESSURE_PA)
  coil.setOpen()
  expect(coil.openLatent_W(27, 12)).toBe(0)
})

const withTray = (area_m2: number, drained: boolean, climate: string, layered = false) => {
  let scenario: Scenario = defaultScenario()
  scenario = withField(scenario, 'store.deliveryKind', drained ? 'drained' : 'surface')
  scenario = withField(scenario, 'store.kind', layered ? 'layered' : 'mixed')
  scenario = withField(scenario, 'plan.kind', 'allDay')
  const prepared = new Stages().prepare(scenario, sampleWeather(climate))
  const candidate = { area_m2, storeVolume_m3: 0.08 * area_m2, flow_kgsm2: 0.01 }
  return simulateYear(designOf(prepared, candidate).inputs)
}

/*
 * Label: conservation. Source: the first law (closure ≤ 1e-9 of throughput) with the vapour's heat among what comes in;
 * the drained water weighs what that heat condenses, to 2 % (heat of evaporation 20 to 28 °C dew point).
 */
test.each(
  sampleNames().flatMap((name) => [
    { name, layered: false },
    { name, layered: true },
  ]),
)('$name, layered $layered: the ledger closes to 1e-9 with latent heat in it', ({ name, layered }) => {
  const { ledger, condensate_kg, dewHeld_h } = withTray(12, true, name, layered)
  expect(Math.abs(ledger.residual_J) / ledger.throughput_J).toBeLessThan(1e-9)
  expect(ledger.latent_J).toBeGreaterThanOrEqual(0)
  expect(dewHeld_h).toBe(0)
  const weighed_kg = ledger.latent_J / evaporationHeat_Jkg(18)
  expect(Math.abs(condensate_kg - weighed_kg)).toBeLessThanOrEqual(0.02 * weighed_kg)
})

/*
 * Label: conservation. Regression (soak, scenario 745): the windows were open at night, and the vapour of a tight, damp room was
 * taken at the rate of their air change; 3 kW of it warmed tank and room. No more condenses than comes in or is given off.
 */
test('a tight, damp room with windows open at night: no more condenses than is brought in', () => {
  let scenario: Scenario = defaultScenario()
  const set: readonly [string, string][] = [
    ['store.deliveryKind', 'drained'],
    ['plan.kind', 'allDay'],
    ['plan.setpoint_C', '20'],
    ['room.nightVent', 'true'],
    ['room.airChange_1h', '0.05'],
    ['room.airChangeWind_1hms', '0'],
    ['room.moisture_kgh', '0.4'],
  ]
  for (const [field, value] of set) scenario = withField(scenario, field, value)
  const weather = sampleWeather('continental')
  const prepared = new Stages().prepare(scenario, weather)
  const candidate = { area_m2: 30, storeVolume_m3: 1, flow_kgsm2: 0.01 }
  const { condensate_kg, storeBottom_C, air_C } = simulateYear(designOf(prepared, candidate).inputs)
  const { ventilation_WK, indoorDewPoint_C } = prepared.room
  // Each hour at most what the shut room's air change carries, from no more than saturated down to saturation at the water.
  const brought_kg = storeBottom_C.reduce((sum, water_C, h) => {
    const dew_C = Math.min(indoorDewPoint_C[h]!, air_C[h]!)
    const above = Math.max(0, ratio(dew_C) - ratio(water_C))
    return sum + (ventilation_WK[h]! / AIR_SPECIFIC_HEAT_JKGK) * above * 3600
  }, 0)
  console.log(`${condensate_kg.toFixed(0)} kg condensed of ${brought_kg.toFixed(0)} kg that could be`)
  expect(condensate_kg).toBeGreaterThan(0)
  expect(condensate_kg).toBeLessThan(brought_kg)
})

/* Label: conservation. With a tray the humid room can be colder: the dew point holds nothing back. */
test('humid subtropics: with a tray more panel gives more cold, and never less than without', () => {
  let before_J = 0
  for (const area_m2 of [6, 12, 24, 48]) {
    const wet = withTray(area_m2, true, 'humid-subtropical')
    const dry = withTray(area_m2, false, 'humid-subtropical')
    const hours = (year: typeof wet): number => year.room_C.filter((t_C) => t_C > 26).length
    console.log(
      `${area_m2} m²: over 26 °C ${hours(dry)} h kept dry, ${hours(wet)} h with a tray; sensible ${(wet.ledger.delivered_J / 3.6e6).toFixed(0)}, latent ${(wet.ledger.latent_J / 3.6e6).toFixed(0)} kWh, ${wet.condensate_kg.toFixed(0)} kg; held by dew ${dry.dewHeld_h} h`,
    )
    expect(hours(wet)).toBeLessThanOrEqual(hours(dry))
    expect(wet.ledger.delivered_J).toBeGreaterThan(before_J)
    before_J = wet.ledger.delivered_J
  }
})
