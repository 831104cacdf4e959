import { expect, test } from 'vitest'
import { describeWithData, FILES, opened } from './shared-data.ts'

/* Expected values are the printed ones of the files in ../shared/data, read off by eye; exact unless said. */
describeWithData('open data files open by their known layout', () => {
  test.each(Object.keys(FILES))('%s: a record, no error, every value finite', (file) => {
    const { record, mapping, problems } = opened(file)
    expect(problems.filter(({ severity }) => severity === 'error')).toEqual([])
    expect(mapping!.layout).not.toBeNull()
    for (const column of [
      'airTemp_C',
      'dewPoint_C',
      'pressure_Pa',
      'wind_ms',
      'globalHorizontal_Wm2',
      'directNormal_Wm2',
      'diffuseHorizontal_Wm2',
      'cloud_frac',
    ] as const) {
      expect(record![column].length).toBe(record!.hours)
      expect(record![column].every(Number.isFinite)).toBe(true)
      expect(record!.origins[column]).toBeDefined()
    }
    expect(record!.dewPoint_C.every((dew, i) => dew <= record!.airTemp_C[i]!)).toBe(true)
    expect(record!.cloud_frac.every((cloud) => cloud >= 0 && cloud <= 1)).toBe(true)
  })

  test('US typical year: site line, hour ending in local standard time, first and last row where they belong', () => {
    const { record } = opened('typical-year-36N-80W.csv')
    expect(record!.site).toMatchObject({
      latitude_deg: 36.1,
      longitude_deg: -79.95,
      altitude_m: 273,
      utcOffset_h: -5,
    })
    expect(record!.hours).toBe(8760)
    expect((record!.start_utcMs / 3_600_000 - 5) % 24).toBe(0)
    expect(record!.radiationMiddle_h).toBe(0.5)
    // row 01/01/1988,01:00: 10.0 °C, dew point 6.1, 993 mbar, 6.2 m/s, opaque cloud 10 tenths
    expect(record!.airTemp_C[0]).toBe(10)
    expect(record!.dewPoint_C[0]).toBe(6.1)
    expect(record!.pressure_Pa[0]).toBe(99_300)
    expect(record!.wind_ms[0]).toBe(6.2)
    expect(record!.cloud_frac[0]).toBe(1)
    // row 12/31/1980,24:00: 2.2 °C, dew point 0.6, 980 mbar
    expect(record!.airTemp_C[8759]).toBe(2.2)
    expect(record!.dewPoint_C[8759]).toBe(0.6)
    expect(record!.pressure_Pa[8759]).toBe(98_000)
  })

  test('European typical year: UTC turned to local standard midnight, irradiance 0.1761 h after the stamp', () => {
    const { record } = opened('typical-year-45N-8E.csv')
    expect(record!.site).toMatchObject({
      latitude_deg: 45,
      longitude_deg: 8,
      altitude_m: 250,
      utcOffset_h: 1,
    })
    expect(record!.radiationMiddle_h).toBe(0.1761)
    // hour 0 is 00:00 at UTC+1 = 23:00 UTC of 31 December (last row: 2.1 °C); hour 1 is the first row (2.04 °C)
    expect(Array.from(record!.airTemp_C.slice(0, 3))).toEqual([2.1, 2.04, 1.98])
    // row 20180101:0900: G 149, Gb 125.3, Gd 117, IR 289.1, SP 99600 → hour 10
    expect(record!.globalHorizontal_Wm2[10]).toBe(149)
    expect(record!.directNormal_Wm2[10]).toBe(125.3)
    expect(record!.diffuseHorizontal_Wm2[10]).toBe(117)
    expect(record!.skyLongwave_Wm2![10]).toBe(289.1)
    expect(record!.pressure_Pa[10]).toBe(99_600)
    expect(record!.origins.dewPoint_C!.kind).toBe('derived')
    expect(record!.origins.cloud_frac!.note).toContain('Crawford & Duchon 1999')
  })

  test('half-hourly satellite series: two snapshots averaged to an hour, their middle at a quarter past', () => {
    const { record } = opened('half-hourly-41N-109W-2017.csv')
    expect(record!.hours).toBe(8760)
    expect(record!.radiationMiddle_h).toBe(0.25)
    // rows 0:00 and 0:30: −8.4 and −8.7 °C; 0.3 and 0.6 m/s; 779 and 778 mbar
    expect(record!.airTemp_C[0]).toBeCloseTo(-8.55, 9)
    expect(record!.wind_ms[0]).toBeCloseTo(0.45, 9)
    expect(record!.pressure_Pa[0]).toBeCloseTo(77_850, 6)
  })

  test('surface-radiation day: the unsigned longitude is west, the night’s negative zeros are said', () => {
    const { record, problems, quality } = opened('surfrad-slv16001.dat')
    expect(record!.site).toMatchObject({
      latitude_deg: 37.7,
      longitude_deg: -105.92,
      altitude_m: 2317,
      utcOffset_h: -7,
    })
    expect(record!.hours).toBe(24)
    expect(problems.some(({ message }) => message.includes('without a sign'))).toBe(true)
    expect(quality.findings.some(({ kind }) => kind === 'offset')).toBe(true)
    // dw_ir is 186.3 W/m² through the first minutes of 00 UTC
    expect(record!.skyLongwave_Wm2![0]).toBeGreaterThan(180)
    expect(record!.skyLongwave_Wm2![0]).toBeLessThan(190)
  })

  test('ship series: place from its own columns, long gaps refused with dates until accepted', () => {
    const { record } = opened('ship-tropical-atlantic.txt')
    expect(record!.site.latitude_deg).toBeGreaterThan(13)
    expect(record!.site.latitude_deg).toBeLessThan(16)
    expect(record!.site.longitude_deg).toBeGreaterThan(-59)
    expect(record!.site.longitude_deg).toBeLessThan(-51)
    expect(new Date(record!.start_utcMs).getUTCFullYear()).toBe(2020)
    const refused = opened('ship-tropical-atlantic.txt', { acceptLongGaps: false })
    expect(refused.record).toBeNull()
    // gaps in the file between 26 January, 3 February and 9 February, seen in its jd column
    const [air] = refused.problems.filter(({ code }) => code === 'weather-long-gap')
    expect(air!.message).toMatch(
      /^Air temperature is missing for more than 48 h: 2020-01-26 \d\d:00 \(\d+ h\), 2020-02-03/,
    )
  })

  test('mountain table: kelvin to °C, pascals, a constant pressure found frozen, no site without the user', () => {
    const { record, quality } = opened('alpine-winter-47N-9E.txt')
    expect(record!.airTemp_C[0]).toBeCloseTo(285.7 - 273.15, 9)
    expect(record!.skyLongwave_Wm2![0]).toBe(329.3)
    expect(quality.findings.some(({ kind, quantity }) => kind === 'frozen' && quantity === 'pressure')).toBe(
      true,
    )
    const bare = opened('alpine-winter-47N-9E.txt', {
      site: { latitude_deg: undefined, longitude_deg: undefined },
    })
    expect(bare.record).toBeNull()
    expect(bare.problems.some(({ code }) => code === 'weather-site-missing')).toBe(true)
  })
})
