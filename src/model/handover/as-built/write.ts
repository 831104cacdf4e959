import { HOUR_MS } from '#model/basis/hours'
import type { AsBuiltLog } from './log.ts'
import type { WeatherRecord } from '#model/outdoors/weather'

/**
 * A log as a logger file that `openLog` reads back: local standard time of the middle of each hour, °C, L/min. The first
 * line, a comment, says where it comes from.
 */
export function writeLog(log: AsBuiltLog, weather: WeatherRecord, fluidDensity_kgm3: number): string {
  const litres = log.flow_kgs?.map((flow) => (flow / fluidDensity_kgm3) * 60_000) ?? null
  const columns: [string, Float64Array | null, number][] = [
    ['panel in (°C)', log.panelIn_C, 2],
    ['panel out (°C)', log.panelOut_C, 2],
    ['flow (L/min)', litres, 3],
    ['pump running', log.pumpRun_frac, 2],
    ['air (°C)', log.air_C, 2],
    ['plate (°C)', log.plate_C, 2],
    ['store (°C)', log.store_C, 2],
    ['room (°C)', log.room_C, 2],
  ]
  const kept = columns.filter((column): column is [string, Float64Array, number] => column[1] !== null)
  const lines = [`# ${log.basis}`, ['time', ...kept.map(([name]) => name)].join(',')]
  const begin_ms = weather.start_utcMs + weather.site.utcOffset_h * HOUR_MS + HOUR_MS / 2
  for (let hour = 0; hour < log.hours; hour++) {
    const stamp = new Date(begin_ms + hour * HOUR_MS).toISOString().slice(0, 16).replace('T', ' ')
    const cells = kept.map(([, values, digits]) =>
      Number.isFinite(values[hour]) ? values[hour]!.toFixed(digits) : '',
    )
    lines.push([stamp, ...cells].join(','))
  }
  return `${lines.join('\n')}\n`
}
