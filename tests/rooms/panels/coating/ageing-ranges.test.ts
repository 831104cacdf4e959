import { expect, it } from 'vitest'
import { AGEING_RANGES, agedCoating, agedFilm } from '#model/panels/coating'
import { defaultScenario, fieldAt } from '#model/design/scenario'

it('every range names a number field of the scenario and has a low and a high end', () => {
  for (const range of Object.values(AGEING_RANGES)) {
    expect(fieldAt(range.field)?.field.type, range.field).toBe('number')
    const ends = range.times ?? range.plus!
    expect(ends[0]).toBeLessThan(ends[1])
  }
})

it('the ranges move what the panel sees: more dirt is darker, a shorter life is cloudier', () => {
  const { coating, cover } = defaultScenario()
  const [little, much] = AGEING_RANGES.dirt.times!
  const reflectance = (times: number) =>
    agedCoating(coating, coating.soiling_1y * times, 2).solarReflectance_frac
  expect(reflectance(much)).toBeLessThan(reflectance(little) - 0.02)
  const [short, long] = AGEING_RANGES.filmLife.times!
  const passes = (times: number) =>
    agedFilm({ ...cover, life_months: cover.life_months * times }, 0.5).solarTransmittance_frac
  expect(passes(short)).toBeLessThan(passes(long))
})
