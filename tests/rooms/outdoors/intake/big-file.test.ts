import { expect, test } from 'vitest'
import { openWeatherStream } from '#inside/model/outdoors/intake/open.ts'

const HEADER =
  'time;temp (°C);dew point (°C);rh (%);pressure (hPa);wind speed (m/s);wind dir (deg);ghi (W/m2);dni (W/m2);dhi (W/m2);longwave (W/m2);remark;u1;u2;u3;u4\n'

/** A made-up year of one-minute rows, about 60 MB, in pieces as a file reader gives them. */
function* minutes(): Generator<string> {
  yield `Latitude: 40.0\nLongitude: -105.0\nElevation: 1500 m\n${HEADER}`
  let piece = ''
  for (let i = 0; i < 525_600; i += 1) {
    const stamp = new Date(Date.UTC(2023, 0, 1) + i * 60_000).toISOString().slice(0, 16).replace('T', ' ')
    const sine = Math.max(0, Math.sin(((i / 60 - 6) / 12) * Math.PI))
    const temp = 10 + 8 * sine + 3 * Math.sin(i / 9999)
    piece += `${stamp};${temp.toFixed(2)};${(temp - 6).toFixed(2)};${(60 - 20 * sine).toFixed(1)};${(850 + Math.sin(i / 5000)).toFixed(2)};${(2 + Math.sin(i)).toFixed(3)};${(i * 7) % 360};${(800 * sine).toFixed(2)};${(700 * sine).toFixed(2)};${(100 * sine).toFixed(2)};${(280 + 20 * sine).toFixed(2)};ok;12.345678;0.123456;7.654321;3.141593\n`
    if (piece.length > 1 << 18) {
      yield piece
      piece = ''
    }
  }
  yield piece
}

/* Issue 3: a 60 MB one-minute file opens under 10 s and 500 MB. Writing the rows is part of the time measured here. */
test('a 60 MB one-minute year: under 10 s of this process’s own time and 500 MB more memory, with progress', async () => {
  const before = process.memoryUsage().rss
  const start = process.cpuUsage()
  let most = 0
  let calls = 0
  let taken = 0
  const { record, problems } = await openWeatherStream(minutes(), { file: 'minutes.csv' }, (characters) => {
    calls += 1
    taken = characters
    if (calls % 20 === 0) most = Math.max(most, process.memoryUsage().rss - before)
  })
  const { user, system } = process.cpuUsage(start)
  most = Math.max(most, process.memoryUsage().rss - before)
  console.info(
    `one-minute year: ${(taken / 1e6).toFixed(0)} MB, ${((user + system) / 1e6).toFixed(1)} s, ${(most / 1e6).toFixed(0)} MB more memory`,
  )
  expect(problems.filter(({ severity }) => severity === 'error')).toEqual([])
  expect(record!.hours).toBe(8760)
  expect(record!.airTemp_C[12]).toBeCloseTo(18, 0)
  expect(taken).toBeGreaterThan(58e6)
  expect(calls).toBeGreaterThan(100)
  expect((user + system) / 1e6).toBeLessThan(10)
  expect(most).toBeLessThan(500e6)
})
