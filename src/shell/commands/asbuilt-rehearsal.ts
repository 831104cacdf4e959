import { gaussian, seededRandom } from '#model/climate/random.ts'
import { asBuiltInputs, emptyLog } from '#model/comparison/as-built-inputs.ts'
import type { Departure } from '#model/comparison/as-built-plant.ts'
import { rehearsalLog } from '#model/comparison/as-built-rehearsal.ts'
import { weatherSpan } from '#model/comparison/as-built-span.ts'
import { writeLog } from '#model/comparison/as-built-write.ts'
import { stop } from '#model/problem.ts'
import type { WeatherRecord } from '#model/weather/record.ts'
import type { Options } from '../options.ts'
import { fluidDensity_kgm3 } from './fluid-density.ts'
import { numberOption } from './number-option.ts'

/** An invented logger file with a known fault. */
export function rehearsed(options: Options, weather: WeatherRecord, area_m2: number): string {
  const days = numberOption(options, 'days', [2, 60], 14)
  const last = Math.floor(weather.hours / 24) - days
  const firstDay = numberOption(options, 'first-day', [0, last], 0)
  const span = { logFrom: 0, weatherFrom: 24 * Math.floor(firstDay), hours: 24 * Math.floor(days) }
  const part = weatherSpan(weather, span)
  const inputs = asBuiltInputs(options.scenario, part, emptyLog(part.hours), area_m2)
  const random = seededRandom(numberOption(options, 'seed', [0, 2 ** 31], 1))
  const log = rehearsalLog(inputs, {
    fault: faultOf(String(options.values['rehearse']), span.hours),
    normal: () => gaussian(random),
    allDay: true,
    flowMeter: false,
    inletMean_C: part.airTemp_C.reduce((sum, t) => sum + t, 0) / part.hours,
    inletSwing_K: 4,
  })
  return writeLog(log, part, fluidDensity_kgm3(options))
}

function faultOf(name: string, hours: number): Partial<Departure> {
  switch (name) {
    case 'sound':
      return {}
    case 'lowFlow':
      return { flowLog: Math.log(0.5) }
    case 'dirty':
      return { soil_frac: 0.1, veil_frac: 0.08 }
    case 'shading':
      return { shade_frac: 0.4, shadeFrom: Math.floor(hours / 2) }
    default:
      throw stop('bad-rehearsal', `--rehearse ${name} is not known.`, 'Use sound, lowFlow, dirty or shading.')
  }
}
