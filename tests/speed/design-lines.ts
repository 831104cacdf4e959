import { setFlagsFromString } from 'node:v8'
import { runInNewContext } from 'node:vm'
import { sizingOf, Stages } from '#studies/stages.ts'
import type { Scenario } from '#model/design/scenario'
import { taskOf, mapTaskOf } from '#model/design/assembly'
import { designMap as drawMap, type DesignMap } from '#model/design/sizing'
import { MOST_YEARS } from '#inside/model/design/sizing/map-electric.ts'
import { areaOnly } from '#inside/model/design/sizing/size.ts'
import type { WeatherRecord } from '#model/outdoors/weather'
import { simulateYear } from '#model/building/year'
import { sampleNames, sampleWeather } from '../../src/shell/samples.ts'
import type { Made } from './made.ts'
import { cpu_s, exponent, median, timed_s } from './measure.ts'
import type { Row } from './table.ts'
import { SEARCH, yearTimes_s } from './year-lines.ts'

const RUNS = 9
const MAP_RUNS = 3

export function sizing(made: Made): Row {
  const times_s = timed_s(() => sizingOf(made.prepared), RUNS)
  const year_s = median(yearTimes_s(made))
  return {
    name: 'full sizing (area, store, flow), in years',
    reach: '≤ 25',
    unit: '×',
    values: times_s.map((s) => s / year_s),
    met: (x) => x <= 25,
  }
}

/** Some draws, scaled to 256 in two workers: draws do not share work, so they share out evenly. */
export function uncertainty({ stages, scenario, record }: Made): Row {
  const answer = stages.answer(scenario, record)
  const draws = 256
  const each = 4
  const values = Array.from({ length: RUNS }, (_, run) => {
    const start = cpu_s()
    const shard = stages.drawnAreas_m2(scenario, record, answer.sizing, draws, run * each, (run + 1) * each)
    while (!shard.next().done);
    return ((cpu_s() - start) / each) * (draws / 2)
  })
  return {
    name: '256 sized draws in two workers (from 36)',
    reach: '≤ 2',
    unit: 's',
    values,
    met: (s) => s <= 2,
    found:
      'a draw changes the weather (hot spell), the panel and the room at once: a third of its time goes to its own sky and reduction, a third to its room and the year without panels, a third to two or three seasons.',
  }
}

/** Areas and stores of a map of 40 × 40 around the bench's design. */
const MAP_AXES = {
  kind: 'store',
  area_m2: Array.from({ length: 40 }, (_, i) => 0.25 * (i + 1)),
  other: Array.from({ length: 40 }, (_, i) => 0.3 * 16 ** (i / 39)),
} as const

/** A whole map of 40 × 40, with the electricity of its years, in one worker; and the runs it takes. */
export function designMap({ prepared }: Made): Row {
  const task = mapTaskOf(prepared, { storeVolume_m3: 1 })
  const drawn = (): DesignMap => {
    const drawing = drawMap(task, MAP_AXES)
    for (;;) {
      const next = drawing.next()
      if (next.done === true) return next.value
    }
  }
  const { simulated, miss } = drawn()
  const off = miss === null ? '' : `, elsewhere within ${miss.peak_K.toFixed(2)} K at ${miss.looks} looks`
  return {
    name: `design map 40 × 40 (${simulated} simulated${off})`,
    reach: '≤ 1',
    unit: 's',
    values: timed_s(drawn, MAP_RUNS, 0),
    met: (s) => s <= 1,
    found: `a fourth to a half of it is the ${MOST_YEARS} whole years of the electricity, the rest ${simulated} seasons; the contour is that of the full simulation. A season of half the time would reach it.`,
  }
}

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
    reach: '≤ 1.1',
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
    { name: 'weather of a year', reach: '≤ 2', unit: 'MB', values: [bytes / 1e6], met: (x) => x <= 2 },
    {
      name: `heap growth over ${answers} searches (years replaced)`,
      reach: '≤ 1',
      unit: 'MB',
      values: [used_MB() - before_MB],
      met: (x) => x <= 1,
    },
  ]
}
