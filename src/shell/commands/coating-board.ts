import { USUAL_BOARD, type BenchBoard } from '#model/bench/reading.ts'
import {
  boardHourOf,
  HOME_HALF_WIDTH,
  predictBoard,
  WIND_AT_BOARD_FRAC,
  type BoardCoating,
  type BoardHour,
} from '#model/bench/test-board.ts'
import { agedFilm } from '#model/coating/ageing.ts'
import { KNOWN_COATINGS } from '#model/coating/library.ts'
import type { Scenario } from '#model/scenario/fields.ts'
import type { WeatherRecord } from '#model/weather/record.ts'
import type { Options } from '../options.ts'
import type { Table } from '../output.ts'
import { numberOption } from './number-option.ts'

/** What the scenario's coating and those of the literature would read, bare and under the scenario's film. */
export function boardTable(options: Options, weather: WeatherRecord | undefined): Table {
  const rows = predictBoard(boardOf(options.scenario), coatings(options.scenario), hourOf(options, weather))
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

function boardOf({ cover, panel, site }: Scenario): BenchBoard {
  return {
    ...USUAL_BOARD,
    horizon_deg: site.horizon_deg,
    windModel: panel.windModel,
    film: agedFilm(cover, 0),
  }
}

function coatings({ coating }: Scenario): BoardCoating[] {
  const own = { name: 'Own coating', optics: coating, ...HOME_HALF_WIDTH }
  return [own, ...KNOWN_COATINGS.map((known) => ({ name: known.name, optics: known, ...HOME_HALF_WIDTH }))]
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
