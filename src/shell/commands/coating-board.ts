import { boardHourOf, WIND_AT_BOARD_FRAC, type BoardHour } from '#model/panels/readings'
import type { WeatherRecord } from '#model/outdoors/weather'
import { answered, studies } from '../answered.ts'
import type { Options } from '../options.ts'
import type { Table } from '../output.ts'
import { numberOption } from '../number-option.ts'

/** What the scenario's coating and those of the literature would read, bare and under the scenario's film. */
export function boardTable(options: Options, weather: WeatherRecord | undefined): Table {
  const rows = answered(studies.board({ scenario: options.scenario, hour: hourOf(options, weather) }))
  const column = <K extends keyof (typeof rows)[number]>(name: K) => rows.map((row) => row[name])
  return {
    coating: column('coating'),
    cover: column('cover'),
    light: column('light'),
    surface_C: column('surface_C'),
    againstAir_K: column('againstAir_K'),
    low_C: column('low_C'),
    high_C: column('high_C'),
    wet: column('wet'),
  }
}

function hourOf(options: Options, weather: WeatherRecord | undefined): BoardHour {
  if (weather !== undefined) {
    return boardHourOf(weather, numberOption(options, 'hour', [0, weather.hours - 1]), WIND_AT_BOARD_FRAC)
  }
  const airTemp_C = numberOption(options, 'air', [-40, 60])
  return {
    airTemp_C,
    dewPoint_C: numberOption(options, 'dew', [-50, airTemp_C]),
    wind_ms: numberOption(options, 'wind', [0, 30], 1),
    sun_Wm2: numberOption(options, 'sun', [0, 1500], 900),
    shade_Wm2: numberOption(options, 'shade', [0, 600], 60),
    skyLongwave_Wm2: null,
    cloud_frac: numberOption(options, 'cloud', [0, 1], 0),
  }
}
