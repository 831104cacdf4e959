import type { InventedPlace } from './place.ts'
import { summariseClimate, type WeatherRecord } from '#model/outdoors/weather'

/** One line of `climate-samples/index.json`. */
export interface SampleEntry {
  readonly id: string
  /** Always true: no such place was measured. */
  readonly invented: true
  readonly name: string
  readonly type: string
  readonly description: string
  readonly latitude_deg: number
  readonly longitude_deg: number
  readonly altitude_m: number
  readonly annualMean_C: number
  /** Three warmest and three coldest months in a row. */
  readonly summerMean_C: number
  readonly winterMean_C: number
  /** File name beside the index. */
  readonly file: string
}

/** What the index says of a sample; means to 0.1 K. */
export function sampleEntry(place: InventedPlace, record: WeatherRecord): SampleEntry {
  const { annualMean_C, summerMean_C, winterMean_C } = summariseClimate(record)
  const { name, latitude_deg, longitude_deg, altitude_m } = place.site
  return {
    id: place.id,
    invented: true,
    name,
    type: place.type,
    description: place.description,
    latitude_deg,
    longitude_deg,
    altitude_m,
    annualMean_C: tenth(annualMean_C),
    summerMean_C: tenth(summerMean_C),
    winterMean_C: tenth(winterMean_C),
    file: `${place.id}.csv`,
  }
}

function tenth(value: number): number {
  return Number(value.toFixed(1))
}
