import type { Spine } from '#model/answer.ts'
import type { Scenario } from '#model/scenario/fields.ts'
import { designRanges, type DesignRanges } from '#model/sheet/ranges.ts'
import type { Candidate } from '#model/sizing/size.ts'
import type { WeatherRecord } from '#model/weather/record.ts'
import { paced } from '#live/paced.ts'

/** A built design whose months are to be given ranges. */
export interface SheetRangeQuestion {
  readonly scenario: Scenario
  readonly built: Candidate
  readonly draws: number
}

/** Works the ranges out, draw by draw. */
export function sheetRanges(
  { scenario, built, draws }: SheetRangeQuestion,
  spine: Spine,
  weather: WeatherRecord,
  progress: (share: number) => void,
): Promise<DesignRanges> {
  const drawing = designRanges(scenario, built, (drawn) => spine.prepare(drawn, weather), draws)
  return paced(drawing, (done) => progress(done / draws))
}
