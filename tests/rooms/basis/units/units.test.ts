import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { FIELDS } from '#model/design/scenario'
import {
  displayUnit,
  fromDisplay,
  toDisplay,
  formatFixed,
  formatNumber,
  formatQuantity,
  isUnit,
  UNIT_SYMBOLS,
  type Unit,
} from '#model/basis/units'

describe('unit suffixes', () => {
  test('every unit of a scenario field is in the table', () => {
    let seen = 0
    for (const group of Object.values(FIELDS)) {
      for (const [name, field] of Object.entries(group)) {
        if (!('unit' in field)) continue
        seen++
        expect(isUnit(field.unit), `${name}: ${field.unit}`).toBe(true)
      }
    }
    expect(seen).toBeGreaterThan(50)
    expect(isUnit('furlong')).toBe(false)
    expect(isUnit('toString')).toBe(false)
  })
})

describe('US customary values', () => {
  // NIST Special Publication 811 (2008), appendix B, printed to 7 digits: tolerance half of the last one.
  test.each([
    ['C', 100, 212, 1e-9],
    ['C', -40, -40, 1e-9],
    ['m', 0.3048, 1, 1e-12],
    ['m2', 0.09290304, 1, 1e-12],
    ['m3', 3.785412e-3, 1, 2e-7],
    ['ms', 0.44704, 1, 1e-12],
    ['Wm2', 3.154591, 1, 2e-7],
    ['Wm2K', 5.678263, 1, 2e-7],
    ['WmK', 1.730735, 1, 2e-7],
    ['m2KW', 0.1761102, 1, 3e-7],
    ['JkgK', 4186.8, 1, 1e-9],
    ['kgm3', 16.01846, 1, 4e-7],
    ['kgm2', 4.882428, 1, 2e-7],
    ['Pa', 2989.067, 1, 2e-7],
  ] as const)('%s: %d SI', (unit, si, us, within) => {
    expect(Math.abs(toDisplay(si, displayUnit(unit, 'us')) - us)).toBeLessThanOrEqual(within)
  })

  test('a price per foot is less than a price per metre', () => {
    expect(toDisplay(10, displayUnit('perm', 'us'))).toBeCloseTo(3.048, 12)
  })

  test('what is shown reads back as what it was, for every unit and system', () => {
    const units = Object.keys(UNIT_SYMBOLS) as Unit[]
    fc.assert(
      fc.property(
        fc.constantFrom(...units),
        fc.constantFrom('si' as const, 'us' as const),
        fc.double({ min: -1e6, max: 1e6, noNaN: true }),
        fc.constantFrom(0.1, 100),
        (unit, system, value, largest) => {
          const display = displayUnit(unit, system, largest)
          const back = fromDisplay(toDisplay(value, display), display)
          return Math.abs(back - value) <= 1e-9 * Math.max(1, Math.abs(value))
        },
      ),
    )
  })
})

describe('numbers as text', () => {
  test.each([
    [0.000123456, 3, '0.000123'],
    [1234.5, 3, '1230'],
    [12.3456, 3, '12.3'],
    [-0.05, 2, '−0.05'],
    [0, 3, '0'],
    [999.96, 4, '1000'],
    [NaN, 3, '–'],
    [5e10, 3, '5.00e+10'],
  ])('%d to %d digits: %s', (value, digits, text) => {
    expect(formatNumber(value, digits)).toBe(text)
  })

  test('a rounded zero has no minus', () => {
    expect(formatFixed(-0.04, 1)).toBe('0.0')
    expect(formatFixed(-1.26, 1)).toBe('−1.3')
  })

  test('quantities carry their unit', () => {
    expect(formatQuantity(20, 'C', 'us')).toBe('68.0 °F')
    expect(formatQuantity(0.02, 'm', 'si', { largest: 0.1 })).toBe('20 mm')
    expect(formatQuantity(3.6e9, 'J', 'si')).toBe('1000 kWh')
    expect(formatQuantity(0.93, 'frac', 'si')).toBe('0.93')
    expect(formatQuantity(35, 'deg', 'us')).toBe('35°')
  })
})
