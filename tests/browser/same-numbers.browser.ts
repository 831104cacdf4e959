import { afterAll, beforeAll, expect, test } from 'vitest'
import { duskbank } from '../shell/run-shell.ts'
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
  readonly areaHigh90_m2: number | null
  readonly peak_C: number
  readonly hotDaysHeld_count: number
  readonly pumpRun_h: number
}

async function sizedByShell(where: readonly string[]): Promise<Sized> {
  const { out } = await duskbank('size', ...where, '--format', 'json')
  return JSON.parse(out) as Sized
}

/** As the page prints numbers: so many significant digits. */
const digits = (value: number, count: number) => String(Number(value.toPrecision(count)))

test.each([
  ['the worked example', ['--weather', 'continental'], ''],
  ['a town', ['--town', 'Zagreb'], '#climate=at:45.81,15.98,135'],
])(
  'page and command line give the same numbers for %s, the range included',
  async (_, where, link) => {
    const shell = await sizedByShell(where)
    const { page, context } = await stage.open(`design/${link}`)
    if (link !== '') await page.waitForSelector('.trust', { timeout: 60_000 })
    await settled(page)
    await page.locator('.range:has-text("in practice")').waitFor({ timeout: 240_000 })
    const said = await page.locator('section[aria-label="Answer"]').innerText()
    expect(said).toContain(`${digits(shell.areaBuilt_m2, 3)} m²`)
    expect(said).toContain(`${digits(shell.areaNeeded_m2, 3)} m²`)
    const most =
      shell.areaHigh90_m2 === null ? 'more than' : `${digits(shell.areaHigh90_m2, 2)} m² in practice`
    expect(said).toContain(`${digits(shell.areaLow10_m2, 2)} to ${most}`)
    expect(said).toContain(`${shell.peak_C.toFixed(1)} °C`)
    expect(said).toContain(`${shell.hotDaysHeld_count} of `)
    expect(said).toContain(`${shell.pumpRun_h.toFixed(0)} h a year`)
    await context.close()
  },
  420_000,
)

interface Seen {
  readonly text: string
  readonly updating: boolean
}

test('once a slider rests, what is built is marked as updating, and what stays is what the command line prints', async () => {
  const shell = await sizedByShell(['--weather', 'continental', '--set', 'room.roofU_Wm2K=0.7'])
  const { page, context } = await stage.open('design/')
  await settled(page)
  await page.click('details[data-part=room] > summary')
  // The second worker makes its first runs meanwhile.
  await page.waitForTimeout(4_000)
  await page.evaluate(() => {
    const answer = document.querySelector<HTMLElement>('section[aria-label="Answer"]')!
    const seen: Seen[] = []
    new MutationObserver(() => {
      if (answer.dataset['following'] !== 'built') return
      const updating = answer.getAttribute('aria-busy') === 'true' && answer.innerText.includes('updating')
      seen.push({ text: answer.querySelector('.big')!.textContent, updating })
    }).observe(answer, { attributeFilter: ['data-following', 'aria-busy'] })
    Object.assign(window, { seen })
  })
  await page.fill('[data-field="room.roofU_Wm2K"] input[inputmode=decimal]', '0.7')
  await page.waitForSelector('section[aria-label="Answer"][aria-busy="true"]')
  await settled(page)
  const seen = await page.evaluate(() => (window as unknown as { seen: readonly Seen[] }).seen)
  const built = `${digits(shell.areaBuilt_m2, 3)} m²`
  console.log(
    `built, before the search from scratch ended: ${seen.map(({ text }) => text).join(', ') || 'nothing'}`,
  )
  expect(await page.locator('section[aria-label="Answer"] .big').innerText()).toBe(built)
  for (const { text, updating } of seen) expect({ text, updating }).toEqual({ text: built, updating: true })
  await context.close()
}, 180_000)
