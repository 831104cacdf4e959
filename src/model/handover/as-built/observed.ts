import { departedHours, type PanelPart } from './departed.ts'
import { AS_DESIGNED, type Departure } from './departure.ts'
import { HOUR_ERRORS, nightOf } from './errors.ts'
import type { AsBuiltInputs } from './inputs-type.ts'
import { runningHours } from './log.ts'
import { predicted, type Predicted } from './plant.ts'
import { flowRows, inletRows, nightRows, type OtherRow } from './tank-rows.ts'

/** One thing read from the log that a prediction can be held against. */
export interface ObservedRow {
  readonly kind: 'fall' | 'plate' | OtherRow['kind']
  /** Hour of the log; −1 for what belongs to the log as a whole. */
  readonly hour: number
  readonly night: number
  /** Own error of the reading, one standard deviation, in the unit of the row. */
  readonly noise: number
}

/** Sensors on the plate: scatter from hour to hour, K. Common practice, no source. */
const PLATE_NOISE_K = 0.3

/** The departures that change what the weather does to the panel. */
const WEATHER_KEYS = [
  'windLog',
  'sky_Wm2',
  'soil_frac',
  'veil_frac',
  'shade_frac',
  'shadeFrom',
  'dayShade_frac',
  'dayShadeFrom_h',
  'dayShadeTo_h',
  'sunGain_frac',
  'back_Wm2K',
  'torn_frac',
  'clock_h',
] as const satisfies readonly (keyof Departure)[]
/** And those that change what the loop makes of it. */
const LOOP_KEYS = [
  'flowLog',
  'dead_frac',
  'airy_frac',
  'bondLog',
] as const satisfies readonly (keyof Departure)[]

/** The log as rows of readings, and what any departure predicts for them. */
export class Observed {
  readonly hours: readonly number[]
  readonly rows: readonly ObservedRow[]
  readonly measured: Float64Array
  readonly hasPlate: boolean
  private readonly others: readonly OtherRow[]
  private weather: { key: string; parts: readonly PanelPart[] } | null = null
  private panel: { key: string; found: Predicted } | null = null

  constructor(readonly inputs: AsBuiltInputs) {
    const { log } = inputs
    this.hours = runningHours(log)
    this.hasPlate = log.plate_C !== null && this.hours.every((hour) => Number.isFinite(log.plate_C![hour]))
    const own = (kind: 'fall' | 'plate', noise: number) =>
      this.hours.map((hour): ObservedRow => ({ kind, hour, night: nightOf(hour), noise }))
    this.others = [...inletRows(inputs), ...nightRows(inputs), ...flowRows(inputs)]
    this.rows = [
      ...own('fall', HOUR_ERRORS.sensors_K),
      ...(this.hasPlate ? own('plate', PLATE_NOISE_K) : []),
      ...this.others,
    ]
    this.measured = Float64Array.from([
      ...this.hours.map((hour) => log.panelIn_C[hour]! - log.panelOut_C[hour]!),
      ...(this.hasPlate ? this.hours.map((hour) => log.plate_C![hour]!) : []),
      ...this.others.map(({ measured }) => measured),
    ])
  }

  /** What each row should read, in its own unit. */
  predict(departure: Departure): Float64Array {
    const { fall_K, plate_C } = this.panelOf(departure)
    const n = this.hours.length
    const out = new Float64Array(this.rows.length)
    for (let i = 0; i < n; i++) out[i] = fall_K[i]! + departure.offset_K
    if (this.hasPlate) for (let i = 0; i < n; i++) out[n + i] = plate_C[i]! + departure.plateSensor_K
    const first = this.hasPlate ? 2 * n : n
    this.others.forEach((row, i) => (out[first + i] = row.predict(departure)))
    return out
  }

  /** Fall and plate without sensor errors, kept while only sensors and tank change. */
  private panelOf(departure: Departure): Predicted {
    const weatherKey = WEATHER_KEYS.map((name) => departure[name]).join(' ')
    const key = `${weatherKey} ${LOOP_KEYS.map((name) => departure[name]).join(' ')}`
    if (this.panel?.key === key) return this.panel.found
    if (this.weather?.key !== weatherKey)
      this.weather = { key: weatherKey, parts: departedHours(this.inputs, departure) }
    const found = predicted(this.inputs, this.weather.parts, {
      ...departure,
      offset_K: AS_DESIGNED.offset_K,
      plateSensor_K: AS_DESIGNED.plateSensor_K,
    })
    this.panel = { key, found }
    return found
  }
}
