import type { Stages } from './stages.ts'
import { inventedLogFile, type InventedLog } from '#model/handover/as-built'
import { loopDensity_kgm3 } from '#model/design/assembly'
import type { Asked, Study } from './study.ts'

/** Which logger file to invent, beside the scenario and its weather. */
export type PracticeLog = Omit<InventedLog, 'fluidDensity_kgm3'>

/** An invented logger file with a known fault, as text. */

export function* practiceLog(
  _stages: Stages,
  { scenario, weather, ...wanted }: Asked & PracticeLog,
): Study<string> {
  const fluidDensity_kgm3 = loopDensity_kgm3(scenario)
  return { result: inventedLogFile(scenario, weather, { ...wanted, fluidDensity_kgm3 }), remarks: [] }
}
