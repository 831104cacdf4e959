import { problemSentence } from '#model/basis/words'
import { createStudies, finish, type Step, type Study } from '#studies/index.ts'
import { note } from './output.ts'

/** The questions of this run; stages that two of them share are worked out once. */
export const studies = createStudies()

/** Runs a study to its end; its remarks go to standard error. */
export function answered<Result, SoFar>(
  study: Study<Result, SoFar>,
  onStep?: (step: Step<SoFar>) => void,
): Result {
  const { result, remarks } = finish(study, onStep)
  for (const remark of remarks) note(`warning: ${problemSentence(remark)}`)
  return result
}
