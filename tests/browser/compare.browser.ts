import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import type { Page } from 'playwright-core'
import { axeViolations, openStage, SIZES, type Stage } from './stage.ts'

let stage: Stage
beforeAll(async () => {
  stage = await openStage()
})
afterAll(async () => {
  await stage?.close()
})

const rows = '[aria-label=Comparison] tbody tr'

async function finished(page: Page, count: number): Promise<void> {
  await page.waitForFunction(
    (wanted) => document.querySelectorAll('[aria-label=Comparison] tbody tr').length === wanted,
    count,
    { timeout: 110_000 },
  )
  await page.waitForSelector('progress[aria-label=Comparing]', { state: 'detached', timeout: 30_000 })
}

/** Numbers of one column of the table, top to bottom. */
async function column(page: Page, heading: string): Promise<number[]> {
  const at = await page
    .locator('[aria-label=Comparison] thead th')
    .evaluateAll((cells, text) => cells.findIndex((cell) => cell.textContent.includes(text)), heading)
  const texts = await page.locator(`[aria-label=Comparison] tbody tr > :nth-child(${at + 1})`).allInnerTexts()
  return texts.map((text) => parseFloat(text))
}

describe('the comparison', () => {
  test('night-only against all-day is one click, and its sentence has the numbers of the table', async () => {
    const { page, context, complaints } = await stage.open('compare/')
    await page.click('button:has-text("Night-only against all-day")')
    await finished(page, 2)
    const [night_m2, allDay_m2] = await column(page, 'Panel area')
    const sentence = await page.locator('section:has-text("What does it come to") li p').first().innerText()
    expect(sentence).toContain(`${night_m2} m² against ${allDay_m2} m²`)
    const percent = Math.round(Math.abs(night_m2! / allDay_m2! - 1) * 100)
    // Both areas are shown to three digits, so their ratio may be off by 1 %.
    const said = Number(/(\d+) %/.exec(sentence)![1])
    expect(Math.abs(said - percent)).toBeLessThanOrEqual(1)
    expect(complaints).toEqual([])
    await context.close()
  })

  test('film against bare is another, and says why from the hours of the year', async () => {
    const { page, context } = await stage.open('compare/')
    await page.click('button:has-text("Film against bare")')
    await finished(page, 2)
    const words = await page.locator('section:has-text("What does it come to")').innerText()
    expect(words).toMatch(/takes more heat than|shed nearly the same/)
    expect(words).toMatch(/In \d+ % of the pump hours .* is ahead by [\d.]+ kWh\/m²/)
    await context.close()
  })

  test('baselines are a third; the table sorts by any heading; fits and is accessible at three sizes', async () => {
    const { page, context, complaints } = await stage.open('compare/')
    await page.click('button:has-text("Baselines")')
    await finished(page, 9)
    await page.click('[aria-label=Comparison] button:has-text("Hottest without panels")')
    const rising = await column(page, 'Hottest without panels')
    expect(rising).toEqual(rising.toSorted((a, b) => a - b))
    await page.click('[aria-label=Comparison] button:has-text("Hottest without panels")')
    expect(await column(page, 'Hottest without panels')).toEqual(rising.toReversed())
    expect(await page.locator('[aria-label=Comparison] th[aria-sort=descending]').count()).toBe(1)
    await page.click('summary:has-text("Choose any set")')
    for (const viewport of Object.values(SIZES)) {
      await page.setViewportSize(viewport)
      expect(await axeViolations(page)).toEqual([])
      const sideways = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)
      expect(sideways).toBeLessThanOrEqual(0)
    }
    await page.emulateMedia({ colorScheme: 'dark' })
    expect(await axeViolations(page)).toEqual([])
    expect(complaints).toEqual([])
    await context.close()
  })

  test('any set by keyboard: two climates, stopped half way, what was done stays', async () => {
    const { page, context } = await stage.open('compare/')
    await page.waitForSelector('button:has-text("Night-only against all-day"):not([disabled])')
    await page.focus('summary:has-text("Choose any set")')
    await page.keyboard.press('Enter')
    await page.focus('label:has-text("Hot desert") input')
    await page.keyboard.press('Space')
    await page.focus('label:has-text("All day") input')
    await page.keyboard.press('Space')
    await page.click('button:has-text("Compare 4 designs")')
    await page.waitForSelector(rows, { timeout: 60_000 })
    await page.click('button:has-text("Stop")')
    const kept = await page.locator('[aria-label=Comparison] tbody tr').count()
    expect(kept).toBeGreaterThan(0)
    expect(kept).toBeLessThan(4)
    await page.click('button:has-text("Compare 4 designs")')
    await finished(page, 4)
    expect(await page.locator('[aria-label=Comparison] thead').innerText()).toContain('Climate')
    await context.close()
  })
})
