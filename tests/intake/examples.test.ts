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
    const answered = await duskbank(
      'sky',
      '--weather',
      home,
      ...place,
      '--yes-to',
      'windSpeed=mph',
      '--save-mapping',
      kept,
    )
    expect(answered.code, answered.err).toBe(0)
    const again = await duskbank('sky', '--weather', home, ...place, '--mapping', kept)
    expect(again.code, again.err).toBe(0)
    expect(again.out).toBe(answered.out)
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

  const site = { latitude_deg: 40, longitude_deg: 0, altitude_m: 100, utcOffset_h: 0 }

  test('a potential temperature is no longwave, and neither is an outgoing one', () => {
    const used = quantitiesOf(
      'time,Temp (C),Wind (m/s),RH (%),GHI (W/m2),Potential temperature (K),theta_v,LW_OUT (W/m2),LW_IN (W/m2)',
      (h) =>
        `${warm(h)},${2 + (h % 3)},${50 + (h % 20)},${sun(h)},${300 + (h % 5)},${301 + (h % 4)},${430 + (h % 9)},${340 + (h % 7)}`,
    )
    expect(used['LW_IN (W/m2)']).toBe('skyLongwave W/m2')
    for (const name of ['Potential temperature (K)', 'theta_v', 'LW_OUT (W/m2)'])
      expect(used[name], name).toBe('ignore')
  })

  test('decimal commas between quotation marks are read whole', () => {
    const comma = (value: number | string): string => `"${String(value).replace('.', ',')}"`
    const text = table('time,Temp (C),Wind (m/s),RH (%),GHI (W/m2)', (h) =>
      [warm(h), `${2 + (h % 3)}.5`, `${50 + (h % 20)}.5`, `${sun(h)}.5`].map(comma).join(','),
    )
    const { record } = openWeather(text, { file: 'made.csv', site })
    expect(record!.airTemp_C[12]).toBeCloseTo(Number(warm(12)), 9)
    expect(record!.wind_ms[12]).toBeCloseTo(2.5, 9)
  })

  test.each(['# Elevation (ft): 5200', '# elev [feet] 5200', '# Altitude: 5200 ft'])(
    'a height in feet: %s',
    (above) => {
      const text = `${above}\n${table('time,Temp (C),Wind (m/s),RH (%),GHI (W/m2)', (h) => `${warm(h)},2,50,${sun(h)}`)}`
      expect(openWeather(text, { file: 'made.csv' }).mapping!.site.altitude_m).toBeCloseTo(1585, 0)
    },
  )

  test('a table of two rows leaves a reason', () => {
    const text = table('time,Temp (C),Wind (m/s),RH (%),GHI (W/m2)', (h) => `${warm(h)},2,50,${sun(h)}`)
    const { record, problems } = openWeather(text.split('\n').slice(0, 3).join('\n'), {
      file: 'made.csv',
      site,
    })
    if (record === null) expect(problems.filter(({ severity }) => severity === 'error')).not.toEqual([])
    else expect(problems.map(({ code }) => code)).toContain('weather-not-a-year')
  })

  test.each([
    ['# Latitude: S 33.9\n# Longitude: E 18.6', -33.9, 18.6],
    ['# Latitude: 33.9 S\n# Longitude: 18.6 E', -33.9, 18.6],
    ['# lat = 33.9S, lon = 70.6W', -33.9, -70.6],
    ['Lat (N),Lon (E),Height\n52.1,5.18,2', 52.1, 5.18],
    [
      '# STN      LON(east)   LAT(north)     ALT(m)  NAME\n# 260      5.180       52.100         1.90  Place',
      52.1,
      5.18,
    ],
    ['Latitude [1°N]: 47.5\nLongitude [1°E]: 8.2', 47.5, 8.2],
    ['Latitude (1N),47.5\nLongitude (1E),8.2', 47.5, 8.2],
  ])('the place above a table: %s', (above, latitude_deg, longitude_deg) => {
    const text = `${above}\n${table('time,Temp (C),Wind (m/s),RH (%),GHI (W/m2)', (h) => `${warm(h)},2,50,${sun(h)}`)}`
    expect(openWeather(text, { file: 'made.csv' }).mapping!.site).toMatchObject({
      latitude_deg,
      longitude_deg,
    })
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
        { file: 'made.csv', site },
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
