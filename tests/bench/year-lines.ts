import { reducePanelHours } from '#model/panel/reduce.ts'
import { panelSpecOf } from '#model/scenario/to-specs.ts'
import { planeIrradiance } from '#model/sun/plane.ts'
import { YearKernel } from '#model/year/kernel.ts'
import { simulateYear } from '#model/year/simulate.ts'
import { CoupledSystem } from '../stages/year/coupled-system.ts'
import { compileTwin } from './c-twin.ts'
import type { Made } from './made.ts'
import { cpu_s, median, timed_s } from './measure.ts'
import type { Row } from './table.ts'

const RUNS = 9
export const SEARCH = { lean: true, books: false }

/** A year as the search runs it, seconds of CPU in each of the runs. */
export function yearTimes_s({ inputs }: Made): number[] {
  return timed_s(() => simulateYear(inputs, SEARCH), RUNS, 15)
}

export function againstC(made: Made, folder: string): Row[] {
  const twin = compileTwin(folder)
  if (twin === null) {
    console.log('No gcc here: the year is not compared with C.')
    return []
  }
  const { seconds, room_C } = twin(made.inputs, RUNS)
  const ours = simulateYear(made.inputs, SEARCH).room_C
  const apart_K = ours.reduce((worst, value, h) => Math.max(worst, Math.abs(value - room_C[h]!)), 0)
  if (!(apart_K < 1e-6)) throw new Error(`the C twin is ${apart_K} K off: it is not the same kernel any more`)
  const times_s = yearTimes_s(made)
  return [
    { name: 'year, C -O3', reach: '', unit: 'ms', values: seconds.map((s) => s * 1e3), met: null },
    { name: 'year, ours', reach: '', unit: 'ms', values: times_s.map((s) => s * 1e3), met: null },
    {
      name: 'year against C',
      reach: '≤ 1.5',
      unit: '×',
      values: times_s.map((s) => s / median(seconds)),
      met: (ratio) => ratio <= 1.5,
      found:
        'the same arithmetic in the same order. No numbers are boxed any more; V8 loads each field through a pointer and checks each index where C keeps both in registers (tests/bench/README.md).',
    },
  ]
}

/** Two summer days by the adaptive solver, against ours over the same hours; the solver's tolerance holds 0.05 K. */
export function againstOdex({ inputs, prepared }: Made): Row {
  const hours = 48
  const first = prepared.yardstick.hotDayStarts_h[0]!
  const kernel = new YearKernel(inputs, 900, false)
  kernel.temp_C.fill(25)
  kernel.plate_C = 25
  const exact = new CoupledSystem(inputs, kernel.temp_C, kernel.plate_C)
  const values: number[] = []
  const ours_s =
    median(timed_s(() => simulateYear(inputs, SEARCH), RUNS)) * (hours / (inputs.room.hours + 504))
  for (let run = 0; run < RUNS; run++) {
    const start = cpu_s()
    for (let h = first; h < first + hours; h++)
      for (let k = 0; k < 4; k++) {
        kernel.step(h)
        exact.step(h, 900, kernel.controls)
      }
    values.push((cpu_s() - start - ours_s) / ours_s)
  }
  return {
    name: 'year against odex, same equations',
    reach: '≥ 200',
    unit: '×',
    values,
    met: (x) => x >= 200,
  }
}

export function reduction(made: Made): Row {
  const { weather, sun, sky } = made.prepared
  const spec = panelSpecOf(made.scenario)
  const { tilt_deg, azimuth_deg, groundAlbedo_frac, horizon_deg } = spec
  const plane = planeIrradiance(sun, weather, tilt_deg, azimuth_deg, groundAlbedo_frac, horizon_deg)
  const times_s = timed_s(() => reducePanelHours(weather, plane, sky, spec), RUNS, 5)
  const year_s = median(yearTimes_s(made))
  return {
    name: 'reducing a year to panel hours, in years',
    reach: '≤ 5',
    unit: '×',
    values: times_s.map((s) => s / year_s),
    met: (x) => x <= 5,
  }
}
