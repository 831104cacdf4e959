import { describe, expect, test } from 'vitest'
import { seededRandom } from '#model/basis/numbers'
import { ProblemError } from '#model/basis/words'
import { DEMO_RECIPE, DEMO_WATER } from '#model/panels/paint'
import {
  copyOf,
  DEMO_SERIES,
  ingredientShares,
  readSeries,
  readSeriesCsv,
  variedKeys,
  withAmount,
  writeSeries,
  writeSeriesCsv,
} from '#model/panels/notebook'

const FULL = {
  basis: '',
  samples: [
    {
      ...DEMO_SERIES.samples[0]!,
      name: 'with, comma',
      note: 'two "quoted" words\nand a line',
      recipe: { ...DEMO_RECIPE, water: DEMO_WATER },
      measured: {
        solarReflectance: { value: 0.9, low: 0.88, high: 0.92 },
        overBlack: { value: 0.8, low: 0.79, high: 0.81 },
      },
    },
    DEMO_SERIES.samples[1]!,
  ],
}

describe('a series as a file', () => {
  test('comes back from JSON and from CSV as it was', () => {
    expect(readSeries(writeSeries(FULL), 'a.json')).toEqual(FULL)
    expect(readSeriesCsv(writeSeriesCsv(FULL), 'a.csv')).toEqual(FULL)
    expect(readSeriesCsv(writeSeriesCsv(FULL).replaceAll('\n', '\r\n'), 'a.csv').samples.length).toBe(2)
  })

  test('a broken one is refused with its place', () => {
    const wrong = writeSeriesCsv(DEMO_SERIES).replace('dryThickness_m,,0.00024', 'dryThickness_m,,thick')
    expect(() => readSeriesCsv(wrong, 'a.csv')).toThrow(/Line 6.*thick/)
    expect(() => readSeriesCsv('a,b\n1,2', 'a.csv')).toThrow(ProblemError)
    expect(() => readSeries('{', 'a.json')).toThrow(ProblemError)
    const twice = { ...DEMO_SERIES, samples: [DEMO_SERIES.samples[0]!, DEMO_SERIES.samples[0]!] }
    expect(() => readSeries(writeSeries(twice), 'a.json')).toThrow(/Two samples/)
  })

  test('200 damaged files are read or refused, never a crash', () => {
    const random = seededRandom(3)
    for (const [text, read] of [
      [writeSeries(FULL), readSeries],
      [writeSeriesCsv(FULL), readSeriesCsv],
    ] as const)
      for (let i = 0; i < 100; i++) {
        const at = Math.floor(random() * text.length)
        const damaged =
          text.slice(0, at) + ['', ',', '"', '{', '9', 'x'][i % 6]! + text.slice(at + 1 + (i % 9))
        try {
          read(damaged, 'damaged')
        } catch (reason) {
          expect(reason).toBeInstanceOf(ProblemError)
        }
      }
  })
})

describe('samples', () => {
  test('a copy has its own name and no measurement; one thing is changed', () => {
    const copy = withAmount(
      copyOf(DEMO_SERIES.samples[0]!, ['A1', 'A1 2'], '2026-06-01'),
      'thickness',
      0.0003,
    )
    expect(copy.name).toBe('A1 3')
    expect(copy.measured).toEqual({})
    expect(variedKeys([DEMO_SERIES.samples[0]!, copy])).toEqual(['thickness'])
  })

  test('shares add up; ground calcium carbonate of the example is 48 % of the dry volume', () => {
    const shares = ingredientShares(DEMO_RECIPE)
    expect(shares.reduce((sum, s) => sum + s.wetMass_frac, 0)).toBeCloseTo(1, 9)
    // 2.65/2710 of (1/1120 + 2.65/2710 + 0.35/2200), by hand.
    expect(shares.find(({ name }) => name.startsWith('Ground'))!.dryVolume_frac).toBeCloseTo(0.4815, 3)
  })
})
