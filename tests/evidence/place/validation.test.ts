import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { TRUST_IN_SHORT, trustLine, findPlace } from '#model/outdoors/place'
import { wordingText } from '#model/basis/words'
import { PLACES, TOWNS } from '../../rooms/outdoors/place/held-data.ts'
import { TABLE, type ValidationRow } from './validation.ts'

const { rows } = JSON.parse(readFileSync(TABLE, 'utf8')) as { rows: ValidationRow[] }

describe('the kept table of made years against files', () => {
  test('has a row for each file with its area, its ratio and whether the range holds it', () => {
    expect(rows).toHaveLength(4)
    for (const row of rows) {
      expect(row.fileArea_m2).toBeGreaterThan(0)
      if (row.madeArea_m2 !== null) expect(row.ratio).toBeCloseTo(row.madeArea_m2 / row.fileArea_m2, 9)
      const inside =
        row.low_m2 !== null && row.low_m2 <= row.fileArea_m2 && row.fileArea_m2 <= (row.high_m2 ?? Infinity)
      expect(row.contained).toBe(inside)
    }
  })

  test('the trust line says what the table says', () => {
    const asked = { latitude_deg: 50, longitude_deg: 20, altitude_m: 200, name: null, warming_K: null }
    const said = wordingText(trustLine(findPlace(PLACES, TOWNS, asked)), 'si')
    const ratios = rows.flatMap(({ ratio }) => (ratio === null ? [] : [ratio])).toSorted((a, b) => a - b)
    const [, second, third] = ratios.map((ratio) => ratio.toFixed(1))
    expect(said).toContain(
      `The panel area came out at ${second} times and ${third} times the measured one at two of them`,
    )
    expect(said).toContain('at the fourth no area was enough although one was')
    expect(said).toContain('at a fifth of it (far too small')
    expect(said).toContain('Three of the four were inside the range given here')
    expect(rows.filter(({ contained }) => contained)).toHaveLength(3)
    expect(rows.filter(({ madeArea_m2 }) => madeArea_m2 === null)).toHaveLength(1)
    expect(said).toContain('that very year typed in, all four came within a factor of 1.4')
    for (const { ownMonths } of rows) {
      expect(Math.abs(Math.log(ownMonths.ratio!))).toBeLessThan(Math.log(1.4))
      expect(ownMonths.contained).toBe(true)
    }
    expect(ratios).toHaveLength(3)
    expect(Math.round(1 / ratios[0]!)).toBe(5)
    expect(TRUST_IN_SHORT).toContain(`between a fifth of the right one and ${third} times it`)
    expect(TRUST_IN_SHORT).toContain('once none was enough')
  })
})
