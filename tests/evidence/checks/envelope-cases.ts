import type { Check } from '../check.ts'
import { FLOATING, globalSun_kWhm2, HELD } from '../models/envelope-cases.ts'

const DAYS =
  'short by 2.2 K, 0.2 K and 0.3 MWh, probably by the year: in these rooms it hangs on a few warm and sunny autumn days, and ours are not the file’s; the same rooms without the fan, or shaded, are inside'

const WEATHER =
  'bands for the standard’s own weather file; ours is made for the same city and brought to its recalled mean temperature, wind, beam, diffuse and south sun'

/** Which rows miss, by the number of their case. */
const missed = (cases: RegExp) => (name: string) => (cases.test(name) ? DAYS : undefined)
const MISSED = {
  highest: missed(/950FF/),
  mean: missed(/950FF/),
  cooling: missed(/heavy \(900\)/),
}

/** The standard's envelope cases on the true layers. Bands from memory, weather not the standard's: an indication. */
const row = (
  quantity: string,
  unit: string,
  got: () => number,
  want: readonly [number, number],
  miss?: string,
): Check => ({
  theme: 'Room',
  quantity,
  unit,
  kind: 'published',
  source: 'envelope',
  where: WEATHER,
  fromMemory: true,
  got,
  want,
  within: 0,
  because: 'the span of the published results',
  ...(miss === undefined ? {} : { miss }),
})

export const envelopeCaseChecks: readonly Check[] = [
  {
    ...row('envelope cases, their year: sun on the horizontal', 'kWh/m²', globalSun_kWhm2, [1795, 1869]),
    because: '2 % about the 1831.8 recalled, which was not used to make the year',
  },
  ...FLOATING.flatMap(([name, run, highest_C, mean_C]) => [
    row(
      `envelope case ${name}, left alone: hottest hour of the air`,
      '°C',
      () => run().highest_C,
      highest_C,
      MISSED.highest(name),
    ),
    row(
      `envelope case ${name}, left alone: mean of the air`,
      '°C',
      () => run().mean_C,
      mean_C,
      MISSED.mean(name),
    ),
  ]),
  ...HELD.flatMap(([name, run, heating_MWh, cooling_MWh]) => [
    row(`envelope case ${name}, held at 20 to 27 °C: heating`, 'MWh', () => run().heating_MWh, heating_MWh),
    row(
      `envelope case ${name}, held at 20 to 27 °C: cooling`,
      'MWh',
      () => run().cooling_MWh,
      cooling_MWh,
      MISSED.cooling(name),
    ),
  ]),
]
