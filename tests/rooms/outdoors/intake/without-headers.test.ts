import { expect, test } from 'vitest'
import { type Quantity, openWeather } from '#model/outdoors/intake'
import { splitLine } from '#inside/model/outdoors/intake/table/split.ts'
import { describeWithData, FILES, opened, textOf } from './shared-data.ts'

/** The table of a file without its header, its columns in another order; and where each column went. */
function strippedAndShuffled(file: string, seed: number): { text: string; order: number[] } {
  const { table, columns } = opened(file).mapping!
  let state = seed
  const random = (): number => (state = (state * 1_103_515_245 + 12_345) % 2_147_483_648) / 2_147_483_648
  const order = columns
    .map(({ index }) => ({ index, key: random() }))
    .sort((a, b) => a.key - b.key)
    .map(({ index }) => index)
  const rows = textOf(file)
    .split(/\r?\n/)
    .slice(table.firstDataLine - 1)
    .map((line) => splitLine(line, table.separator))
    .filter((cells) => cells.length === columns.length)
  const glue = table.separator === 'blanks' ? '  ' : table.separator
  return { text: rows.map((cells) => order.map((index) => cells[index]).join(glue)).join('\n'), order }
}

/** Looked for by physics; the ship's latitude and longitude columns and all time columns are judged by their effect. */
const LOOKED_FOR: readonly Quantity[] = [
  'airTemp',
  'dewPoint',
  'relativeHumidity',
  'pressure',
  'windSpeed',
  'windDirection',
  'globalHorizontal',
  'directNormal',
  'diffuseHorizontal',
  'skyLongwave',
  'opaqueCloud',
  'totalCloud',
]

/* The right answer is the known layout's: each file opened twice, with its header and without. */
describeWithData('headers stripped and columns shuffled: recognised by physics alone, place known', () => {
  const cases = Object.keys(FILES).flatMap((file) => [1, 42].map((seed) => [file, seed] as const))
  test.each(cases)('%s, order %i: every quantity found in its own column and unit', (file, seed) => {
    const truth = opened(file)
    const { text, order } = strippedAndShuffled(file, seed)
    const { latitude_deg, longitude_deg, altitude_m, utcOffset_h } = truth.record!.site
    const guessed = openWeather(text, {
      file: 'shuffled.csv',
      acceptLongGaps: true,
      site: { latitude_deg, longitude_deg, altitude_m, utcOffset_h },
      time: {
        clockOffset_h: truth.mapping!.time.clockOffset_h!,
        stamp: truth.mapping!.time.stamp,
        year: 2020,
      },
    })
    for (const quantity of LOOKED_FOR) {
      const right = truth.mapping!.columns.find((column) => column.quantity === quantity)
      const found = guessed.mapping!.columns.find((column) => column.quantity === quantity)
      expect([quantity, found && order[found.index], found?.unit]).toEqual([
        quantity,
        right?.index,
        right?.unit,
      ])
    }
    expect(guessed.record!.hours).toBe(truth.record!.hours)
    const yearless = file.startsWith('ship')
    if (!yearless) expect(guessed.record!.start_utcMs).toBe(truth.record!.start_utcMs)
    for (const column of ['airTemp_C', 'dewPoint_C', 'globalHorizontal_Wm2'] as const) {
      expect(guessed.record![column]).toEqual(truth.record![column])
    }
  })

  test('without a place the whole-year files are still recognised, and only the place is asked for', () => {
    for (const file of [
      'typical-year-36N-80W.csv',
      'typical-year-45N-8E.csv',
      'half-hourly-41N-109W-2017.csv',
    ]) {
      const truth = opened(file)
      const { text, order } = strippedAndShuffled(file, 5)
      const guessed = openWeather(text, { file: 'shuffled.csv' })
      for (const quantity of LOOKED_FOR) {
        const right = truth.mapping!.columns.find((column) => column.quantity === quantity)
        const found = guessed.mapping!.columns.find((column) => column.quantity === quantity)
        expect([file, quantity, found && order[found.index]]).toEqual([file, quantity, right?.index])
      }
      expect(guessed.problems.filter(({ severity }) => severity === 'error').map(({ code }) => code)).toEqual(
        ['weather-site-missing'],
      )
    }
  })

  test('a guess says how sure it is and what else the column could be', () => {
    const { text } = strippedAndShuffled('typical-year-45N-8E.csv', 3)
    const { mapping, questions } = openWeather(text, {
      file: 'shuffled.csv',
      site: { latitude_deg: 45, longitude_deg: 8 },
    })
    const air = mapping!.columns.find(({ quantity }) => quantity === 'airTemp')!
    expect(air.basis).toBe('physics')
    expect(air.confidence).toBeGreaterThan(0.5)
    expect(air.confidence).toBeLessThan(1)
    expect(air.alternatives.length).toBeGreaterThan(0)
    expect(questions.map(({ about }) => about)).toContain('columns')
  })
})
