/* Public layouts, written from a known year (../shared/weather-examples): read right, asked about, or refused. */
import { mkdtempSync, writeFileSync } from 'node:fs'
import { gunzipSync } from 'node:zlib'
import { readFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { encodingOf, ledgerOf, openWeather } from '#model/outdoors/intake'
import { duskbank } from '../shell/run-shell.ts'
import { examples, FOLDER, HELD, tryExample } from './examples.ts'

const decode = (bytes: Uint8Array, encoding: string, fatal: boolean) =>
  new TextDecoder(encoding, { fatal }).decode(bytes)
const read = (bytes: Uint8Array) => decode(bytes, encodingOf(bytes, decode), false)

if (!HELD) console.log('tests/intake: ../shared/weather-examples is not here; its twelve files are not read')

describe.runIf(HELD)('worked layouts of public data', () => {
  const all = HELD ? examples() : []
  test.each(all.filter(({ expected }) => expected === 'read').map((one) => [one.file, one] as const))(
    '%s is read right without help',
    (_, example) => {
      expect(tryExample(example, read)).toMatchObject({ verdict: 'right' })
    },
  )

  test.each(
    all
      .filter(({ file }) => file.startsWith('home-station') || file.startsWith('logger-clock'))
      .map((one) => [one.file, one] as const),
  )('%s is asked about', (_, example) => {
    expect(tryExample(example, read)).toMatchObject({ verdict: 'asked' })
  })

  test('tenths explained by a legend: quantities, factors and units are taken from it', () => {
    const file = 'national-tenths-comment-block.csv'
    const text = read(new Uint8Array(gunzipSync(readFileSync(`${FOLDER}${file}.gz`))))
    const { mapping } = openWeather(text, { file })
    const used = Object.fromEntries(mapping!.columns.map((one) => [one.header, one]))
    expect(used['FH']).toMatchObject({ quantity: 'windSpeed', unit: 'm/s', scale: 0.1 })
    expect(used['T']).toMatchObject({ quantity: 'airTemp', unit: 'C', scale: 0.1 })
    expect(used['Q']).toMatchObject({ quantity: 'globalHorizontal', unit: 'J/cm2' })
    expect(used['RH']).toMatchObject({ quantity: 'ignore' })
    expect(used['U']).toMatchObject({ quantity: 'relativeHumidity', unit: '%' })
    expect(mapping!.site).toMatchObject({ latitude_deg: 35.84, longitude_deg: -106.31 })
  })

  test('the shell stops with the question and the option that answers it, and goes on with the answer', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'duskbank-intake-'))
    const place = ['--latitude', '35.84', '--longitude', '-106.31', '--altitude', '1585']
    const unpacked = (name: string): string => {
      const file = join(folder, name)
      writeFileSync(file, gunzipSync(readFileSync(`${FOLDER}${name}.gz`)))
      return file
    }
    const home = unpacked('home-station-two-line-tab.csv')
    const asked = await duskbank('sky', '--weather', home, ...place)
    expect(asked.code).toBe(2)
    expect(asked.out).toBe('')
    expect(asked.err).toMatch(/--yes-to windSpeed=mph/)
    const kept = join(folder, 'mapping.json')
    const told = await duskbank(
      'sky',
      '--weather',
      home,
      ...place,
      '--yes-to',
      'windSpeed=mph',
      '--save-mapping',
      kept,
    )
    expect(told.code, told.err).toBe(0)
    const again = await duskbank('sky', '--weather', home, ...place, '--mapping', kept)
    expect(again.code, again.err).toBe(0)
    expect(again.out).toBe(told.out)
    const utc = await duskbank('sky', '--weather', unpacked('logger-clock-on-utc.csv'), ...place)
    expect(utc.code).toBe(2)
    expect(utc.err).toMatch(/looks like UTC.*--clock-offset 0/)
  })
})

describe('faults that once passed in silence', () => {
  /** Four days of hourly rows; `header` and `row` are ours, the numbers made up. */
  const table = (header: string, row: (h: number) => string) =>
    [
      header,
      ...Array.from(
        { length: 96 },
        (_, h) =>
          `2023-06-${String(11 + Math.floor(h / 24)).padStart(2, '0')} ${String(h % 24).padStart(2, '0')}:00,${row(h)}`,
      ),
    ].join('\n')
  const sun = (h: number) => Math.max(0, Math.round(900 * Math.sin((((h % 24) - 5.5) / 13) * Math.PI)))
  const warm = (h: number) => (20 + 6 * Math.sin((((h % 24) - 9) / 24) * 2 * Math.PI)).toFixed(1)
  const quantitiesOf = (header: string, row: (h: number) => string) => {
    const { mapping } = openWeather(table(header, row), {
      file: 'made.csv',
      site: { latitude_deg: 40, longitude_deg: 0, altitude_m: 100, utcOffset_h: 0 },
    })
    return Object.fromEntries(
      mapping!.columns.map(({ header: name, quantity, unit }) => [name, `${quantity} ${unit}`.trim()]),
    )
  }

  test('battery, logger, indoor air, gust, soil and daily extremes are not the weather', () => {
    const used = quantitiesOf(
      'time,BattV_Avg (V),PTemp_C (C),Indoor Temp (C),Temp (C),Soil Temp (C),Temp Max (C),Wind Gust (m/s),Wind Speed (m/s),RH (%),GHI (W/m2)',
      (h) => `12.6,${warm(h)},22,${warm(h)},18,26,${5 + (h % 4)},${2 + (h % 3)},${50 + (h % 20)},${sun(h)}`,
    )
    expect(used['Temp (C)']).toBe('airTemp C')
    expect(used['Wind Speed (m/s)']).toBe('windSpeed m/s')
    for (const name of [
      'BattV_Avg (V)',
      'PTemp_C (C)',
      'Indoor Temp (C)',
      'Soil Temp (C)',
      'Temp Max (C)',
      'Wind Gust (m/s)',
    ])
      expect(used[name], name).toBe('ignore')
  })

  test('_F ends a filled column, not a temperature in Fahrenheit, where wind and pressure end so too', () => {
    const used = quantitiesOf(
      'time,TA_F,TA_F_QC,WS_F,PA_F,RH,SW_IN_F',
      (h) => `${warm(h)},0,${2 + (h % 3)},98.1,${50 + (h % 20)},${sun(h)}`,
    )
    expect(used['TA_F']).toBe('airTemp C')
    expect(used['TA_F_QC']).toBe('ignore')
  })

  test('wind without a unit is asked about; with one it is not', () => {
    const asked = (header: string) =>
      openWeather(
        table(header, (h) => `${warm(h)},${6 + (h % 3)},${50 + (h % 20)},${sun(h)}`),
        {
          file: 'made.csv',
          site: { latitude_deg: 40, longitude_deg: 0, altitude_m: 100, utcOffset_h: 0 },
        },
      ).questions.map(({ about }) => about)
    expect(asked('time,Temp (C),Wind,RH (%),GHI (W/m2)')).toEqual(['windSpeed'])
    expect(asked('time,Temp (C),Wind (km/h),RH (%),GHI (W/m2)')).toEqual([])
  })

  test('a table on UTC from the other side of the Earth is on UTC, and its place keeps its own time', () => {
    const text = [
      'latitude,longitude,elevation,utc_offset_seconds,timezone',
      '40,-105,1600,0,GMT',
      '',
      table(
        'time,Temp (C),Wind (m/s),RH (%),GHI (W/m2)',
        (h) => `${warm(h)},${2 + (h % 3)},${50 + (h % 20)},${sun(h + 17)}`,
      ),
    ].join('\n')
    const opened = openWeather(text, { file: 'made.csv' })
    expect(opened.mapping!.time.clockOffset_h).toBe(0)
    expect(opened.record!.site.utcOffset_h).toBe(-7)
  })

  test('the ledger names every used column with its reason', () => {
    const text = table(
      'time,Temp (C),Wind (m/s),RH (%),GHI (W/m2)',
      (h) => `${warm(h)},${2 + (h % 3)},${50 + (h % 20)},${sun(h)}`,
    )
    const opened = openWeather(text, {
      file: 'made.csv',
      site: { latitude_deg: 40, longitude_deg: 0, altitude_m: 100, utcOffset_h: 0 },
    })
    const lines = ledgerOf(opened)
    for (const name of ['time', 'Temp (C)', 'Wind (m/s)', 'RH (%)', 'GHI (W/m2)', 'clock', 'stamps', 'place'])
      expect(lines.find(({ what }) => what === name)?.why, name).toBeTruthy()
  })
})
