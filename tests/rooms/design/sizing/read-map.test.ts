import { describe, expect, test } from 'vitest'
import { Stages } from '#studies/stages.ts'
import { mapTaskOf } from '#model/design/assembly'
import { defaultScenario, withField } from '#model/design/scenario'
import { candidateAt, designMap, type DesignMap } from '#model/design/sizing'
import { sampleWeather } from '../../../../src/shell/samples.ts'

const COLUMNS = 21
const ROWS = 10

/** Areas at which a row passes the target, by a line between two crossings, m². */
function edges(area_m2: readonly number[], measure: ArrayLike<number>, row: number): number[] {
  return area_m2.slice(1).flatMap((more_m2, i) => {
    const [a, b] = [measure[row * COLUMNS + i]!, measure[row * COLUMNS + i + 1]!]
    if (a > 0 === b > 0) return []
    return [area_m2[i]! + (a / (a - b)) * (more_m2 - area_m2[i]!)]
  })
}

describe('a map read between simulated crossings, against every crossing simulated', () => {
  const cases = [['high-dry-plateau', '27', 'degreeHours', 2, 0.3]] as const
  test.each(cases)('%s, %s °C, %s', (climate, limit_C, kind, most_m2, store_m3) => {
    const fields = { 'target.limit_C': limit_C, 'cover.kind': 'bare', 'target.kind': kind }
    const scenario = Object.entries(fields).reduce((s, [at, to]) => withField(s, at, to), defaultScenario())
    const prepared = new Stages().prepare(scenario, sampleWeather(climate))
    const task = { ...mapTaskOf(prepared, { storeVolume_m3: store_m3 }), electric_J: null }
    const axes = {
      kind: 'store' as const,
      area_m2: Array.from({ length: COLUMNS }, (_, i) => (most_m2 / COLUMNS) * (i + 1)),
      other: Array.from({ length: ROWS }, (_, i) => store_m3 * 0.3 * 1.3 ** i),
    }
    const drawing = designMap(task, axes)
    let map: DesignMap | null = null
    while (map === null) {
      const next = drawing.next()
      if (next.done === true) map = next.value
    }
    const truth = axes.other.flatMap((other) =>
      axes.area_m2.map((area_m2) => task.judgedAt(candidateAt(task, axes, area_m2, other))),
    )
    const measure = truth.map((one) => one.measure)
    expect(map.simulated).toBeLessThan(0.7 * COLUMNS * ROWS)
    expect(map.miss!.looks).toBeGreaterThan(8)
    for (let row = 0; row < ROWS; row++) {
      const wanted = edges(axes.area_m2, measure, row)
      const found = edges(axes.area_m2, map.measure, row)
      expect(found).toHaveLength(wanted.length)
      found.forEach((area_m2, i) => expect(Math.abs(area_m2 / wanted[i]! - 1)).toBeLessThan(0.005))
    }
    const worst_K = Math.max(...truth.map(({ peak_C }, i) => Math.abs(peak_C - map.peak_C[i]!)))
    expect(worst_K).toBeLessThan(0.2)
  })
})
