import { expect, test } from 'vitest'
import { Stages } from '#studies/stages.ts'
import { withField, defaultScenario } from '#model/design/scenario'
import { sampleWeather } from '../../../../src/shell/samples.ts'

/*
 * Label: limit. Water that comes back from the room is no warmer than the room, so a tank shaded from nothing but the room's
 * air is never warmer than the hottest of room and outdoors: within 1 K, what a stage of a quarter hour may pass it by.
 */
test.each([
  ['layered', 'semi-arid-south'],
  ['layered', 'humid-subtropical'],
  ['mixed', 'semi-arid-south'],
])('a %s tank of 20 L behind a large fan coil in %s is never warmed past the room', (kind, climate) => {
  let scenario = defaultScenario()
  for (const [field, value] of [
    ['store.kind', kind],
    ['store.autoVolume', 'false'],
    ['store.volume_m3', '0.02'],
    ['store.layers', '5'],
    ['store.delivery_WK', '1500'],
    ['plan.band_K', '4'],
    ['target.autoArea', 'false'],
    ['target.area_m2', '40'],
  ] as const)
    scenario = withField(scenario, field, value)
  const record = sampleWeather(climate)
  const { year } = new Stages().answer(scenario, record)
  const hottest = (values: Float64Array) => values.reduce((most, value) => Math.max(most, value), -Infinity)
  const most_C = Math.max(hottest(year.air_C), hottest(record.airTemp_C))
  console.log(
    `${kind}, ${climate}: tank up to ${hottest(year.storeTop_C).toFixed(2)}, room and outdoors ${most_C.toFixed(2)} °C`,
  )
  expect(hottest(year.storeTop_C)).toBeLessThan(most_C + 1)
  expect(Math.abs(year.ledger.residual_J / year.ledger.throughput_J)).toBeLessThan(1e-11)
})
