/* Readings made by the full panel model with the stated errors must be recovered within the
 * stated intervals. Coverage of 95 % intervals over 200 seeded trials, truths drawn from the stated priors: 90–99 %
 * (400 to 600 intervals of each kind: a perfect method gives 93–97 %). */
import { describe, expect, it } from 'vitest'
import { estimateCoatings, type Estimated } from '#model/panels/readings'
import { seededRandom } from '#model/basis/numbers'
import {
  AFTERNOON,
  BREEZY_NIGHT,
  CALM_NIGHT,
  fieldNotes,
  NOON,
  normals,
  REFERENCE,
  SHADE,
  unknown,
  type MomentPlan,
  type Optics,
} from './field-notes.ts'

const TRIALS = 200
const SAMPLES = [unknown('Pot A'), unknown('Pot B'), REFERENCE]
const FIVE = [NOON, AFTERNOON, CALM_NIGHT, BREEZY_NIGHT, SHADE]

/** A normal number held inside physical limits by drawing again. */
function inside(normal: () => number, mean: number, sd: number, low: number, high: number): number {
  for (;;) {
    const value = mean + sd * normal()
    if (value >= low && value <= high) return value
  }
}

function drawTruths(normal: () => number): Optics[] {
  const unknownOptics = () => ({
    solarReflectance_frac: inside(normal, 0.8, 0.2, 0.2, 1),
    emittance_frac: inside(normal, 0.88, 0.12, 0.4, 1),
  })
  const reference = {
    solarReflectance_frac: inside(normal, 0.8, 0.02, 0, 1),
    emittance_frac: inside(normal, 0.9, 0.02, 0, 1),
  }
  return [unknownOptics(), unknownOptics(), reference]
}

function coverage(plans: readonly MomentPlan[], seed: number) {
  const normal = normals(seededRandom(seed))
  const hits = { reflectance: 0, emittance: 0, pair: 0 }
  const holds = (e: Estimated, truth: number) => (truth >= e.low && truth <= e.high ? 1 : 0)
  let reflectanceWidth = 0
  let pairWidth = 0
  for (let trial = 0; trial < TRIALS; trial++) {
    const truths = drawTruths(normal)
    const estimate = estimateCoatings(fieldNotes(plans, SAMPLES, truths, normal))
    for (const i of [0, 1]) {
      const { solarReflectance, emittance } = estimate.samples[i]!
      hits.reflectance += holds(solarReflectance, truths[i]!.solarReflectance_frac)
      hits.emittance += holds(emittance, truths[i]!.emittance_frac)
      reflectanceWidth += solarReflectance.high - solarReflectance.low
    }
    const order = [
      [0, 1],
      [0, 2],
      [1, 2],
    ] as const
    order.forEach(([a, b], k) => {
      const pair = estimate.pairs[k]!.solarReflectance
      hits.pair += holds(pair, truths[a]!.solarReflectance_frac - truths[b]!.solarReflectance_frac)
    })
    const pair = estimate.pairs[0]!.solarReflectance
    pairWidth += pair.high - pair.low
  }
  return {
    reflectance: hits.reflectance / (2 * TRIALS),
    emittance: hits.emittance / (2 * TRIALS),
    pair: hits.pair / (3 * TRIALS),
    reflectanceWidth: reflectanceWidth / (2 * TRIALS),
    pairWidth: pairWidth / TRIALS,
  }
}

describe('recovery of coatings from synthetic field notes', () => {
  it.each([
    { what: 'sun, shade and night, bare, wind by feel', plans: FIVE, seed: 11 },
    {
      what: 'the same with a wind meter',
      plans: FIVE.map((plan): MomentPlan => ({ ...plan, wind: 'metered' })),
      seed: 12,
    },
    {
      what: 'with readings under a film',
      plans: [...FIVE, { ...NOON, cover: 'film' }, { ...CALM_NIGHT, cover: 'film' }] as MomentPlan[],
      seed: 13,
    },
  ])('95 % intervals hold 90–99 %: $what', { timeout: 600_000 }, ({ what, plans, seed }) => {
    const found = coverage(plans, seed)
    console.log(`coverage, ${what}:`, found)
    for (const kind of ['reflectance', 'emittance', 'pair'] as const) {
      expect(found[kind], kind).toBeGreaterThanOrEqual(0.9)
      expect(found[kind], kind).toBeLessThanOrEqual(0.99)
    }
  })

  it('noise-free readings give back the optics (limit; 0.01 and 0.02, what weak priors may pull)', () => {
    const truths = [
      { solarReflectance_frac: 0.93, emittance_frac: 0.92 },
      { solarReflectance_frac: 0.85, emittance_frac: 0.88 },
      { solarReflectance_frac: 0.8, emittance_frac: 0.9 },
    ]
    const estimate = estimateCoatings(fieldNotes(FIVE, SAMPLES, truths, () => 0))
    truths.forEach((truth, i) => {
      const sample = estimate.samples[i]!
      expect(Math.abs(sample.solarReflectance.value - truth.solarReflectance_frac)).toBeLessThan(0.01)
      expect(Math.abs(sample.emittance.value - truth.emittance_frac)).toBeLessThan(0.02)
    })
    expect(Math.max(...estimate.residuals.map((r) => Math.abs(r.shown_C - r.predicted_C)))).toBeLessThan(0.3)
  })
})
