import { describe, expect, test } from 'vitest'
import { gaussian, seededRandom } from '#model/basis/numbers'
import { ProblemError } from '#model/basis/words'
import { DEMO_SERIES, enough, nextSample, response, responseAt, withAmount } from '#model/panels/notebook'

const NINETY = 1.645

/** Samples of a known curve, read with an error of 0.01 and boards that differ by 0.004. */
function drawn(xs: readonly number[], curve: (u: number) => number, normal: () => number) {
  return xs.map((x) => {
    const value = curve(x) + 0.01 * normal() + 0.004 * normal()
    return { x, y: { value, low: value - 0.01 * NINETY, high: value + 0.01 * NINETY } }
  })
}

describe('a response curve', () => {
  test('1000 series of six samples: the 90 % band holds the truth in 87 to 93 %', () => {
    const random = seededRandom(5)
    const normal = () => gaussian(random)
    let [held, of] = [0, 0]
    for (let trial = 0; trial < 1000; trial++) {
      const [a, b, c] = [0.9 + 0.02 * normal(), 0.1 * normal(), 0.1 * normal()]
      const truth = (x: number) => a + b * x + c * x * x
      const found = response(drawn([-0.8, -0.5, -0.1, 0.2, 0.6, 0.8], truth, normal), -1, 1)
      for (const x of [-0.9, -0.3, 0.3, 0.9]) {
        const { low, high } = responseAt(found, x)
        of++
        if (low <= truth(x) && truth(x) <= high) held++
      }
    }
    console.log(`band of a response curve: ${((100 * held) / of).toFixed(1)} % of ${of}`)
    expect(held / of).toBeGreaterThanOrEqual(0.87)
    expect(held / of).toBeLessThanOrEqual(0.93)
  })

  test('without errors it is the curve', () => {
    const truth = (x: number) => 0.9 + 0.03 * x - 0.05 * x * x
    const exact = [-1, -0.5, 0, 0.5, 1].map((x) => ({
      x,
      y: { value: truth(x), low: truth(x) - 1e-4, high: truth(x) + 1e-4 },
    }))
    expect(Math.abs(responseAt(response(exact, -1, 1), 0.3).value - truth(0.3))).toBeLessThan(0.002)
  })

  test('three samples are not enough for a curve', () => {
    const points = drawn(
      [0, 1, 2],
      () => 0.9,
      () => 0,
    )
    expect(enough(points)).toBe(false)
    expect(enough([...points, points[0]!])).toBe(true)
    expect(() => response([], 0, 1)).toThrow(RangeError)
  })
})

describe('the next sample', () => {
  test('of the example is one amount inside its range, and says something', () => {
    const { key, x, information_bit } = nextSample(DEMO_SERIES.samples, 'solarReflectance')
    expect(key).toBe('solid:Ground calcium carbonate, fine')
    expect(x).toBeGreaterThanOrEqual(0)
    expect(information_bit).toBeGreaterThan(0.05)
  })

  /* Second implementation: the best amount is looked for by making the proposed sample, over and over, against the same
   * number of samples at random amounts. */
  test('proposals find the best amount nearer than random amounts', () => {
    const random = seededRandom(8)
    const normal = () => gaussian(random)
    const measure = (x: number) => {
      const value = 0.95 - 0.04 * (x - 3.4) ** 2 + 0.008 * normal()
      return { value, low: value - 0.013, high: value + 0.013 }
    }
    const sampleAt = (x: number, name: string) => ({
      ...withAmount(DEMO_SERIES.samples[0]!, 'solid:Ground calcium carbonate, fine', x),
      name,
      measured: { solarReflectance: measure(x) },
    })
    const missOf = (pick: (samples: ReturnType<typeof sampleAt>[]) => number) => {
      const samples = [sampleAt(1.6, 'a'), sampleAt(2.2, 'b'), sampleAt(2.8, 'c')]
      for (let i = 0; i < 4; i++) samples.push(sampleAt(pick(samples), `n${i}`))
      const points = samples.map((s) => ({ x: s.recipe.solids[0]!.parts_gg, y: s.measured.solarReflectance }))
      const curve = response(points, 0.5, 5)
      const xs = Array.from({ length: 91 }, (_, i) => 0.5 + i / 20)
      const best = xs.reduce((a, b) => (responseAt(curve, b).value > responseAt(curve, a).value ? b : a))
      return Math.abs(best - 3.4)
    }
    const mean = (pick: Parameters<typeof missOf>[0]) =>
      Array.from({ length: 12 }, () => missOf(pick)).reduce((sum, miss) => sum + miss, 0) / 12
    const proposed = mean((samples) => nextSample(samples, 'solarReflectance').x)
    const atRandom = mean(() => 1.6 + 1.2 * random())
    console.log(`best amount missed by ${proposed.toFixed(2)} (proposed), ${atRandom.toFixed(2)} (random)`)
    expect(proposed).toBeLessThan(atRandom)
  })

  test('needs something that was varied', () => {
    expect(() => nextSample(DEMO_SERIES.samples.slice(0, 1), 'solarReflectance')).toThrow(ProblemError)
    expect(() => nextSample(DEMO_SERIES.samples, 'emittance')).toThrow(/changed|differs|Copy/)
    expect(() => nextSample([], 'emittance')).toThrow(ProblemError)
  })
})
