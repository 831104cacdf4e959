import { describe, expect, it } from 'vitest'
import { Stages } from '#studies/stages.ts'
import { coverReasons } from '#inside/model/design/comparison/cover-reasons.ts'
import { panelAtTemperature } from '#model/panels/plate'
import { defaultScenario } from '#model/design/scenario'
import type { YearResult } from '#model/building/year'
import { inventedWeather } from '../../invented-weather.ts'

const HOURS = 60 * 24
const { weather } = inventedWeather(HOURS, 7)
const stages = new Stages()
const base = defaultScenario()
const panelOf = (kind: 'bare' | 'film', moreHumid_K = 0) =>
  stages.panelOf(
    {
      ...base,
      cover: { ...base.cover, kind },
      site: { ...base.site, moreHumid_K },
      coating: { ...base.coating, age_y: 0 },
    },
    weather,
  ).panel
const bare = panelOf('bare')
const film = panelOf('film')

/** A year of which only plate and pump are read. */
function plateYear(plate_C: (h: number) => number, run: (h: number) => number): YearResult {
  const column = (at: (h: number) => number) => Float64Array.from({ length: HOURS }, (_, h) => at(h))
  return { hours: HOURS, plate_C: column(plate_C), pumpRun_frac: column(run) } as unknown as YearResult
}

describe('why bare or film sheds more', () => {
  it('the heats are those of panels held at the temperature (independent calculation: panelAtTemperature, 1e-9)', () => {
    const reasons = coverReasons(
      bare,
      film,
      plateYear(
        () => 12,
        () => 1,
      ),
    )!
    const held = (panel: typeof bare) =>
      panelAtTemperature(panel, 12).heat_Wm2.reduce((sum, q) => sum + q * 3600, 0)
    expect(Math.abs(reasons.bare_Jm2 / held(bare) - 1)).toBeLessThan(1e-9)
    expect(Math.abs(reasons.film_Jm2 / held(film) - 1)).toBeLessThan(1e-9)
  })
  it('the parts add up to the whole difference and to all pump hours (conservation, 1e-9)', () => {
    const reasons = coverReasons(
      bare,
      film,
      plateYear(
        (h) => weather.airTemp_C[h]! + 4 * Math.sin(h),
        (h) => (h % 3) / 2,
      ),
    )!
    const sum = reasons.parts.reduce((total, part) => total + part.bareAhead_Jm2, 0)
    expect(Math.abs(sum - (reasons.bare_Jm2 - reasons.film_Jm2))).toBeLessThan(
      1e-9 * Math.abs(reasons.bare_Jm2),
    )
    expect(reasons.parts.reduce((total, part) => total + part.run_h, 0)).toBeCloseTo(reasons.run_h, 9)
  })
  it('a plate 5 K warmer than the air: bare is ahead, for wind carries heat away (design: film pays only below air)', () => {
    const reasons = coverReasons(
      bare,
      film,
      plateYear(
        (h) => weather.airTemp_C[h]! + 5,
        () => 1,
      ),
    )!
    const warm = reasons.parts.find(({ cause }) => cause === 'warmPlate')!
    expect(warm.bareAhead_Jm2).toBeGreaterThan(0)
    expect(warm.plateAboveAir_K).toBeCloseTo(5, 9)
    expect(reasons.parts.some(({ cause }) => cause === 'coldPlate')).toBe(false)
  })
  it('a plate 8 K colder than the air: film is ahead while it is dry, for it keeps the wind off', () => {
    const reasons = coverReasons(
      bare,
      film,
      plateYear(
        (h) => weather.airTemp_C[h]! - 8,
        () => 1,
      ),
    )!
    expect(reasons.parts.find(({ cause }) => cause === 'coldPlate')!.bareAhead_Jm2).toBeLessThan(0)
  })
  it('more humid air wets the film in more of the hours', () => {
    const year = plateYear(
      (h) => weather.airTemp_C[h]! - 3,
      () => 1,
    )
    const wet = (a: typeof bare, b: typeof film) =>
      coverReasons(a, b, year)!.parts.find(({ cause }) => cause === 'wetFilm')?.run_h ?? 0
    expect(wet(panelOf('bare', 4), panelOf('film', 4))).toBeGreaterThan(wet(bare, film))
  })
  it('says nothing where the pump never runs, and refuses records that do not match', () => {
    expect(
      coverReasons(
        bare,
        film,
        plateYear(
          () => 12,
          () => 0,
        ),
      ),
    ).toBeNull()
    expect(() =>
      coverReasons(bare, film, {
        ...plateYear(
          () => 12,
          () => 1,
        ),
        hours: 3,
      }),
    ).toThrow(RangeError)
  })
})
