import { Spine } from '#model/answer.ts'
import { skyErrors, type SkyErrors } from '#model/sky/errors.ts'
import { stampsOf } from '../stamps.ts'
import { emit, note, renderTable } from '../output.ts'
import { weatherOf } from '../weather-source.ts'
import type { Command } from './command.ts'

/** σ of the Stefan–Boltzmann law, W/m²K⁴ (CODATA 2018). */
const SIGMA = 5.670374419e-8

function line(label: string, { hours, bias_Wm2, rmse_Wm2 }: SkyErrors): string {
  return hours === 0
    ? `${label}: no hours`
    : `${label}: ${hours} h, bias ${bias_Wm2.toFixed(1)} W/m², RMSE ${rmse_Wm2.toFixed(1)} W/m²`
}

export const sky: Command = {
  summary:
    'hourly longwave from the sky; with --ignore-measured the model is judged against a measured column',
  options: {
    'ignore-measured': {
      type: 'boolean',
      help: 'work the sky out by the formula even where it was measured',
    },
  },
  run(options) {
    const weather = weatherOf(options)
    const { scenario } = options
    const useMeasured = options.values['ignore-measured'] !== true && scenario.sky.useMeasured
    const prepared = new Spine().skyOf({ ...scenario, sky: { ...scenario.sky, useMeasured } }, weather)
    const { total_Wm2, window_Wm2, offWindow_Wm2 } = prepared.sky
    const measured_Wm2 = weather.skyLongwave_Wm2
    const table = {
      time_local: stampsOf(weather),
      airTemp_C: weather.airTemp_C,
      dewPoint_C: weather.dewPoint_C,
      cloud_frac: weather.cloud_frac,
      sunAltitude_deg: prepared.sun.altitude_deg,
      skyLongwave_Wm2: total_Wm2,
      window_Wm2,
      offWindow_Wm2,
      skyTemp_C: total_Wm2.map((flux) => (flux / SIGMA) ** 0.25 - 273.15),
      ...(measured_Wm2 === undefined ? {} : { measured_Wm2 }),
    }
    if (measured_Wm2 !== undefined && !useMeasured) {
      const errors = skyErrors(weather, prepared.sun, total_Wm2, measured_Wm2)
      note('model − measured:')
      for (const [label, found] of Object.entries(errors)) note(`  ${line(label, found)}`)
    }
    emit(renderTable(table, options.format), options.out)
  },
}
