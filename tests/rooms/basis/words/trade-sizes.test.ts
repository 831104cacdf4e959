import { describe, expect, it } from 'vitest'
import { figure, figureText, type Figure } from '#model/basis/words'

const said = (value: number, unit: Figure['unit'], system: 'si' | 'us'): string =>
  figureText(figure(value, unit), system).replaceAll('\u00a0', ' ')

describe('what is bought is named by the size of its trade, not by a converted one (common practice, no source)', () => {
  it.each([
    [0.04, 'board', '40 mm', '1 1/2 in'],
    [0.08, 'board', '80 mm', '3 in'],
    [0.1, 'board', '100 mm', '4 in'],
    [0.0007, 'sheetMetal', '0.7 mm', '0.032 in'],
    [0.0005, 'sheetMetal', '0.5 mm', '0.020 in'],
    [0.2, 'duct', '200 mm', '8 in'],
    [0.26, 'duct', '315 mm', '12 in'],
    [0.5e-6, 'wire', '0.5 mm²', '20 AWG'],
    [1.5e-6, 'wire', '1.5 mm²', '14 AWG'],
    [0.06, 'depth', '60 mm', '2 1/2 in'],
  ] as const)('%f as %s', (value, unit, si, us) => {
    expect(said(value, unit, 'si')).toBe(si)
    expect(said(value, unit, 'us')).toBe(us)
  })
})
