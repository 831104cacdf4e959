import { mapTaskOf } from '#model/design/assembly'
import { candidateAt, designMap as drawMap, type DesignMap, type MapAxes } from '#model/design/sizing'
import { MOST_YEARS } from '#inside/model/design/sizing/map-electric.ts'
import type { Made } from './made.ts'
import { timed_s } from './measure.ts'
import type { Row } from './table.ts'

const RUNS = 3
const CROSSINGS = 40

/** Areas and stores of a map of 40 × 40 around the bench's design. */
const AXES: MapAxes = {
  kind: 'store',
  area_m2: Array.from({ length: CROSSINGS }, (_, i) => 0.25 * (i + 1)),
  other: Array.from({ length: CROSSINGS }, (_, i) => 0.3 * 16 ** (i / (CROSSINGS - 1))),
}

/** The area at which each row of a map passes the target, by a line between two crossings, m²; null where it does not. */
function contour_m2(measure: ArrayLike<number>): (number | null)[] {
  return AXES.other.map((_, row) => {
    for (let i = 0; i + 1 < CROSSINGS; i++) {
      const [a, b] = [measure[row * CROSSINGS + i]!, measure[row * CROSSINGS + i + 1]!]
      if (a > 0 && b <= 0) return AXES.area_m2[i]! + (a / (a - b)) * (AXES.area_m2[i + 1]! - AXES.area_m2[i]!)
    }
    return null
  })
}

/** A whole map of 40 × 40, with the electricity of its years, in one worker; and its contour and values against all 1600 simulated. */
export function designMap({ prepared }: Made): Row[] {
  const task = mapTaskOf(prepared, { storeVolume_m3: 1 })
  const drawn = (): DesignMap => {
    const drawing = drawMap(task, AXES)
    for (;;) {
      const next = drawing.next()
      if (next.done === true) return next.value
    }
  }
  const map = drawn()
  const truth = AXES.other.flatMap((other) =>
    AXES.area_m2.map((area_m2) => task.judgedAt(candidateAt(task, AXES, area_m2, other))),
  )
  const wanted_m2 = contour_m2(truth.map(({ measure }) => measure))
  const off = contour_m2(map.measure).map((area_m2, row) => {
    const wanted = wanted_m2[row]!
    if (area_m2 === null || wanted === null) return area_m2 === wanted ? 0 : 100
    return 100 * Math.abs(area_m2 / wanted - 1)
  })
  const worst_K = Math.max(...truth.map(({ peak_C }, i) => Math.abs(peak_C - map.peak_C[i]!)))
  const passing = wanted_m2.filter((area_m2) => area_m2 !== null).length
  return [
    {
      name: `design map 40 × 40 (${map.simulated} simulated)`,
      goal: '≤ 1',
      unit: 's',
      values: timed_s(drawn, RUNS, 0),
      met: (s) => s <= 1,
      why: `Its work is ${map.simulated} seasons and the ${MOST_YEARS} whole years of the electricity: a season of less time would reach it, or a second worker.`,
      work: drawn,
    },
    {
      name: `its contour against all 1600 simulated, worst of ${passing} rows that pass the target`,
      goal: '≤ 0.5',
      unit: '%',
      values: [Math.max(...off)],
      met: (x) => x <= 0.5,
      why: 'A crossing beside the contour was read and not simulated.',
      work: drawn,
    },
    {
      name: `hottest hour elsewhere against all 1600 (the map says ${map.miss?.peak_K.toFixed(2) ?? '0'})`,
      goal: '',
      unit: 'K',
      values: [worst_K],
      met: null,
    },
  ]
}
