import type { Prepared } from '#model/design/assembly'
import type { Scenario } from '#model/design/scenario'
import type { Exceedance } from '#model/design/target'
import type { WeatherRecord } from '#model/outdoors/weather'

/** What of the stages a trial of a combination needs. */
export interface Preparing {
  /** The stages up to the room left alone. @param lean  of the room left alone only its temperature is wanted */
  prepare(scenario: Scenario, record: WeatherRecord, lean?: boolean): Prepared
  /** How the room left alone does in some hours of the year, the others not counted. */
  leftAlone(scenario: Scenario, record: WeatherRecord, span: readonly [number, number]): Exceedance
}
