import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { contourLines } from '#model/basis/numbers'

const grid = (columns: number, rows: number, at: (x: number, y: number) => number) => ({
  columns,
  rows,
  values: Float64Array.from({ length: columns * rows }, (_, i) => at(i % columns, Math.floor(i / columns))),
})

describe('contours of equal value', () => {
  it('of a plane are one straight line, exactly where the plane has the value (exact: linear between crossings)', () => {
    const lines = contourLines(
      grid(9, 6, (x, y) => 2 * x + 3 * y),
      11.5,
    )
    expect(lines).toHaveLength(1)
    for (const [x, y] of lines[0]!) expect(2 * x + 3 * y).toBeCloseTo(11.5, 12)
  })

  it('of a cone are a closed ring of its radius, within the bulge of a chord (independent: x² + y² = r²)', () => {
    const lines = contourLines(
      grid(41, 41, (x, y) => Math.hypot(x - 20, y - 20)),
      13.37,
    )
    expect(lines).toHaveLength(1)
    expect(lines[0]!.at(0)).toEqual(lines[0]!.at(-1))
    // Along an edge a cone of radius r bends by 1/(8 r): 0.0095 steps at r = 13.37.
    for (const [x, y] of lines[0]!) expect(Math.abs(Math.hypot(x - 20, y - 20) - 13.37)).toBeLessThan(0.0095)
  })

  it('in a saddle join the side of the mean of the corners', () => {
    // High corners at (0,0) and (1,1). Joined, the lines pass by the low corners, else by the high ones.
    const distances = (high: number, low: number) =>
      contourLines({ columns: 2, rows: 2, values: [high, low, low, high] }, 0).map((line) => {
        const x = (line[0]![0] + line[1]![0]) / 2
        const y = (line[0]![1] + line[1]![1]) / 2
        return Math.min(Math.hypot(x, y), Math.hypot(1 - x, 1 - y))
      })
    expect(distances(3, -1)).toHaveLength(2)
    expect(distances(1, -3)).toHaveLength(2)
    for (const fromHigh of distances(3, -1)) expect(fromHigh).toBeGreaterThan(0.5)
    for (const fromHigh of distances(1, -3)) expect(fromHigh).toBeLessThan(0.5)
  })

  it('leave out squares with an unknown corner', () => {
    const values = [0, 2, NaN, 0, 2, 2]
    const lines = contourLines({ columns: 3, rows: 2, values }, 1)
    expect(lines).toEqual([
      [
        [0.5, 0],
        [0.5, 1],
      ],
    ])
  })

  it('on any values lie between a crossing above and one not above, and end only on the border (400 random grids)', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 2, max: 6 }),
        fc.integer({ min: 2, max: 6 }),
        fc.array(fc.integer({ min: -5, max: 5 }), { minLength: 36, maxLength: 36 }),
        (columns, rows, numbers) => {
          const values = numbers.slice(0, columns * rows)
          for (const line of contourLines({ columns, rows, values }, 0)) {
            for (const [x, y] of line) {
              const a = values[Math.floor(y) * columns + Math.floor(x)]!
              const b = values[Math.ceil(y) * columns + Math.ceil(x)]!
              expect(Math.min(a, b)).toBeLessThanOrEqual(0)
              expect(Math.max(a, b)).toBeGreaterThanOrEqual(0)
              expect(Number.isInteger(x) || Number.isInteger(y)).toBe(true)
            }
            const [first, last] = [line[0]!, line.at(-1)!]
            const closed = first[0] === last[0] && first[1] === last[1]
            const onBorder = ([x, y]: readonly [number, number]) =>
              x === 0 || y === 0 || x === columns - 1 || y === rows - 1
            expect(closed || (onBorder(first) && onBorder(last))).toBe(true)
          }
        },
      ),
      { numRuns: 400 },
    )
  })

  it('refuse values that do not fill the grid', () => {
    expect(() => contourLines({ columns: 3, rows: 2, values: [1, 2] }, 0)).toThrow(RangeError)
  })
})
