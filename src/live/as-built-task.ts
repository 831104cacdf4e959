import type { Spine } from '#model/answer.ts'
import { houseAgreement, type Agreement } from '#model/comparison/as-built-agreement.ts'
import { asBuiltCheck, type AsBuiltResult } from '#model/comparison/as-built-check.ts'
import { asBuiltInputs } from '#model/comparison/as-built-inputs.ts'
import { inventedLogFile, type InventedLog } from '#model/comparison/as-built-invented.ts'
import { openLog, type OpenedLog } from '#model/comparison/as-built-open.ts'
import { asFoundScenario } from '#model/comparison/as-built-resize.ts'
import { LOOP_TEMP_C } from '#model/loop/duty.ts'
import { fluidProperties } from '#model/loop/fluid.ts'
import { ProblemError, type Problem } from '#model/problem.ts'
import type { Scenario } from '#model/scenario/fields.ts'
import type { Stamp } from '#model/weather/mapping.ts'
import { isWholeYear, type WeatherRecord } from '#model/weather/record.ts'

/** A logger file and the design it is held against; the weather it ran under is the worker's. */
export interface AsBuiltQuestion {
  readonly scenario: Scenario
  readonly area_m2: number
  readonly file: string
  readonly text: string
  readonly stamp: Stamp
}

/** Store and room as logged and as simulated over the log's hours. */
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
  readonly warnings: readonly Problem[]
  readonly house: HouseReport
  /** The design with the panel as it was found. */
  readonly asFound: Scenario
}

export type RehearsalQuestion = Omit<InventedLog, 'fluidDensity_kgm3'> & { readonly scenario: Scenario }

/** Judges a logger file against the design in this weather. @throws ProblemError naming file, line and column */
export function asBuiltReport(
  { scenario, area_m2, file, text, stamp }: AsBuiltQuestion,
  spine: Spine,
  weather: WeatherRecord,
): AsBuiltReport {
  const opened = openLog(text, weather, { file, stamp, fluidDensity_kgm3: fluidDensity_kgm3(scenario) })
  const inputs = asBuiltInputs(scenario, opened.weather, opened.log, area_m2)
  const result = asBuiltCheck(inputs)
  const { house, problems } = housesApart(opened, { scenario, area_m2 }, spine, weather)
  return {
    result,
    clock: { start_utcMs: opened.weather.start_utcMs, site: opened.weather.site },
    panelIn_C: Float64Array.from(result.hours, (hour) => opened.log.panelIn_C[hour]!),
    air_C: Float64Array.from(result.hours, (hour) => opened.weather.airTemp_C[hour]!),
    columns: opened.columns,
    unused: opened.unused,
    warnings: [...opened.warnings, ...problems],
    house,
    asFound: asFoundScenario(scenario, result.departure, inputs.loop.flow_kgsm2),
  }
}

/** Store and room against a simulated year with the built area; only where logged and the weather is a whole year. */
function housesApart(
  { log, firstWeatherHour }: OpenedLog,
  { scenario, area_m2 }: Pick<AsBuiltQuestion, 'scenario' | 'area_m2'>,
  spine: Spine,
  weather: WeatherRecord,
): { house: HouseReport; problems: readonly Problem[] } {
  const nothing = { store: null, room: null }
  if ((log.store_C === null && log.room_C === null) || !isWholeYear(weather))
    return { house: nothing, problems: [] }
  try {
    const built = { ...scenario, target: { ...scenario.target, autoArea: false, area_m2 } }
    const { year } = spine.answer(built, weather)
    const span = (column: ArrayLike<number>) =>
      Float64Array.from({ length: log.hours }, (_, i) => column[firstWeatherHour + i]!)
    const simulated = { store_C: span(year.store_C), room_C: span(year.room_C) }
    return { house: houseAgreement(log, simulated), problems: [] }
  } catch (reason) {
    if (!(reason instanceof ProblemError)) throw reason
    return { house: nothing, problems: reason.problems }
  }
}

/** An invented logger file, as text. */
export function rehearsalFile({ scenario, ...wanted }: RehearsalQuestion, weather: WeatherRecord): string {
  return inventedLogFile(scenario, weather, { ...wanted, fluidDensity_kgm3: fluidDensity_kgm3(scenario) })
}

/** Density of the scenario's fluid, kg/m³: turns a metered volume into mass. */
function fluidDensity_kgm3({ loop }: Scenario): number {
  return fluidProperties(loop.fluid, loop.glycol_frac, LOOP_TEMP_C).density_kgm3
}
