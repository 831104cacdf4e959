import type { Spine } from '#model/answer.ts'
import { inventedLogFile, type InventedLog } from '#model/comparison/as-built-invented.ts'
import { loopDensity_kgm3 } from '#model/scenario/to-specs.ts'
import type { Asked, Study } from './study.ts'

/** Which logger file to invent, beside the scenario and its weather. */
export type PracticeLog = Omit<InventedLog, 'fluidDensity_kgm3'>

/** An invented logger file with a known fault, as text. */

export function* practiceLog(
  _stages: Spine,
  { scenario, weather, ...wanted }: Asked & PracticeLog,
): Study<string> {
  const fluidDensity_kgm3 = loopDensity_kgm3(scenario)
  return { result: inventedLogFile(scenario, weather, { ...wanted, fluidDensity_kgm3 }), remarks: [] }
}
