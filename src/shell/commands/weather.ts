import { stop } from '#model/basis/words'
import { ledgerOf } from '#model/outdoors/intake'
import { localHour } from '#model/basis/hours'
import type { WeatherRecord } from '#model/outdoors/weather'
import { answered, studies } from '../answered.ts'
import { note } from '../output.ts'
import { openedFile } from '../weather-source.ts'
import { openQuestions } from '../weather-questions.ts'
import type { Command } from './command.ts'

export const weather: Command = {
  summary:
    'how a weather file was read: every column and assumption with its reason, and a clear day against the sun',
  word: 'weather',
  options: {},
  run(options) {
    const file = options.values['weather']
    if (typeof file !== 'string') throw stop('no-weather', 'No weather file is named.', 'Write weather FILE.')
    const opened = openedFile(file, options)
    for (const { severity, message, remedy } of opened.problems) note(`${severity}: ${message} ${remedy}`)
    for (const { message, remedy } of openQuestions(opened, file)) note(`question: ${message} ${remedy}`)
    for (const { sentence } of opened.quality.findings) note(`quality: ${sentence}`)
    if (opened.record !== null) {
      const { sun } = answered(studies.sky({ scenario: options.scenario, weather: opened.record }))
      for (const line of clearDay(opened.record, sun.altitude_deg)) note(line)
    }
    const lines = ledgerOf(opened)
    const table = {
      what: lines.map(({ what }) => what),
      taken: lines.map(({ taken }) => taken),
      why: lines.map(({ why }) => why),
      certainty: lines.map(({ certainty }) => certainty),
    }
    return { body: { kind: 'table', table }, invented: [] }
  },
}

const WIDTH = 40

/** The sunniest day hour by hour: bars of its sunshine, and the sun's height as a mark. */
function clearDay(record: WeatherRecord, altitude_deg: Float64Array): string[] {
  const days = Math.floor(record.hours / 24)
  let best = { day: 0, sum: -1 }
  for (let day = 0; day < days; day++) {
    let sum = 0
    for (let h = 0; h < 24; h++) sum += record.globalHorizontal_Wm2[24 * day + h]!
    if (sum > best.sum) best = { day, sum }
  }
  const hours = Array.from({ length: Math.min(24, record.hours) }, (_, h) => 24 * best.day + h)
  const most = Math.max(...hours.map((h) => record.globalHorizontal_Wm2[h]!), 1)
  const highest = Math.max(...hours.map((h) => Math.sin((altitude_deg[h]! * Math.PI) / 180)), 0.01)
  return [
    'The sunniest day by local standard time (= the file, | where the sun’s height would put it):',
    ...hours.map((h) => {
      const bar = Math.round((WIDTH * record.globalHorizontal_Wm2[h]!) / most)
      const mark = Math.round((WIDTH * Math.max(0, Math.sin((altitude_deg[h]! * Math.PI) / 180))) / highest)
      const row = [...('='.repeat(bar) + ' '.repeat(WIDTH + 1 - bar))]
      row[mark] = '|'
      return `${String(Math.floor(localHour(record, h))).padStart(2, '0')} ${row.join('')} ${Math.round(record.globalHorizontal_Wm2[h]!)} W/m²`
    }),
  ]
}
