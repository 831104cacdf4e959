import { localHour } from '#model/basis/hours'
import { adaptiveUpper_C } from './comfort.ts'
import { yardstick, type Yardstick } from './exceedance.ts'
import { feelsAir } from './kept-for.ts'
import { fanOffset_K, limitInMovingAir_C } from './moving-air.ts'
import type { TargetSpec } from './target.ts'
import type { WeatherRecord } from '#model/outdoors/weather'

/**
 * The target's yardstick in one climate: a fixed limit, or the adaptive standard's upper limit day by day; raised by what
 * moving air is worth where people are kept cool.
 */
export function yardstickOf(target: TargetSpec, weather: WeatherRecord): Yardstick {
  const offset_K = airOffset_K(target)
  const upper_C =
    target.kind === 'adaptive'
      ? adaptiveUpper_C(weather, target.adaptive)
      : new Float64Array(weather.hours).fill(target.limit_C)
  const felt_C = offset_K === 0 ? upper_C : upper_C.map((limit_C) => limitInMovingAir_C(limit_C, offset_K))
  return yardstick(target, weather, felt_C, Math.floor(localHour(weather, 0)))
}

/** Kelvins that the target's air speed is worth: 0 in still air, and where no people are kept cool. */
export function airOffset_K({ keptFor, airSpeed_ms }: TargetSpec): number {
  return feelsAir(keptFor) ? fanOffset_K(airSpeed_ms) : 0
}
