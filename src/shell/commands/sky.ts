import type { SkyErrors, SkyJudgement } from '#model/outdoors/sky'
import { answered, studies } from '../answered.ts'
import { stampsOf } from '../stamps.ts'
import { inventedClimates } from '../invented-parts.ts'
import { note } from '../output.ts'
import { weatherOf } from '../weather-source.ts'
import type { Command } from './command.ts'

function line(label: string, { hours, bias_Wm2, rmse_Wm2 }: SkyErrors): string {
  return hours === 0
    ? `${label}: no hours`
    : `${label}: ${hours} h, bias ${bias_Wm2.toFixed(1)} W/m², RMSE ${rmse_Wm2.toFixed(1)} W/m²`
}

function sayJudgement({ model, formula }: SkyJudgement): void {
  note('model − measured:')
  for (const [label, found] of Object.entries(model)) note(`  ${line(label, found)}`)
  note('clear-sky formula without cloud − measured:')
  for (const [label, found] of Object.entries(formula)) note(`  ${line(label, found)}`)
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
    const ignoreMeasured = options.values['ignore-measured'] === true
    const report = answered(studies.sky({ scenario, weather, ignoreMeasured }))
    const { total_Wm2, window_Wm2, offWindow_Wm2 } = report.sky
    const measured_Wm2 = weather.skyLongwave_Wm2
    const table = {
      time_local: stampsOf(weather),
      airTemp_C: weather.airTemp_C,
      dewPoint_C: weather.dewPoint_C,
      cloud_frac: weather.cloud_frac,
      sunAltitude_deg: report.sun.altitude_deg,
      skyLongwave_Wm2: total_Wm2,
      window_Wm2,
      offWindow_Wm2,
      skyTemp_C: report.skyTemp_C,
      ...(measured_Wm2 === undefined ? {} : { measured_Wm2 }),
    }
    if (report.judgement !== null) sayJudgement(report.judgement)
    return { body: { kind: 'table', table }, invented: inventedClimates([weather]) }
  },
}
