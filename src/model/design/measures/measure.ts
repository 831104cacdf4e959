import type { MeasureId, Scenario } from '#model/design/scenario'
import type { WeatherRecord } from '#model/outdoors/weather'

/** A change of the building or its use, beside panels and machines. */
export interface Measure {
  readonly id: MeasureId
  readonly name: string
  /** Needs work on the roof. */
  readonly onRoof: boolean
  /** True where it can change something in this building. */
  readonly fits: (scenario: Scenario) => boolean
  /** The description with so much of the measure, 0…1; 0 gives the description itself. */
  readonly apply: (scenario: Scenario, amount: number, weather: WeatherRecord) => Scenario
  /** Price in the units of the user's prices; the values shipped are invented. */
  readonly price: (scenario: Scenario) => number
  /** Electric power while it is used, W: night fans and ceiling fans. */
  readonly power_W: (scenario: Scenario) => number
  /** What it does beside cooling, for people. */
  readonly sideEffect: string
}
