/* Second, independent implementation: sky and plate of an hour, `models/page-*.ts`, written from src/model/README.md alone by
 * someone who had read no other file of src, against the project's full balance and against the reduced hours that the year
 * runs on, 500 random hours, 1 W/m². */
import { expect, test } from 'vitest'
import { HOURS, pageDifferences } from './models/page-case.ts'

test(`plate and sky of ${HOURS} hours, written again from the page: within 1 W/m²`, () => {
  const worst = pageDifferences()
  console.log(JSON.stringify(worst))
  expect(worst.sky_Wm2).toBeLessThanOrEqual(0.1)
  expect(worst.window_Wm2).toBeLessThanOrEqual(0.1)
  expect(worst.full_Wm2).toBeLessThanOrEqual(1)
  expect(worst.reduced_Wm2).toBeLessThanOrEqual(1)
})
