import { describe, expect, it } from 'vitest'
import { defaultScenario, withField } from '#model/design/scenario'
import { loopSpecOf } from '#model/design/assembly'
import { builtLayout, fieldSize_m, rowsFor, rowsWithin } from '#model/panels/loop'

/* Hand arithmetic: 0.3 m at every edge, 0.35 m between rows, 40 mm between modules. */
const SIZE = { moduleLength_m: 2, moduleWidth_m: 1 }

describe('rows keep within their place', () => {
  it('5 m × 5 m takes four of 1 m side by side (4 · 1 + 3 · 0.04 + 2 · 0.3 = 4.72 m) in two rows (4.95 m)', () => {
    expect(rowsWithin(SIZE, { across_m: 5, down_m: 5 }, 0.3)).toEqual({ perRow: 4, rows: 2, edge_m: 0.3 })
    expect(rowsWithin(SIZE, { across_m: 4.71, down_m: 4.94 }, 0.3)).toMatchObject({ perRow: 3, rows: 1 })
  })
  it('goes to the very edges only where it must, and no further', () => {
    const place = { across_m: 4.2, down_m: 4.4 }
    expect(rowsFor(SIZE, 3, place)).toEqual({ perRow: 3, rows: 1, edge_m: 0.3 })
    expect(rowsFor(SIZE, 4, place)).toEqual({ perRow: 4, rows: 1, edge_m: 0 })
    expect(rowsFor(SIZE, 8, place)).toEqual({ perRow: 4, rows: 2, edge_m: 0 })
    expect(rowsFor(SIZE, 9, place)).toBeNull()
  })
  it('at most six stand on one pair of headers, however wide the roof', () => {
    expect(rowsWithin(SIZE, { across_m: 40, down_m: 5 }, 0.3).perRow).toBe(6)
  })
  it('the built layout of a roof is no wider than it: 10 modules on 5 m × 8 m are three rows of four', () => {
    const spec = { ...loopSpecOf(withField(defaultScenario(), 'panel.freeArea_m2', '99')), ...SIZE }
    expect(builtLayout(spec, 10)).toMatchObject({ rows: 2, modulesPerRow: 5 })
    const place = { across_m: 5, down_m: 8 }
    const onRoof = builtLayout({ ...spec, place }, 10)
    expect(onRoof).toMatchObject({ rows: 3, modulesPerRow: 4 })
    expect(fieldSize_m(SIZE, [4, 4, 2]).across_m).toBeLessThan(5)
    expect(fieldSize_m(SIZE, [4, 4, 2]).down_m).toBeCloseTo(6.7, 9)
  })
})
