import type { Stages } from './stages.ts'
import {
  houseAgreement,
  type Agreement,
  asBuiltCheck,
  type AsBuiltResult,
  asBuiltInputs,
  openLog,
  type OpenedLog,
  asFoundScenario,
  type FlowUnitName,
  type LogColumns,
} from '#model/handover/as-built'
import { ProblemError, type Problem } from '#model/basis/words'
import { type Scenario, hold } from '#model/design/scenario'
import { loopDensity_kgm3 } from '#model/design/assembly'
import { loopDuty } from '#model/panels/loop'
import type { Stamp } from '#model/outdoors/intake'
import { isWholeYear, type WeatherRecord } from '#model/outdoors/weather'
import type { Asked, Study } from './study.ts'

/** A logger file and the design it is held against. */
export interface BuiltPanel extends Asked {
  readonly area_m2: number
  readonly file: string
  readonly text: string
  /** Period a row covers; the moment of its stamp when left out. */
  readonly stamp?: Stamp
  /** Columns chosen by hand, and the unit of the flow. */
  readonly columns?: LogColumns
  readonly flowUnit?: FlowUnitName
}

/** Store and room as logged and as simulated over the log's hours; null where not logged. */
export interface HouseReport {
  readonly store: Agreement | null
  readonly room: Agreement | null
}

export interface AsBuiltReport {
  readonly result: AsBuiltResult
  /** Beginning and site of the log's hours, for the clock. */
  readonly clock: Pick<WeatherRecord, 'start_utcMs' | 'site'>
  /** Inlet and outdoor temperature in the judged hours, index for index with the result's columns. */
  readonly panelIn_C: Float64Array
  readonly air_C: Float64Array
  readonly columns: OpenedLog['columns']
  readonly unused: OpenedLog['unused']
  readonly basis: string
  readonly warnings: readonly Problem[]
  readonly house: HouseReport
  /** The design with the panel as it was found. */
  readonly asFound: Scenario
  /** Hours a year over the target's limit with the built area; null without a fault or a whole year of weather. */
  readonly overLimit: { readonly designed_h: number; readonly asFound_h: number } | null
}

/** Judges a logger file against the design in this weather. @throws ProblemError naming file, line and column */
export function* checkAsBuilt(stages: Stages, q: BuiltPanel): Study<AsBuiltReport> {
  const { scenario, weather, area_m2, file, text, stamp, columns, flowUnit } = q
  const fluidDensity_kgm3 = loopDensity_kgm3(scenario)
  const opened = openLog(text, weather, {
    file,
    fluidDensity_kgm3,
    ...(stamp && { stamp }),
    ...(columns && { columns }),
    ...(flowUnit && { flowUnit }),
  })
  const inputs = asBuiltInputs(scenario, opened.weather, opened.log, area_m2)
  const result = asBuiltCheck(inputs)
  yield { share: 0.5 }
  const { flow_kgsm2 } = inputs.loop
  const { fluidToPlate_Wm2K } = loopDuty(inputs.loop, area_m2)
  const asFound = asFoundScenario(scenario, result.departure, { flow_kgsm2, fluidToPlate_Wm2K })
  const { house, problems } = houseOf(stages, q, opened)
  yield { share: 0.8 }
  const overLimit = result.faults.length === 0 ? null : hoursOver(stages, q, asFound)
  const warnings = [...opened.warnings, ...problems]
  return {
    result: {
      result,
      clock: { start_utcMs: opened.weather.start_utcMs, site: opened.weather.site },
      panelIn_C: Float64Array.from(result.hours, (hour) => opened.log.panelIn_C[hour]!),
      air_C: Float64Array.from(result.hours, (hour) => opened.weather.airTemp_C[hour]!),
      columns: opened.columns,
      unused: opened.unused,
      basis: opened.log.basis,
      warnings,
      house,
      asFound,
      overLimit,
    },
    remarks: warnings,
  }
}

/** Hours over the limit in a whole year with the built area, as designed and as found. */
function hoursOver(
  stages: Stages,
  { scenario, weather, area_m2 }: BuiltPanel,
  asFound: Scenario,
): AsBuiltReport['overLimit'] {
  if (!isWholeYear(weather)) return null
  const over = (built: Scenario) =>
    stages
      .answer(hold(built, { area_m2 }), weather)
      .months.reduce((sum, { hoursOver_h }) => sum + hoursOver_h, 0)
  try {
    return { designed_h: over(scenario), asFound_h: over(asFound) }
  } catch (reason) {
    if (reason instanceof ProblemError) return null
    throw reason
  }
}

/** Store and room against a simulated year with the built area; only where logged and the weather is a whole year. */
function houseOf(
  stages: Stages,
  { scenario, weather, area_m2 }: BuiltPanel,
  { log, firstWeatherHour }: OpenedLog,
): { house: HouseReport; problems: readonly Problem[] } {
  const nothing = { store: null, room: null }
  if ((log.store_C === null && log.room_C === null) || !isWholeYear(weather))
    return { house: nothing, problems: [] }
  try {
    const { year } = stages.answer(hold(scenario, { area_m2 }), weather)
    const span = (column: ArrayLike<number>) =>
      Float64Array.from({ length: log.hours }, (_, i) => column[firstWeatherHour + i]!)
    const simulated = { store_C: span(year.store_C), room_C: span(year.room_C) }
    return { house: houseAgreement(log, simulated), problems: [] }
  } catch (reason) {
    if (!(reason instanceof ProblemError)) throw reason
    return { house: nothing, problems: reason.problems }
  }
}
