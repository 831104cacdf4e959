import { describe, expect, it } from 'vitest'
import { contourLines } from '#model/basis/numbers'
import {
  candidateAt,
  designMap,
  reached,
  type DesignMap,
  type MapTask,
  mapAxes,
  placeOn,
  type Candidate,
} from '#model/design/sizing'
import { valueOn } from '#inside/model/design/sizing/map-axes.ts'

/** A made plant: the peak falls with area and with tank, the measure is how far it is above 26 °C. */
function madeTask(seen: Candidate[]): MapTask {
  return {
    flow_kgsm2: () => 0.01,
    storeVolume_m3: 0.9,
    electric_J: ({ area_m2 }) => area_m2,
    judgedAt: (candidate) => {
      seen.push(candidate)
      const peak_C = 34 - 0.4 * candidate.area_m2 - 2 * Math.log2(1 + candidate.storeVolume_m3)
      const hours_h = Math.max(0, peak_C - 26) * 50
      return {
        peak_C,
        hours_h,
        degreeHours_Kh: 0,
        hotDays: 36,
        hotDaysHeld: 0,
        measure: peak_C - 26,
      }
    },
  }
}

/** Room for so much area, and any store or flow. */
const room = (most_m2: number) => ({ most_m2, least: 0, most: 1000 })

function whole(task: MapTask, axes = mapAxes('store', 11.2, 0.9, room(60))) {
  const running = designMap(task, axes)
  const levels: { share: number; map: DesignMap }[] = []
  for (;;) {
    const step = running.next()
    if (step.done) return { map: step.value, levels }
    if (step.value.map) levels.push({ share: step.value.share, map: step.value.map })
  }
}

describe('axes of the design map', () => {
  it('run to about twice the area in equal pleasant steps, and from a quarter to four times the store', () => {
    const { area_m2, other } = mapAxes('store', 11.2, 0.9, room(60))
    expect(area_m2).toHaveLength(17)
    expect(area_m2[0]).toBe(1.5)
    expect(area_m2.at(-1)).toBe(25.5)
    expect(other[0]).toBe(0.225)
    expect(other[4]).toBe(0.9)
    expect(other.at(-1)).toBe(3.6)
  })
  it('end at the largest area there is room for', () => {
    expect(mapAxes('store', 60, 4, room(60)).area_m2.at(-1)).toBe(60)
    expect(mapAxes('flow', 3, 0.01, room(2.5)).area_m2.at(-1)).toBe(2.5)
    for (const most of [0.5, 1, 7.3, 60, 999])
      for (const area of [0.06, 0.7, 5, 59])
        for (const [i, mark] of mapAxes('store', area, 1, room(most)).area_m2.entries()) {
          expect(mark).toBeLessThanOrEqual(most)
          if (i > 0) expect(mark).toBeGreaterThan(mapAxes('store', area, 1, room(most)).area_m2[i - 1]!)
        }
  })
  it('stay within what a field accepts', () => {
    const { other } = mapAxes('flow', 10, 0.04, { most_m2: 60, least: 0.0005, most: 0.1 })
    expect(other.at(-1)).toBe(0.08)
    expect(other[0]).toBe(0.01)
  })
  it('find the place of a value and the value of a place, in proportion or in ratios', () => {
    const axis = [1, 2, 4, 8]
    expect(placeOn(axis, Math.SQRT2 * 2, true)).toBeCloseTo(1.5, 12)
    expect(placeOn(axis, 3, false)).toBe(1.5)
    expect(placeOn(axis, 9, false)).toBeNaN()
    expect(placeOn(axis, 8, true)).toBe(3)
    for (const place of [0, 0.25, 1.75, 3])
      expect(placeOn(axis, valueOn(axis, place, true), true)).toBeCloseTo(place, 12)
    expect(valueOn(axis, 99, false)).toBe(8)
  })
  it('refuse a map around nothing', () => {
    expect(() => mapAxes('store', 0, 1, room(60))).toThrow(RangeError)
    expect(() => mapAxes('store', 10, 0, room(60))).toThrow(RangeError)
  })
})

describe('design map', () => {
  it('fills coarse to fine, each level whole before the next, every crossing simulated once', () => {
    const seen: Candidate[] = []
    const { map, levels } = whole(madeTask(seen))
    expect(levels.map(({ map: { stride } }) => stride)).toEqual([4, 2, 1])
    expect(levels.map(({ map: { simulated } }) => simulated)).toEqual([5 * 3, 9 * 5, 17 * 9])
    expect(levels.at(-1)!.share).toBe(1)
    expect(seen).toHaveLength(17 * 9)
    expect(new Set(seen.map((c) => `${c.area_m2} ${c.storeVolume_m3}`)).size).toBe(17 * 9)
    expect(map.measure.some(Number.isNaN)).toBe(false)
  })
  it('always reaches the last mark, whatever the stride', () => {
    for (let length = 2; length < 20; length++)
      for (const stride of [4, 2, 1]) {
        expect(reached(length, stride)[0]).toBe(0)
        expect(reached(length, stride).at(-1)).toBe(length - 1)
        expect(new Set(reached(length, stride)).size).toBe(reached(length, stride).length)
      }
  })
  it('the contour of the target lies where the made plant meets it (exact but for straight pieces between marks: 0.02 K)', () => {
    const { map } = whole(madeTask([]))
    const { area_m2, other } = map.axes
    const lines = contourLines({ columns: 17, rows: 9, values: map.measure }, 0)
    expect(lines).toHaveLength(1)
    for (const [x, y] of lines[0]!) {
      const peak_C = 34 - 0.4 * valueOn(area_m2, x, false) - 2 * Math.log2(1 + valueOn(other, y, true))
      expect(Math.abs(peak_C - 26)).toBeLessThan(0.02)
    }
  })
  it('varies the flow at a held tank, or the tank at each area’s own flow', () => {
    const held = { flow_kgsm2: (area_m2: number) => 0.08 / area_m2, storeVolume_m3: 0.9 }
    expect(candidateAt(held, mapAxes('flow', 10, 0.01, room(60)), 8, 0.02)).toEqual({
      area_m2: 8,
      storeVolume_m3: 0.9,
      flow_kgsm2: 0.02,
    })
    expect(candidateAt(held, mapAxes('store', 10, 0.9, room(60)), 8, 0.5)).toEqual({
      area_m2: 8,
      storeVolume_m3: 0.5,
      flow_kgsm2: 0.01,
    })
  })
  describe('of more crossings than are simulated each', () => {
    const many = {
      kind: 'store' as const,
      area_m2: Array.from({ length: 40 }, (_, i) => 0.6 * (i + 1)),
      other: Array.from({ length: 40 }, (_, i) => 0.2 * 1.08 ** i),
    }
    const truth = whole({ ...madeTask([]), electric_J: null }, { ...many, other: many.other.slice(0, 5) })
    const seen: Candidate[] = []
    const { map, levels } = whole(madeTask(seen), many)
    const at = (i: number) => ({ area_m2: many.area_m2[i % 40]!, other: many.other[Math.floor(i / 40)]! })
    const peak_C = (i: number): number => 34 - 0.4 * at(i).area_m2 - 2 * Math.log2(1 + at(i).other)

    it('few are simulated, none twice, and it says which and how far the reading was off there', () => {
      expect(seen).toHaveLength(map.simulated)
      expect(new Set(seen.map((c) => `${c.area_m2} ${c.storeVolume_m3}`)).size).toBe(map.simulated)
      expect(map.simulated).toBeLessThan(200)
      expect(map.known.reduce((sum, one) => sum + one, 0)).toBe(map.simulated)
      expect(map.miss!.looks).toBeGreaterThan(8)
      for (let i = 0; i < 1600; i++) if (map.known[i] === 1) expect(map.peak_C[i]).toBeCloseTo(peak_C(i), 12)
    })
    it('the target is met where it truly is, and the contour runs between simulated crossings only', () => {
      for (let i = 0; i < 1600; i++) {
        expect(map.measure[i]! <= 0).toBe(peak_C(i) <= 26)
        for (const next of [i % 40 < 39 ? i + 1 : i, i + 40 < 1600 ? i + 40 : i])
          if (map.measure[i]! > 0 !== map.measure[next]! > 0) expect(map.known[i]! & map.known[next]!).toBe(1)
      }
    })
    it('readings lie as near as it says, within a factor of two', () => {
      for (let i = 0; i < 1600; i++)
        expect(Math.abs(map.peak_C[i]! - peak_C(i))).toBeLessThanOrEqual(2 * map.miss!.peak_K + 1e-9)
    })
    it('the electricity is read within what it says, and shows from the first picture on', () => {
      expect(levels[0]!.map.electric_J.some(Number.isNaN)).toBe(false)
      expect(map.electricMiss_J).toBeGreaterThan(0)
      for (let i = 0; i < 1600; i++)
        expect(Math.abs(map.electric_J[i]! - at(i).area_m2)).toBeLessThanOrEqual(2 * map.electricMiss_J!)
    })
    it('a map small enough has every crossing simulated and nothing read', () => {
      expect(truth.map.miss).toBeNull()
      expect(truth.map.electricMiss_J).toBeNull()
      expect(truth.map.known.every((one) => one === 1)).toBe(true)
    })
    it('a peak that jumps between two areas is simulated everywhere rather than read too far off', () => {
      const jumpy: MapTask = {
        ...madeTask([]),
        judgedAt: ({ area_m2, storeVolume_m3 }) => {
          const wave_K = 3 * Math.sin(40 * area_m2) * Math.cos(50 * storeVolume_m3)
          return { ...madeTask([]).judgedAt({ area_m2, storeVolume_m3, flow_kgsm2: 1 }), peak_C: 30 + wave_K }
        },
      }
      const all = whole(jumpy, many)
      expect(all.map.simulated).toBe(1600)
      expect(all.map.miss).toBeNull()
    })
  })
  it('refuses an axis of one mark', () => {
    expect(() => whole(madeTask([]), { kind: 'store', area_m2: [1], other: [1, 2] })).toThrow(RangeError)
  })
})
