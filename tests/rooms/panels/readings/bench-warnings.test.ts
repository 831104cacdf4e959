/* Field notes that cannot decide: each gets its own warning, and full notes get none. Exact statements about information,
 * on noise-free readings of the full model. */
import { describe, expect, it } from 'vitest'
import { estimateCoatings, type BenchReadings } from '#model/panels/readings'
import { ProblemError } from '#model/basis/words'
import {
  AFTERNOON,
  allProposals,
  BREEZY_NIGHT,
  CALM_NIGHT,
  fieldNotes,
  nextReading,
  NOON,
  POLYETHYLENE,
  REFERENCE,
  SHADE,
  unknown,
  type MomentPlan,
} from './field-notes.ts'

const TWO = [unknown('Pot A'), unknown('Pot B')]
const TRUTHS = [
  { solarReflectance_frac: 0.93, emittance_frac: 0.92 },
  { solarReflectance_frac: 0.86, emittance_frac: 0.88 },
  { solarReflectance_frac: 0.8, emittance_frac: 0.9 },
]
const read = (plans: MomentPlan[], samples = [...TWO, REFERENCE]) =>
  fieldNotes(plans, samples, TRUTHS, () => 0)
const codes = (readings: BenchReadings) => estimateCoatings(readings).warnings.map((w) => w.code)

describe('what the notes cannot show', () => {
  it('night readings say nothing about solar reflectance', () => {
    const estimate = estimateCoatings(read([CALM_NIGHT, BREEZY_NIGHT]))
    const said = estimate.warnings.find((w) => w.code === 'bench-reflectance-unseen')!
    expect(said.message).toContain('night readings say nothing about solar reflectance')
    expect(said.message).toContain('Pot A')
    expect(said.message).not.toContain('Reference')
    for (const i of [0, 1]) expect(estimate.samples[i]!.solarReflectance.decided_frac).toBeLessThan(0.01)
  })

  it('shade alone cannot show reflectance to better than its own sunlight', () => {
    expect(codes(read([SHADE]))).toContain('bench-one-condition')
  })

  it('one condition is said, two are not', () => {
    expect(codes(read([NOON, NOON, NOON]))).toContain('bench-one-condition')
    expect(codes(read([NOON, CALM_NIGHT]))).not.toContain('bench-one-condition')
  })

  it('two bare samples side by side cancel the wind; a reference paint or a film brings it back', () => {
    const dark = [
      { solarReflectance_frac: 0.5, emittance_frac: 0.9 },
      { solarReflectance_frac: 0.3, emittance_frac: 0.85 },
    ]
    const alone = fieldNotes([AFTERNOON, { ...AFTERNOON, sun_Wm2: 900 }], TWO, dark, () => 0)
    const said = estimateCoatings(alone).warnings.find((w) => w.code === 'bench-wind-unseen')!
    expect(said.message).toContain('feel the same wind, so comparing them cancels it')
    const withReference = fieldNotes(
      [AFTERNOON, { ...AFTERNOON, sun_Wm2: 900 }],
      [...TWO, REFERENCE],
      [...dark, TRUTHS[2]!],
      () => 0,
    )
    const wind = (readings: BenchReadings) => estimateCoatings(readings).winds[0]!.coefficient_Wm2K
    const width = (readings: BenchReadings) => wind(readings).high / wind(readings).low
    expect(width(withReference)).toBeLessThan(width(alone))
  })

  it('sun alone cannot part reflectance from emittance as well as sun and night', () => {
    const sunOnly = estimateCoatings(read([NOON]))
    const both = estimateCoatings(read([NOON, CALM_NIGHT]))
    expect(sunOnly.samples[0]!.emittance.decided_frac).toBeLessThan(0.15)
    expect(sunOnly.warnings.map((w) => w.code)).toContain('bench-emittance-unseen')
    expect(both.samples[0]!.emittance.decided_frac).toBeGreaterThan(0.25)
  })

  it('full notes get no warning', () => {
    const film: MomentPlan[] = [
      { ...NOON, cover: 'film' },
      { ...CALM_NIGHT, cover: 'film' },
    ]
    const plans = [NOON, AFTERNOON, CALM_NIGHT, BREEZY_NIGHT, CALM_NIGHT, BREEZY_NIGHT, ...film]
    expect(codes(read(plans))).toEqual([])
  })

  it('dewy surfaces are left out and said; when all are, it stops with a sentence', () => {
    const dewy: MomentPlan = { ...CALM_NIGHT, dewPoint_C: 18 }
    expect(codes(read([NOON, dewy]))).toContain('bench-wet')
    expect(() => estimateCoatings(read([dewy]))).toThrow(/dew/)
  })

  it('a slip of the pen shows as scatter and widens the intervals', () => {
    const good = read([NOON, AFTERNOON, CALM_NIGHT, BREEZY_NIGHT])
    const moments = good.moments.map((m, i) => ({
      ...m,
      surfaces: m.surfaces.map((s) => (i === 0 && s.sample === 0 ? { ...s, shown_C: s.shown_C + 12 } : s)),
    }))
    const slipped = estimateCoatings({ ...good, moments })
    expect(slipped.warnings.map((w) => w.code)).toContain('bench-scatter')
    const width = (e: typeof slipped) =>
      e.samples[1]!.solarReflectance.high - e.samples[1]!.solarReflectance.low
    expect(width(slipped)).toBeGreaterThan(width(estimateCoatings(good)))
  })

  it('a reference that is not what it was taken for is doubted', () => {
    const plans = [NOON, AFTERNOON, NOON, CALM_NIGHT]
    const measured = fieldNotes(
      plans,
      [REFERENCE, REFERENCE, REFERENCE],
      [TRUTHS[2]!, TRUTHS[2]!, TRUTHS[2]!],
      () => 0,
    )
    expect(estimateCoatings(measured).warnings.map((w) => w.code)).not.toContain('bench-reference')
    const soiled = { ...TRUTHS[2]!, solarReflectance_frac: 0.6 }
    const notes = fieldNotes(
      plans,
      [REFERENCE, REFERENCE, REFERENCE],
      [TRUTHS[2]!, TRUTHS[2]!, soiled],
      () => 0,
    )
    expect(estimateCoatings(notes).warnings.map((w) => w.code)).toContain('bench-reference')
  })
})

describe('pairs and the next reading', () => {
  it('the difference in the same sun is known better than either coating', () => {
    const { pairs, samples } = estimateCoatings(read([NOON, AFTERNOON, CALM_NIGHT], TWO))
    const width = (e: { low: number; high: number }) => e.high - e.low
    const alone = Math.hypot(width(samples[0]!.solarReflectance), width(samples[1]!.solarReflectance))
    expect(width(pairs[0]!.solarReflectance)).toBeLessThan(0.8 * alone)
  })

  it('after nights only, the most telling reading is in the sun; it narrows more than any other', () => {
    const notes = read([CALM_NIGHT, BREEZY_NIGHT])
    const best = nextReading(notes, estimateCoatings(notes))
    expect(best.light).toBe('sun')
    expect(best.doubtThen_Wm2).toBeLessThan(0.3 * best.doubtNow_Wm2)
    expect(best.what).toContain('full sun')
  })

  it('a film on the board is proposed too, and no proposal makes things worse', () => {
    const notes = read([NOON, NOON, CALM_NIGHT])
    const withFilm = { ...notes, board: { ...notes.board, film: POLYETHYLENE } }
    const proposals = allProposals(withFilm, estimateCoatings(withFilm))
    expect(proposals.some((p) => p.cover === 'film')).toBe(true)
    for (const p of proposals) expect(p.doubtThen_Wm2).toBeLessThanOrEqual(p.doubtNow_Wm2 * 1.0001)
  })
})

describe('bad field notes', () => {
  const good = read([NOON, CALM_NIGHT])
  const first = good.moments[0]!
  const spoil = (change: Partial<typeof first>): BenchReadings => ({
    ...good,
    moments: [{ ...first, ...change }, good.moments[1]!],
  })
  it.each([
    ['dew point above air', spoil({ dewPoint_C: 40, airTemp_C: 20 }), 'dewPoint_C'],
    ['NaN air', spoil({ airTemp_C: NaN }), 'airTemp_C'],
    ['sun of 3000', spoil({ sun_Wm2: 3000 }), 'sun_Wm2'],
    ['metered without a value', spoil({ wind: 'metered', wind_ms: null }), 'wind_ms'],
    ['no surfaces', spoil({ surfaces: [] }), 'surfaces'],
    ['unknown sample', spoil({ surfaces: [{ ...first.surfaces[0]!, sample: 9 }] }), 'surfaces'],
    ['surface NaN', spoil({ surfaces: [{ ...first.surfaces[0]!, shown_C: NaN }] }), 'shown_C'],
    ['film without a film', spoil({ surfaces: [{ ...first.surfaces[0]!, cover: 'film' }] }), 'cover'],
    [
      'infrared through a film',
      {
        ...spoil({ surfaces: [{ ...first.surfaces[0]!, cover: 'film', thermometer: 'infrared' }] }),
        board: { ...good.board, film: POLYETHYLENE },
      },
      'thermometer',
    ],
  ])('%s: refused, with line and field', (_why, notes, field) => {
    try {
      estimateCoatings(notes)
      expect.unreachable('should have been refused')
    } catch (error) {
      expect(error).toBeInstanceOf(ProblemError)
      const { place } = (error as ProblemError).problems[0]!
      expect(place).toMatchObject({ line: 1, field })
    }
  })
})
