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

/** Every stage from the weather to the year of the room without panels, in each climate, nothing remembered. */
function roomsLeftAlone(scenario: Scenario, records: readonly WeatherRecord[]): void {
  for (const record of records) new Stages().prepare(scenario, record)
}

/** Growth of the time with hours, designs and climates: the fitted exponents, and their errors in the name. */
export function growth({ inputs, prepared, scenario }: Made): Row[] {
  const spans_h = [1000, 2000, 4000, 8000]
  const hours = Array.from({ length: RUNS }, () =>
    exponent(
      spans_h,
      spans_h.map(
        (end) => timed_s(() => simulateYear(inputs, { ...SEARCH, span: [0, end], warmUp_h: 0 }), 1, 0)[0]!,
      ),
    ),
  )
  const counts = [2, 4, 8, 16]
  const task = taskOf(prepared)
  const designs = Array.from({ length: RUNS }, () =>
    exponent(
      counts,
      counts.map(
        (count) =>
          timed_s(
            () => {
              for (let i = 0; i < count; i++)
                task.room_C({ area_m2: 8 + 0.1 * i, storeVolume_m3: 1, flow_kgsm2: 0.01 })
            },
            1,
            0,
          )[0]!,
      ),
    ),
  )
  const records = sampleNames()
    .slice(0, 8)
    .map((name) => sampleWeather(name))
  // Climates differ in what they cost: each run begins with another one. The first time is the compiler's.
  roomsLeftAlone(scenario, records)
  const climates = Array.from({ length: RUNS }, (_, run) => {
    const turned = [...records.slice(run % 8), ...records.slice(0, run % 8)]
    return exponent(
      [1, 2, 4, 8],
      [1, 2, 4, 8].map((count) => timed_s(() => roomsLeftAlone(scenario, turned.slice(0, count)), 1, 0)[0]!),
    )
  })
  const row = (name: string, fits: typeof hours): Row => ({
    name: `${name} (each fit ± ${median(fits.map(({ error }) => error)).toFixed(2)})`,
    goal: '≤ 1.1',
    unit: '',
    values: fits.map(({ b }) => b),
    met: (b) => b <= 1.1,
  })
  return [
    row('growth with hours, exponent', hours),
    row('growth with designs, exponent', designs),
    row('growth with climates, exponent', climates),
  ]
}

/** Heap after so many answers over what it was after the first tenth of them, MB; and the weather's own size. */
export function memory({ prepared, record }: Made): Row[] {
  setFlagsFromString('--expose-gc')
  const collect = runInNewContext('gc') as () => void
  const task = taskOf(prepared)
  const answers = 10_000
  const used_MB = (): number => {
    collect()
    return process.memoryUsage().heapUsed / 1e6 + process.memoryUsage().arrayBuffers / 1e6
  }
  let before_MB = 0
  for (let i = 0; i < answers; i++) {
    if (i === answers / 10) before_MB = used_MB()
    const short = { ...task, room_C: () => task.doNothing_C, season: null }
    areaOnly(short, { ratio_m3m2: 0.08, guess_m2: 1 + (i % 50), slope: null })
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
    },
  ]
}
