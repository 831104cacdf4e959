import { FAULTS, type Fault } from '#model/handover/as-built'
import { stop } from '#model/basis/words'
import type { WeatherRecord } from '#model/outdoors/weather'
import { answered, studies } from '../answered.ts'
import type { Options } from '../options.ts'
import { numberOption } from '../number-option.ts'

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

function faultOf(name: string): Fault {
  const fault = name === 'sound' ? 'none' : FAULTS.find((known) => known === name && known !== 'none')
  if (fault !== undefined) return fault
  const known = ['sound', ...FAULTS.filter((each) => each !== 'none')]
  throw stop('bad-rehearsal', `--rehearse ${name} is not known.`, `Use ${known.join(', ')}.`)
}
