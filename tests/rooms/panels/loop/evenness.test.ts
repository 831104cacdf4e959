import { describe, expect, it } from 'vitest'
import { flowSpread_frac, unevenHeatLoss_frac } from '#inside/model/panels/loop/evenness.ts'

const MANY = 1e12
const ROW = { passages: MANY, headerLoss_Pa: 0, headerMomentum_Pa: 0, passageLoss_Pa: 100, exponent: 1 }

describe('how unevenly a row shares its flow (exact limits of the manifold equations)', () => {
  it('friction alone bows: middle against ends is a quarter of both headers’ loss, so ± an eighth', () => {
    expect(flowSpread_frac({ ...ROW, headerLoss_Pa: 40 })).toBeCloseTo(40 / 8 / 100, 9)
  })
  it('momentum alone tilts: the far end has 3/2 ρv² more, so ± three quarters', () => {
    expect(flowSpread_frac({ ...ROW, headerMomentum_Pa: 10 })).toBeCloseTo((0.75 * 10) / 100, 9)
  })
  it('turbulent passages even out by their exponent, one passage has nobody to share with', () => {
    expect(flowSpread_frac({ ...ROW, headerLoss_Pa: 40, exponent: 1.75 })).toBeCloseTo(0.05 / 1.75, 9)
    expect(flowSpread_frac({ ...ROW, headerLoss_Pa: 40, passages: 1 })).toBe(0)
  })
  it('against the row solved passage by passage: within a tenth at ± 8 % (independent calculation)', () => {
    const row = { passages: 24, headerLoss_Pa: 12, headerMomentum_Pa: 12, passageLoss_Pa: 100, exponent: 1 }
    expect(Math.abs(flowSpread_frac(row) / solvedSpread(row) - 1)).toBeLessThan(0.1)
  })
})

describe('heat lost to uneven flow', () => {
  it('agrees with the mean of heat over flows spread evenly over ± 20 %, within 3 % of the loss', () => {
    const transferUnits = 0.5
    const heat = (flow: number): number => flow * -Math.expm1(-transferUnits / flow)
    let sum = 0
    const places = 2000
    for (let i = 0; i < places; i++) sum += heat(1 + 0.2 * ((2 * (i + 0.5)) / places - 1))
    const lost = 1 - sum / places / heat(1)
    expect(Math.abs(unevenHeatLoss_frac(0.2, transferUnits) / lost - 1)).toBeLessThan(0.03)
  })
})

/** Passage flows by repeated substitution: laminar headers and passages, flow given up passage by passage. */
function solvedSpread(row: Parameters<typeof flowSpread_frac>[0]): number {
  const { passages: n, headerLoss_Pa, headerMomentum_Pa, passageLoss_Pa } = row
  const full_Pa = headerLoss_Pa / n
  let flow = new Array<number>(n).fill(1 / n)
  for (let round = 0; round < 400; round++) {
    const across: number[] = []
    let feeding = 1 - flow[0]!
    let drained = flow[0]!
    let friction = 0
    for (let i = 0; i < n; i++) {
      const momentum = headerMomentum_Pa * (0.5 * (1 - feeding ** 2) + drained ** 2)
      across.push(momentum - friction)
      if (i === n - 1) break
      friction += full_Pa * (feeding - drained)
      feeding -= flow[i + 1]!
      drained += flow[i + 1]!
    }
    const mean = across.reduce((sum, x) => sum + x, 0) / n
    const next = across.map((x) => (1 + (x - mean) / passageLoss_Pa) / n)
    flow = flow.map((old, i) => 0.5 * old + 0.5 * next[i]!)
  }
  return ((Math.max(...flow) - Math.min(...flow)) / 2) * n
}
