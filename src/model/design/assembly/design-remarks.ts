import type { Scenario } from '#model/design/scenario'
import type { PlaceLimit, SizingResult } from '#model/design/sizing'
import { PLACE_FIELDS, type TankPlace, tankPlaceOf } from './tank-place.ts'
import { limitName } from './tank-misfit.ts'
import type { LoopDuty } from '#model/panels/loop'
import { count, figure, said, type Problem, words, type Wording } from '#model/basis/words'

/** What is worth knowing about a design once its year has been run. */
export function designRemarks(
  scenario: Scenario,
  loop: LoopDuty,
  { missedAgainFrom_m2, placeLimit }: Pick<SizingResult, 'missedAgainFrom_m2' | 'placeLimit'>,
): Problem[] {
  const remark = (wording: Wording, remedy = '', field = 'loop', code = 'loop-remark'): Problem => ({
    code,
    severity: 'warning',
    ...said(wording),
    remedy,
    place: { field },
  })
  const remarks = loop.remarks.map((wording) => remark(wording))
  const place = tankPlaceOf(scenario)
  if (placeLimit !== null && place !== null)
    remarks.push(
      remark(
        limitedWords(placeLimit, place),
        'Say how wide its way in is and what the floor carries, stand it outdoors, or join several smaller tanks and give their volume together.',
        PLACE_FIELDS[place.limit],
        'place-limits-tank',
      ),
    )
  if (missedAgainFrom_m2 !== null)
    remarks.push(
      remark(
        words`More is not better here: with ${figure(missedAgainFrom_m2, 'm2')} the target is missed again.`,
        'Build the area found, not more; look at “what limits it”.',
        'target.maxArea_m2',
        'more-panel-misses',
      ),
    )
  return remarks
}

/** That its place keeps the tank from being larger, and what a larger one would do. */
function limitedWords({ area_m2, most_m3, larger_m3, most, larger }: PlaceLimit, place: TankPlace): Wording {
  return words`The place of the tank limits it to ${figure(most_m3, 'm3')} (${limitName(place)}), so more panel is asked for: with ${figure(area_m2, 'm2')} a tank of ${figure(larger_m3, 'm3')} would leave ${count(larger.hours_h)} h above the limit and a hottest hour of ${figure(larger.peak_C, 'C')}, not ${count(most.hours_h)} h and ${figure(most.peak_C, 'C')}.`
}
