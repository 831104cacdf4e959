import { expect, test } from 'vitest'
import { tanksSoldAbout_m3 } from '#inside/model/design/assembly/tank-sizes.ts'

/* Label: regression. The sizes are common practice, no source. */
test.each([
  [1.22, [1, 1.5]],
  [0.442, [0.3, 0.5]],
  [1, [1]],
  [0.01, [0.06]],
  [500, [500]],
])('a tank of %f m³ is sold as %j m³', (volume_m3, want_m3) => {
  expect(tanksSoldAbout_m3(volume_m3)).toEqual(want_m3)
})

test.each([
  [1.22, 1.6, [1, 1.5]],
  [1.22, 1.3, [1]],
  [1.22, 1, [1]],
  [1.22, 0.9, [0.75]],
  [0.03, 0.05, [0.05]],
])('of a tank of %f m³ where %f m³ fit, only %j m³ are bought', (volume_m3, most_m3, want_m3) => {
  expect(tanksSoldAbout_m3(volume_m3, most_m3)).toEqual(want_m3)
})
