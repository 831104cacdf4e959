import type { LoopDuty } from '#model/panels/loop'
import { figure, said, type Problem, words, type Wording } from '#model/basis/words'
import type { YearResult } from '#model/building/year'

/** A run this long in an hour is a single step of the year, part of the hour. */
const ONE_STEP = 0.25 + 1e-9
/** Above this share of the pump's hours its runs are too short for the steps of the year. */
const OFTEN = 0.5

/** What is worth knowing about a design once its year has been run. */
export function designRemarks(
  loop: LoopDuty,
  year: YearResult,
  missedAgainFrom_m2: number | null = null,
): Problem[] {
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
  if (runsInBursts(year))
    remarks.push(
      remark(
        words`In most hours with the pump on, it runs for one quarter of an hour and has then cooled all there is to cool. The year is stepped in quarter hours, so the peak may be a few tenths of a degree off here.`,
        'Use less panel, or give it more to cool: a tank, or a heavier room.',
        'store.kind',
        'pump-bursts',
      ),
    )
  return remarks
}

/** True where most hours with the pump on hold one step of running: what is cooled follows the pump faster than the steps. */
export function runsInBursts({ pumpRun_frac }: Pick<YearResult, 'pumpRun_frac'>): boolean {
  const running = pumpRun_frac.filter((share) => share > 0)
  return running.filter((share) => share <= ONE_STEP).length > OFTEN * running.length
}
