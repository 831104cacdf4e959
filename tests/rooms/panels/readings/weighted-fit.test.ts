import { Matrix, inverse } from 'ml-matrix'
import { describe, expect, it, test } from 'vitest'
import { studentHalfWidth, weightedFit, type FitProblem } from '#model/basis/numbers'

/* Source: printed t tables, 0.975 column (e.g. Abramowitz & Stegun 1964, Table 26.10): 3 digits after the point. The
 * series is stated good to 0.002 at ν = 5; from ν = 10 the table's rounding decides. */
test.each([
  [5, 2.571, 0.002],
  [10, 2.228, 0.0006],
  [20, 2.086, 0.0006],
  [60, 2.0, 0.0006],
])('t(0.975) at ν = %d is %d', (freedom, want, within) => {
  expect(Math.abs(studentHalfWidth(freedom) - want)).toBeLessThan(within)
})

/** A straight line with two rows sharing an error: everything has a closed form. */
function line(measured: number[], priorSd: number): FitProblem {
  const x = [0, 1, 2, 3]
  return {
    parameters: [
      { name: 'level', priorMean: 0, priorSd, min: -1e3, max: 1e3 },
      { name: 'slope', priorMean: 0, priorSd, min: -1e3, max: 1e3 },
    ],
    measured,
    predict: ([a, b]) => Float64Array.from(x, (xi) => a! + b! * xi),
    errorBlocks: () => [
      {
        rows: [0, 1],
        covariance: new Matrix([
          [1.25, 1],
          [1, 1.25],
        ]),
      },
      { rows: [2, 3], covariance: Matrix.eye(2) },
    ],
  }
}

describe('weighted fit', () => {
  it('equals the closed form of generalised least squares with priors (independent algebra, 1e-3 of a standard error: where the search stops)', () => {
    const measured = [1.1, 2.9, 5.2, 6.8]
    const fit = weightedFit(line(measured, 10))
    const J = new Matrix([
      [1, 0],
      [1, 1],
      [1, 2],
      [1, 3],
    ])
    const S = Matrix.eye(4)
    S.setSubMatrix(
      [
        [1.25, 1],
        [1, 1.25],
      ],
      0,
      0,
    )
    const JtW = J.transpose().mmul(inverse(S))
    const normal = Matrix.add(JtW.mmul(J), Matrix.eye(2).div(100))
    const want = inverse(normal).mmul(JtW).mmul(Matrix.columnVector(measured))
    for (const i of [0, 1]) {
      expect(Math.abs(fit.values[i]! - want.get(i, 0))).toBeLessThan(1e-3 * fit.standardErrors[i]!)
    }
  })

  it('readings that agree better than stated never shrink the errors by more than the stated ones allow', () => {
    const fit = weightedFit(line([1, 3, 5, 7], 10))
    expect(fit.scale).toBeGreaterThan(10 / 12.5)
    expect(fit.scale).toBeLessThan(1)
  })

  it('a parameter no reading touches keeps its prior, mean and width (limit)', () => {
    const base = line([1, 3, 5, 7], 10)
    const fit = weightedFit({
      ...base,
      parameters: [...base.parameters, { name: 'idle', priorMean: 0.7, priorSd: 0.2, min: 0, max: 1 }],
    })
    expect(fit.values[2]).toBeCloseTo(0.7, 9)
    expect(fit.standardErrors[2]).toBeCloseTo(0.2, 6)
    expect(fit.readingInformation.get(2, 2)).toBe(0)
  })
})
