import type { Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { axeViolations, openStage, settled, SIZES, type Stage } from './stage.ts'

let stage: Stage
beforeAll(async () => {
  stage = await openStage()
})
afterAll(async () => {
  await stage?.close()
})

const TOWN = 'input[role=combobox]'
const big = 'section[aria-label="Answer"] .big'

/** Types a town, waits for its row in the list, and takes the first with the keyboard. */
async function goTo(page: Page, typed: string, row: string): Promise<void> {
  await page.fill(TOWN, typed)
  await page.waitForSelector(`[role=option]:has-text("${row}")`, { timeout: 60_000 })
  await page.press(TOWN, 'ArrowDown')
  await page.press(TOWN, 'Enter')
  await page.waitForSelector('.trust:has-text("not from measured hours")', { timeout: 60_000 })
  await settled(page)
}

describe('a place by its town', () => {
  for (const name of ['phone', 'laptop'] as const) {
    test(`on a ${name}: typed without its accents, answered with what it is and what it is not`, async () => {
      const { page, context, complaints, requests } = await stage.open('', { viewport: SIZES[name] })
      await settled(page)
      expect(requests.filter((url) => url.endsWith('.bin'))).toEqual([])
      await goTo(page, 'krako', 'Kraków')
      expect(await page.locator('#climate option:checked').innerText()).toContain('Krakow')
      expect(await page.locator('.trust').innerText()).toMatch(/one area came within a factor of two/)
      expect(await page.locator(big).innerText()).toMatch(/\d m²/)
      await page.click('summary:has-text("Check this climate")')
      expect(await page.locator('text=CRU CL 2.0').count()).toBe(1)
      expect(await axeViolations(page)).toEqual([])
      const sideways = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)
      expect(sideways).toBeLessThanOrEqual(0)
      expect(complaints).toEqual([])
      await context.close()
    })
  }

  test('a name that is not there brings what is like it; Escape closes', async () => {
    const { page, context } = await stage.open()
    await settled(page)
    await page.fill(TOWN, 'Krakov')
    await page.waitForSelector('[role=status]:has-text("these are like it")', { timeout: 60_000 })
    await page.waitForSelector('[role=option]:has-text("Kraków")')
    await page.press(TOWN, 'Escape')
    await page.waitForSelector('[role=listbox]', { state: 'hidden' })
    await context.close()
  })

  test('the hottest hour that is known is in the climate, in its link and one undo away; nonsense is said', async () => {
    const { page, context } = await stage.open('#climate=at:50.06,19.94,220')
    await page.waitForSelector('.trust', { timeout: 60_000 })
    await settled(page)
    await page.click('summary:has-text("Check this climate")')
    const hottest = page.getByLabel('Hottest hour of an ordinary year')
    await hottest.fill('60')
    await hottest.blur()
    await page.waitForSelector('[role=alert]:has-text("60 °C")', { timeout: 60_000 })
    await hottest.fill('34')
    await hottest.blur()
    await page.waitForSelector('[role=alert]:has-text("60 °C")', { state: 'detached', timeout: 60_000 })
    await settled(page)
    expect(await page.locator('#climate').inputValue()).toBe('at:50.06,19.94,220;hottest=34')
    await context.close()
  })
})
