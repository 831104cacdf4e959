import { describe, expect, test } from 'vitest'
import { clearByLongwave } from '#inside/model/outdoors/sky/clear-by-longwave.ts'
import { judgeSky, type SkyErrors } from '#model/outdoors/sky'
import { SKY_MODELS, type SkyModel } from '#inside/model/outdoors/sky/hours.ts'
import { alpineWinter, surfradDay, tropicalShip, type MeasuredFile } from './measured-files.ts'

/*
 * Modelled against measured downwelling longwave, hour by hour. Sources of the data: ../shared/data/README.md.
 * What a careful analysis of such data gave (its table), model − measured, bias/RMSE, W/m²:
 * clear nights, the 2024 formula without altitude term: tropical sea −8/10 and −2/7, mountain +4/10, high dry basin
 * under a winter inversion −15/16; all nights on land, cloud carried from the sunlight: RMSE 42–58 → 21–26.
 * Nothing is tuned to these files. How the table chose its clear nights is not said. Here the formula is alone,
 * as in the table, over the nights that the measured longwave itself calls clear.
 */
function judged(
  { weather, sun }: MeasuredFile,
  model: SkyModel = 'matsunobuCoimbra2024',
  altitudeTerm = false,
) {
  return judgeSky(weather, sun, { model, altitudeTerm, useMeasured: true, deficitFactor_frac: 1 })!
}

const basin = surfradDay()
const sea = tropicalShip()
const mountain = alpineWinter()
const files = [basin, sea, mountain].filter((file) => file !== null)

/** The table's own hours are not known; another choice of clear hours moves a figure by a few W/m². */
const SAME_WITHIN = 5

const provenClear = (file: MeasuredFile): SkyErrors => judged(file).formula['night clear by its own longwave']

const text = (errors: Readonly<Record<string, SkyErrors>>): string =>
  Object.entries(errors)
    .map(([hours, e]) => `${hours} ${e.bias_Wm2.toFixed(1)}/${e.rmse_Wm2.toFixed(1)} (${e.hours} h)`)
    .join(', ')

describe('downwelling longwave, model − measured', () => {
  test.skipIf(files.length === 0)('every file, every formula: printed', () => {
    let printed = 0
    for (const file of files) {
      for (const name of SKY_MODELS) {
        const { model, formula } = judged(file, name)
        console.log(`${file.name}, ${name}: ${text(model)}; without cloud: ${text(formula)}`)
        printed++
      }
    }
    expect(printed).toBe(files.length * SKY_MODELS.length)
  })

  test.skipIf(sea === null)('tropical sea, clear nights: as in the table, −8 … −2 bias, 10 RMSE', () => {
    const { hours, bias_Wm2, rmse_Wm2 } = provenClear(sea!)
    expect(hours).toBeGreaterThan(50)
    expect(bias_Wm2).toBeGreaterThan(-8 - SAME_WITHIN)
    expect(bias_Wm2).toBeLessThan(-2 + SAME_WITHIN)
    expect(rmse_Wm2).toBeLessThan(10 + SAME_WITHIN)
  })

  test.skipIf(basin === null)('high dry basin under an inversion, clear night: −15 bias, 16 RMSE', () => {
    const { hours, bias_Wm2, rmse_Wm2 } = provenClear(basin!)
    expect(hours).toBeGreaterThan(5)
    expect(Math.abs(bias_Wm2 + 15)).toBeLessThan(SAME_WITHIN)
    expect(rmse_Wm2).toBeLessThan(16 + SAME_WITHIN)
  })

  test.skipIf(mountain === null)('mountain, clear nights: +4 bias, 10 RMSE', () => {
    const { hours, bias_Wm2, rmse_Wm2 } = provenClear(mountain!)
    expect(hours).toBeGreaterThan(500)
    expect(Math.abs(bias_Wm2 - 4)).toBeLessThan(SAME_WITHIN)
    expect(rmse_Wm2).toBeLessThan(10 + SAME_WITHIN)
  })

  test.skipIf(mountain === null)('mountain, cloud from sunlight about halves the all-night RMSE', () => {
    const { model, formula } = judged(mountain!)
    expect(model.night.rmse_Wm2).toBeLessThan(0.6 * formula.night.rmse_Wm2)
  })

  test.skipIf(sea === null)('tropical sea, cloud from sunlight does no harm at night', () => {
    const { model, formula } = judged(sea!)
    expect(model.night.rmse_Wm2).toBeLessThan(formula.night.rmse_Wm2)
  })

  // Misses: 31, from 61 without cloud. Sunlight cannot do better here: the best function of the two days' indices,
  // fitted to the measured nights themselves (60 nearest neighbours, own and next day left out), leaves 29–31. What
  // the measured longwave gained over the formula in the three hours before the night and after it, carried across, leaves
  // 20; the night's own true mean leaves 17. The table's 42–58 without cloud shows that its nights were other ones.
  test.runIf(mountain !== null).fails('mountain, all nights: the table has 21–26 W/m² RMSE on land', () => {
    expect(judged(mountain!).model.night.rmse_Wm2).toBeLessThan(26)
  })

  // Misses: 21, of which 18 are bias. A clear night between cloudy days takes over their cloud (0.18 on average).
  test
    .runIf(mountain !== null)
    .fails('mountain, clear nights with the cloud carried to them: 10 RMSE', () => {
      const { rmse_Wm2 } = judged(mountain!).model['night clear by its own longwave']
      expect(rmse_Wm2).toBeLessThan(10 + SAME_WITHIN)
    })

  test.skipIf(mountain === null || basin === null)('the altitude term makes mountains worse', () => {
    for (const file of [mountain!, basin!]) {
      const plain = judged(file).model.all
      const withTerm = judged(file, 'matsunobuCoimbra2024', true).model.all
      expect(withTerm.bias_Wm2).toBeLessThan(plain.bias_Wm2)
      expect(withTerm.rmse_Wm2).toBeGreaterThan(plain.rmse_Wm2)
    }
  })
})

describe('hours the measured longwave calls clear', () => {
  const black = new Float64Array(8).fill(400)
  const formula = new Float64Array(8).fill(300)
  const clear = (measured: readonly number[]) => [
    ...clearByLongwave(Float64Array.from(measured), formula, black),
  ]

  test('a steady cold sky counts, save at the ends where a neighbour is missing', () => {
    expect(clear([302, 300, 305, 300, NaN, 300, 300, 300])).toEqual([0, 1, 1, 0, 0, 0, 1, 0])
  })
  test('a passing cloud takes out its hour and its neighbours', () => {
    expect(clear([300, 300, 300, 325, 300, 300, 300, 300])).toEqual([0, 1, 0, 0, 0, 1, 1, 0])
  })
  test('a steady overcast does not count', () => {
    expect(clear([390, 390, 390, 390, 390, 390, 390, 390])).toEqual(Array(8).fill(0))
  })
  test('a formula far off does not choose the hours: 40 W/m² too high or low, they still count', () => {
    expect(clear([340, 340, 340, 340, 260, 260, 260, 260])).toEqual([0, 1, 1, 0, 0, 1, 1, 0])
  })
  test('series of different lengths are a slip of the programmer', () => {
    expect(() => clearByLongwave(new Float64Array(3), formula, black)).toThrow(RangeError)
  })
})
