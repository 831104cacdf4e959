import type { Fault } from '#model/handover/as-built'
import { stop } from '#model/basis/words'
import type { WeatherRecord } from '#model/outdoors/weather'
import { answered, studies } from '../answered.ts'
import type { Options } from '../options.ts'
import { numberOption } from './number-option.ts'

/** An invented logger file with a known fault. */
export function rehearsed(options: Options, weather: WeatherRecord, area_m2: number): string {
  const days = numberOption(options, 'days', [2, 60], 14)
  const last = Math.floor(weather.hours / 24) - days
  const wanted = {
    scenario: options.scenario,
    weather,
    fault: faultOf(String(options.values['rehearse'])),
    firstDay: numberOption(options, 'first-day', [0, last], 0),
    days,
    seed: numberOption(options, 'seed', [0, 2 ** 31], 1),
    area_m2,
  }
  return answered(studies.practiceLog(wanted))
}

const FAULT_OF_NAME: Readonly<Record<string, Fault>> = {
  sound: 'none',
  lowFlow: 'lowFlow',
  dirty: 'dirty',
  shading: 'shading',
}

function faultOf(name: string): Fault {
  const fault = Object.hasOwn(FAULT_OF_NAME, name) ? FAULT_OF_NAME[name] : undefined
  if (fault !== undefined) return fault
  throw stop('bad-rehearsal', `--rehearse ${name} is not known.`, 'Use sound, lowFlow, dirty or shading.')
}
