/* Outside measurement: nightly mean longwave at five places (../shared/data/sky). The rule for a night's cloud and the
 * clear-sky formula are chosen by leaving out the place that judges. Reach: 18 W/m² over the places, bias within 5 at
 * each, spread of nights at least 0.8 of the measured. */
import { describe, expect, test } from 'vitest'
import { FIELDS } from '#model/design/scenario'
import { CLEAR_SHARE } from '#inside/model/outdoors/intake/derive/cloud.ts'
import { candidates, leaveOneOut, overall_Wm2, SHIPPED_FORMULA } from './choice.ts'
import type { NightErrors } from './nights.ts'
import { SKY_SITES_ARE_THERE } from './sites.ts'

if (!SKY_SITES_ARE_THERE)
  console.warn('night sky: ../shared/data/sky is not there, so the choice is not tried')

describe.runIf(SKY_SITES_ARE_THERE)('the night’s sky, each place left out in turn', () => {
  const all = SKY_SITES_ARE_THERE ? candidates() : []
  const left = leaveOneOut(all)
  const shipped = all.find(
    ({ rule, clearHours, formula }) =>
      rule === 'duskAndDawn' && clearHours === CLEAR_SHARE && formula === SHIPPED_FORMULA,
  )

  test('rule of the night and clear hours are those that are chosen most often', () => {
    expect(SHIPPED_FORMULA).toBe(FIELDS.sky.model.default)
    const same = left.filter(
      ({ chosen }) => chosen.rule === shipped!.rule && chosen.clearHours === shipped!.clearHours,
    )
    expect(same.length).toBeGreaterThan(left.length / 2)
  })

  test('18 W/m² over the places at the most', () => {
    console.log(`night sky: ${overall_Wm2(left).toFixed(1)} W/m² over ${left.length} places`)
    expect(overall_Wm2(left)).toBeLessThanOrEqual(18)
  })

  const judged = (place: string, how: string, { bias_Wm2, spread }: NightErrors) =>
    [place, how, bias_Wm2, spread] as const
  test.each(
    left.flatMap(({ place, errors }) => [
      judged(place, 'by what the others choose', errors),
      judged(place, 'as shipped', shipped!.errors[place]!),
    ]),
  )(
    '%s, %s: bias within 5 W/m², spread of nights at least 0.8 of the measured',
    (_p, _h, bias_Wm2, spread) => {
      expect(Math.abs(bias_Wm2)).toBeLessThanOrEqual(5)
      expect(spread).toBeGreaterThanOrEqual(0.8)
    },
  )
})
