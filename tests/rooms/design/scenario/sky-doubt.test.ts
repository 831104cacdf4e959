import { describe, expect, test } from 'vitest'
import { defaultScenario } from '#model/design/scenario'
import { SKY_DOUBT, skyClimate, skyDoubtTimes } from '#inside/model/design/scenario/sky-doubt.ts'
import { uncertainInputs } from '#inside/model/design/scenario/uncertain-inputs.ts'

/** A year whose warmest month has this mean, the dew point so far below. */
const year = (warm_C: number, dry_K: number) => {
  const airTemp_C = Float64Array.from({ length: 8760 }, (_, h) => warm_C - 12 * Math.abs(h / 8760 - 0.5) * 2)
  return { airTemp_C, dewPoint_C: airTemp_C.map((air_C) => air_C - dry_K) }
}

describe('doubt of the sky by kind of climate', () => {
  test.each([
    ['cold', 10, 3],
    ['dry summer', 26, 12],
    ['humid', 26, 4],
  ] as const)('%s', (kind, warm_C, dry_K) => {
    expect(skyClimate(year(warm_C, dry_K))).toBe(kind)
    const [low, high] = skyDoubtTimes(year(warm_C, dry_K))
    // An even draw between two ends has their distance over √12 as its standard deviation.
    expect((high - low) / Math.sqrt(12)).toBeCloseTo(SKY_DOUBT[kind], 12)
    expect(0.5 * (low + high)).toBeCloseTo(1, 12)
  })
  test('is what a range draws from, within the field’s own ends; made years keep their own', () => {
    const sky = (weather: object) =>
      uncertainInputs(defaultScenario(), weather).find(({ field }) => field === 'sky.deficitFactor_frac')!
    expect(sky(year(26, 12)).low).toBeCloseTo(1 - Math.sqrt(3) * 0.16, 12)
    expect(sky(year(26, 4)).high).toBeCloseTo(1 + Math.sqrt(3) * 0.23, 12)
    expect(sky(year(10, 3)).high).toBe(1.4)
    expect(sky({ ...year(26, 12), madeFrom: {} }).low).toBeCloseTo(
      1 - Math.hypot(Math.sqrt(3) * 0.14, 0.15),
      12,
    )
  })
})
