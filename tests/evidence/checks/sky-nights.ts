import { once, type Check } from '../check.ts'
import { SHIPPED } from '../sky/choice.ts'
import { nightMeans } from '../sky/nights.ts'
import { skySites } from '../sky/sites.ts'
import type { SourceKey } from '../sources.ts'

/** Months with at least five nights of measured longwave and a day that gives cloud on either side. */
const MONTHS: readonly (readonly [
  place: string,
  file: string,
  source: SourceKey,
  months: readonly string[],
])[] = [
  ['tropical-sea', 'sky-14.3--53.5-tropical-sea', 'coareShip', ['2020-01']],
  [
    'humid-summer-hills',
    'sky-37.30--79.84-humid-summer-hills',
    'fallingCreek',
    ['2018-09', '2018-10', '2018-11', '2019-01', '2019-02', '2019-04', '2019-05', '2019-06', '2019-09'],
  ],
  [
    'mediterranean',
    'sky-43.74-3.60-mediterranean',
    'puechabon',
    Array.from({ length: 12 }, (_, month) => `2014-${String(month + 1).padStart(2, '0')}`),
  ],
  [
    'alpine-winter',
    'sky-47.05-8.72-alpine-winter',
    'alpine',
    ['2004-10', '2004-11', '2004-12', '2005-01', '2005-02', '2005-03', '2005-04', '2005-05'],
  ],
  ['cool-forest-june', 'sky-50.96-13.57-cool-forest-june', 'tharandt', ['2014-06']],
]

/** Mean of model less measured of a place's nights, by month, W/m². */
const errors = once(() => {
  const found = new Map<string, number[]>()
  for (const site of skySites())
    for (const { hour, modelled_Wm2, measured_Wm2 } of nightMeans(
      site,
      SHIPPED.rule,
      SHIPPED.clearHours,
      SHIPPED.formula,
    )) {
      const month = new Date(site.start_utcMs + hour * 3_600_000).toISOString().slice(0, 7)
      const key = `${site.name} ${month}`
      found.set(key, [...(found.get(key) ?? []), modelled_Wm2 - measured_Wm2])
    }
  return found
})

const MISSES: Readonly<Record<string, string>> = {
  'humid-summer-hills 2019-02':
    'seven nights; the temperature filter was replaced in this month, and cloud is drawn from days of short sun',
  'mediterranean 2014-03': 'cloud of the day holds on over nights that cleared',
  'alpine-winter 2005-02':
    'overcast over snow and fog, which stay in the valley when the day is bright; terrain and forest raise the measured longwave',
}

export const skyNightChecks: readonly Check[] = MONTHS.flatMap(([place, file, source, months]) =>
  months.map((month): Check => {
    const key = `${place} ${month}`
    const miss = MISSES[key]
    return {
      theme: 'Sky',
      quantity: `nightly mean longwave, ${place}, ${month}: model less measured, mean of the nights`,
      unit: 'W/m²',
      kind: 'measured',
      source,
      got: () => {
        const nights = errors().get(key) ?? []
        return nights.reduce((sum, error) => sum + error, 0) / nights.length
      },
      want: 0,
      within: 10,
      because:
        '10 W/m²: day means of over 300 sites have an RMSE of 13.6 clear and 14.1 cloudy (Remote Sensing 2024, 16, 3422), a month of nights must lie closer',
      choice:
        'rule of the night, clear hours and formula were chosen over these five places; what the other four choose lies within 5 W/m² at each (npm run -s evidence -- sky)',
      needs: `sky/${file}.csv`,
      ...(miss === undefined ? {} : { miss }),
    }
  }),
)
