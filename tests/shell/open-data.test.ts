import { existsSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { describe, expect, test } from 'vitest'
import { duskbank, readCsv } from './run-shell.ts'

const FOLDER = fileURLToPath(new URL('../../../shared/data/', import.meta.url))
const present = existsSync(`${FOLDER}typical-year-36N-80W.csv`)
if (!present) console.warn('shell tests: ../shared/data is not there, so the command line is not tried on it')

describe.runIf(present).each(['typical-year-36N-80W.csv', 'typical-year-45N-8E.csv'])('%s', (file) => {
  const weather = ['--weather', `${FOLDER}${file}`]

  test('size gives an area with a range, or the floor that is reached', async () => {
    const { code, out, err } = await duskbank('size', ...weather, '--draws', '10', '--format', 'json')
    expect(code, err).toBe(0)
    const found = JSON.parse(out) as Record<string, number | string | null>
    console.log(
      `${file}: ${found['result']}, ${found['areaNeeded_m2'] ?? 'no'} m² (${found['areaLow10_m2']} … ${found['areaHigh90_m2']}), peak ${Number(found['peak_C']).toFixed(1)} °C against ${Number(found['doNothingPeak_C']).toFixed(1)} °C`,
    )
    expect(Math.abs(found['ledgerResidual_frac'] as number)).toBeLessThan(1e-9)
    if (found['result'] === 'met') {
      expect(found['areaNeeded_m2'] as number).toBeGreaterThan(0)
      expect(found['areaLow10_m2'] as number).toBeGreaterThan(0)
      expect(found['hoursOver_h'] as number).toBeLessThan(60)
    } else {
      expect(found['result']).toBe('floor')
      expect(found['limit']).toMatch(/\.$/)
    }
  })

  test.each(['sky', 'panel'])('%s gives 8760 rows of numbers', async (subcommand) => {
    const { code, out, err } = await duskbank(subcommand, ...weather)
    expect(code, err).toBe(0)
    const table = readCsv(out)
    for (const [name, column] of Object.entries(table)) {
      expect(column, name).toHaveLength(8760)
      if (name.includes('_local') || name === 'measured_Wm2' || name.startsWith('invented')) continue
      expect(
        column.every((cell) => cell !== '' && Number.isFinite(Number(cell))),
        name,
      ).toBe(true)
    }
  })
})

test.runIf(present)('sky --ignore-measured prints model − measured on standard error', async () => {
  const { code, err } = await duskbank(
    'sky',
    '--weather',
    `${FOLDER}typical-year-45N-8E.csv`,
    '--ignore-measured',
  )
  expect(code).toBe(0)
  expect(err).toMatch(/model − measured:[^]*bias -?[\d.]+ W\/m², RMSE [\d.]+ W\/m²/)
})
