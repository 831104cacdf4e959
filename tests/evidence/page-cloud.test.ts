/* Second, independent implementation: sunlight outside the air and under a clear sky, beam and diffuse, and the cloud worked
 * out from them by day and over the night, `models/page-cloud.ts`, written from src/model/README.md alone by someone who had
 * read no other file of src. */
import { expect, test } from 'vitest'
import { pageSunlight } from './models/page-cloud-case.ts'

test('sunlight and cloud of five years and a week, written again from the page', () => {
  const worst = pageSunlight()
  console.log(JSON.stringify(worst, null, 1))
  expect(worst.outside_Wm2).toBeLessThan(0.01)
  expect(worst.clear_Wm2).toBeLessThan(0.1)
  expect(worst.clearBeam_Wm2).toBeLessThan(0.1)
  expect(worst.split_Wm2).toBeLessThan(0.1)
  expect(worst.cloudByDay).toBeLessThan(0.001)
  expect(worst.cloudByNight).toBeLessThan(0.001)
})
