import type { LoopDuty } from '#model/panels/loop'
import { figure, said, type Problem, words, type Wording } from '#model/basis/words'

/** What is worth knowing about a design once its year has been run. */
export function designRemarks(loop: LoopDuty, missedAgainFrom_m2: number | null = null): Problem[] {
  const remark = (wording: Wording, remedy = '', field = 'loop', code = 'loop-remark'): Problem => ({
    code,
    severity: 'warning',
    ...said(wording),
    remedy,
    place: { field },
  })
  const remarks = loop.remarks.map((wording) => remark(wording))
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
