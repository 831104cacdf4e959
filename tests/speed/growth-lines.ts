import { setFlagsFromString } from 'node:v8'
import { runInNewContext } from 'node:vm'
import { Stages } from '#studies/stages.ts'
import type { Scenario } from '#model/design/scenario'
import { taskOf } from '#model/design/assembly'
import { areaOnly } from '#inside/model/design/sizing/size.ts'
import type { WeatherRecord } from '#model/outdoors/weather'
import { simulateYear } from '#model/building/year'
import { sampleNames, sampleWeather } from '../../src/shell/samples.ts'
import type { Made } from './made.ts'
import { exponent, median, timed_s } from './measure.ts'
import type { Row } from './table.ts'
import { SEARCH } from './year-lines.ts'

const RUNS = 9
/** Rounds over the climates; each takes every one of them so many times in each count. */
const ROUNDS = 3
const CLIMATES = 8

/** Every stage from the weather to the year of the room without panels, in each climate, nothing remembered. */
function roomsLeftAlone(scenario: Scenario, records: readonly WeatherRecord[]): void {
  for (const record of records) new Stages().prepare(scenario, record)
}

/**
 * Growth of the time with hours, designs and climates: the fitted exponents, and their errors in the name. What grows is more of
 * the same: whole years one after another, since an hour of pumping costs more than one at rest; each climate as often in every
 * count, since one costs more than another.
 */
export function growth({ inputs, prepared, scenario }: Made): Row[] {
  const years = [1, 2, 4]
  const run = (span: readonly [number, number]): unknown =>
    simulateYear(inputs, { ...SEARCH, span, warmUp_h: 0 })
  const ofYears = (count: number): (() => unknown) => {
    return () => run([0, count * inputs.room.hours])
  }
  for (let i = 0; i < 3; i++) ofYears(1)()
  const hours = Array.from({ length: RUNS }, () =>
    exponent(
      years,
      years.map((count) => timed_s(ofYears(count), 1, 0)[0]!),
    ),
  )
  const counts = [2, 4, 8, 16]
  const task = taskOf(prepared)
  const designs = (count: number): (() => void) => {
    return () => {
      for (let i = 0; i < count; i++)
        task.room_C({ area_m2: 8 + 0.1 * i, storeVolume_m3: 1, flow_kgsm2: 0.01 })
    }
  }
  const ofDesigns = Array.from({ length: RUNS }, () =>
    exponent(
      counts,
      counts.map((count) => timed_s(designs(count), 1, 0)[0]!),
    ),
  )
  const records = sampleNames()
    .slice(0, CLIMATES)
    .map((name) => sampleWeather(name))
  // The first time is the compiler's.
  roomsLeftAlone(scenario, records)
  const ofSome = (count: number): number =>
    records
      .map((_, first) => Array.from({ length: count }, (_, i) => records[(first + i) % CLIMATES]!))
      .reduce((sum, some) => sum + timed_s(() => roomsLeftAlone(scenario, some), 1, 0)[0]!, 0)
  const climates = Array.from({ length: ROUNDS }, () => exponent([1, 2, 4, 8], [1, 2, 4, 8].map(ofSome)))
  const row = (name: string, fits: typeof hours, work: () => unknown): Row => ({
    name: `${name} (each fit ± ${median(fits.map(({ error }) => error)).toFixed(2)})`,
    goal: '≤ 1.1',
    unit: '',
    values: fits.map(({ b }) => b),
    met: (b) => b <= 1.1,
    why: 'More of the same should cost no more a piece: what is beyond that is the memory that the larger one fills.',
    work,
  })
  return [
    row('growth with hours, exponent', hours, ofYears(4)),
    row('growth with designs, exponent', ofDesigns, designs(16)),
    row('growth with climates, exponent', climates, () => roomsLeftAlone(scenario, records)),
  ]
}

/** Heap after so many answers over what it was after the first tenth of them, MB; and the weather's own size. */
export function memory({ prepared, record }: Made): Row[] {
  setFlagsFromString('--expose-gc')
  const collect = runInNewContext('gc') as () => void
  const task = taskOf(prepared)
  const answers = 10_000
  const used_MB = (): number => {
    // The buffers of what the first collection finds are given back by the second.
    collect()
    collect()
    return process.memoryUsage().heapUsed / 1e6 + process.memoryUsage().arrayBuffers / 1e6
  }
  const short = { ...task, room_C: () => task.doNothing_C, season: null }
  const search = (i: number): unknown =>
    areaOnly(short, { ratio_m3m2: 0.08, guess_m2: 1 + (i % 50), slope: null })
  let before_MB = 0
  for (let i = 0; i < answers; i++) {
    if (i === answers / 10) before_MB = used_MB()
    search(i)
  }
  const bytes = Object.values(record).reduce(
    (sum, part) => sum + (part instanceof Float64Array ? part.byteLength : 0),
    0,
  )
  return [
    { name: 'weather of a year', goal: '≤ 2', unit: 'MB', values: [bytes / 1e6], met: (x) => x <= 2 },
    {
      name: `heap growth over ${answers} searches (years replaced)`,
      goal: '≤ 1',
      unit: 'MB',
      values: [used_MB() - before_MB],
      met: (x) => x <= 1,
      why: 'Something is kept of each search.',
      work: () => search(0),
    },
  ]
}
