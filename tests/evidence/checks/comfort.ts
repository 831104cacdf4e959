import { ASHRAE_WIDTHS, adaptiveComfort_C, EN_CATEGORIES } from '#inside/model/design/target/comfort.ts'
import { runningMeanOutdoor_C } from '#model/outdoors/weather'
import type { Check } from '../check.ts'
import { sampleClimate } from '../data/sample.ts'

const comfort = (rest: Omit<Check, 'theme'>): Check => ({ theme: 'Comfort', ...rest })

/** The seven daily means of the printed example before a day, put into a record of eight days. */
function sevenDays(): number {
  const means = [21, 23, 26, 27, 25, 22, 24, 20]
  const frame = sampleClimate('hot-desert')
  const hours = 8 * 24
  const start_utcMs = -frame.site.utcOffset_h * 3_600_000
  const airTemp_C = Float64Array.from({ length: hours }, (_, h) => means[Math.floor(h / 24)]!)
  return runningMeanOutdoor_C({ ...frame, hours, start_utcMs, airTemp_C }, 'sevenDay')[hours - 1]!
}

export const comfortChecks: readonly Check[] = [
  ...(
    [
      ['ashrae55', 'ashrae55', 10, 20.9],
      ['ashrae55', 'ashrae55', 20, 24],
      ['ashrae55', 'ashrae55', 30, 27.1],
      ['en16798', 'en16798', 10, 22.1],
      ['en16798', 'en16798', 20, 25.4],
      ['en16798', 'en16798', 30, 28.7],
    ] as const
  ).map(([standard, source, mean, want]) =>
    comfort({
      quantity: `comfort temperature at a running mean of ${mean} °C, ${standard === 'ashrae55' ? 'ASHRAE 55' : 'EN 16798-1'}`,
      unit: '°C',
      kind: 'published' as const,
      source,
      where: standard === 'ashrae55' ? '0.31 t + 17.8' : '0.33 t + 18.8',
      got: () => adaptiveComfort_C(standard, mean),
      want,
      within: 0.005,
      because: 'the equation of the standard',
    }),
  ),
  comfort({
    quantity: 'ASHRAE 55, half width of the 80 % band',
    unit: 'K',
    kind: 'published',
    source: 'ashrae55',
    got: () => ASHRAE_WIDTHS.content80_K,
    want: 3.5,
    within: 1e-9,
    because: 'printed',
  }),
  comfort({
    quantity: 'EN 16798-1 category II, upper limit at a running mean of 25 °C',
    unit: '°C',
    kind: 'published',
    source: 'en16798',
    where: '0.33 t + 21.8',
    got: () => adaptiveComfort_C('en16798', 25) + EN_CATEGORIES.II.above_K,
    want: 30.05,
    within: 0.005,
    because: 'the equation of the standard',
  }),
  comfort({
    quantity: 'running mean of seven days (24, 22, 25, 27, 26, 23, 21 °C, yesterday first)',
    unit: '°C',
    kind: 'independent calculation',
    source: 'en16798',
    where: 'weights 1, 0.8, 0.6, 0.5, 0.4, 0.3, 0.2 over 3.8, worked out apart',
    got: sevenDays,
    want: 24.10526,
    within: 1e-4,
    because: 'seven digits',
  }),
]
