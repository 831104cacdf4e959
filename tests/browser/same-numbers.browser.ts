import { execFileSync } from 'node:child_process'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { openStage, settled, type Stage } from './stage.ts'

let stage: Stage
beforeAll(async () => {
  stage = await openStage()
})
afterAll(async () => {
  await stage?.close()
})

interface Sized {
  readonly areaNeeded_m2: number
  readonly areaBuilt_m2: number
  readonly areaLow10_m2: number
  readonly areaHigh90_m2: number
  readonly peak_C: number
  readonly hotDaysHeld_count: number
  readonly pumpRun_h: number
}

function sizedByShell(): Sized {
  const shell = ['node_modules/tsx/dist/cli.mjs', 'src/shell/duskbank.ts']
  const ask = ['size', '--weather', 'continental', '--format', 'json']
  return JSON.parse(execFileSync(process.execPath, [...shell, ...ask], { encoding: 'utf8' })) as Sized
}

/** As the page prints numbers: so many significant digits. */
const digits = (value: number, count: number) => String(Number(value.toPrecision(count)))

test('page and command line give the same numbers for the worked example, the range included', async () => {
  const shell = sizedByShell()
  const { page, context } = await stage.open('design/')
  await settled(page)
  await page.locator('.range:has-text("eight times")').waitFor({ timeout: 240_000 })
  const said = await page.locator('section[aria-label="Answer"]').innerText()
  expect(said).toContain(`${digits(shell.areaBuilt_m2, 3)} m²`)
  expect(said).toContain(`${digits(shell.areaNeeded_m2, 3)} m²`)
  expect(said).toContain(
    `${digits(shell.areaLow10_m2, 2)} to ${digits(shell.areaHigh90_m2, 2)} m² in practice`,
  )
  expect(said).toContain(`${shell.peak_C.toFixed(1)} °C`)
  expect(said).toContain(`${shell.hotDaysHeld_count} of `)
  expect(said).toContain(`${shell.pumpRun_h.toFixed(0)} h a year`)
  await context.close()
}, 420_000)
