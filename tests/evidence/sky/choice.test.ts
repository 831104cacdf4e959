/* Outside measurement: nightly mean longwave at five places (../shared/data/sky). The rule for a night's cloud and the
 * clear-sky formula are chosen by leaving out the place that judges. Reach: 18 W/m² over the places, bias within 5 at
 * each, spread of nights at least 0.8 of the measured. */
import { describe, expect, test } from 'vitest'
import { FIELDS } from '#model/design/scenario'
import { SKY_DOUBT } from '#inside/model/design/scenario/sky-doubt.ts'
import { candidates, chooseBy, leaveOneOut, overall_Wm2, pooled_Wm2, SHIPPED } from './choice.ts'
import { spellDoubts } from './doubt.ts'
import type { NightErrors } from './nights.ts'
import { SKY_SITES_ARE_THERE } from './sites.ts'

if (!SKY_SITES_ARE_THERE)
  console.warn('night sky: ../shared/data/sky is not there, so the choice is not tried')

describe.runIf(SKY_SITES_ARE_THERE)('the night’s sky, each place left out in turn', () => {
  const all = SKY_SITES_ARE_THERE ? candidates() : []
  const left = leaveOneOut(all)
  const shipped = all.find(
    ({ rule, clearHours, formula }) =>
      rule === SHIPPED.rule && clearHours === SHIPPED.clearHours && formula === SHIPPED.formula,
  )

  test('what is shipped is what the procedure chooses when it is given all places', () => {
    expect(SHIPPED.formula).toBe(FIELDS.sky.model.default)
    expect(chooseBy(all, Object.keys(all[0]!.errors))).toBe(shipped)
  })

  test('18 W/m² over the places at the most', () => {
    console.log(`night sky: ${overall_Wm2(left).toFixed(1)} W/m² over ${left.length} places`)
    expect(overall_Wm2(left)).toBeLessThanOrEqual(18)
    expect(pooled_Wm2(shipped!, Object.keys(shipped!.errors))).toBeLessThanOrEqual(18)
  })

  test('the doubt that a range draws is that of five nights here', () => {
    const shares = spellDoubts().map(({ place, rms_Wm2, lack_Wm2 }) => [
      place,
      (rms_Wm2 / lack_Wm2).toFixed(2),
    ])
    expect(Object.fromEntries(shares)).toEqual({
      'alpine-winter': SKY_DOUBT.cold.toFixed(2),
      'humid-summer-hills': SKY_DOUBT.humid.toFixed(2),
      mediterranean: SKY_DOUBT['dry summer'].toFixed(2),
    })
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
