import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import type { Page } from 'playwright-core'
import { moreOften, numbersOf, printedText, whyNoPdfText } from './pdf-text.ts'
import { axeViolations, openStage, settled, SIZES, type Stage } from './stage.ts'
import { goTo } from './walk.ts'

const WAIT_MS = 180_000
let stage: Stage
beforeAll(async () => {
  stage = await openStage()
})
afterAll(async () => {
  await stage?.close()
})

const unreadable = whyNoPdfText()
if (unreadable) console.log(`print not read back: ${unreadable}`)

const answer = 'section[aria-label="Answer"] .big'
const roof = '[data-field="room.roofU_Wm2K"] input[type=range]'

const plain = (text: string): string => text.replaceAll('\u00a0', ' ')

/** Drags a slider down in small steps, as a hand does. */
async function drag(page: Page): Promise<void> {
  await page.locator(roof).evaluate(async (slider: HTMLInputElement) => {
    for (let i = 1; i <= 8; i++) {
      slider.value = String(0.35 - i * 0.02)
      slider.dispatchEvent(new Event('input', { bubbles: true }))
      await new Promise((resolve) => setTimeout(resolve, 30))
    }
    slider.dispatchEvent(new Event('change', { bubbles: true }))
  })
}

describe('a newcomer walks the whole job: climate, room, drag, compare, print', () => {
  test.each(Object.entries(SIZES))('on a %s', { timeout: 3 * WAIT_MS }, async (_, viewport) => {
    const { page, context, complaints, requests } = await stage.open('design/', { viewport })
    await settled(page)
    await page.selectOption('#climate', 'high-dry-plateau')
    await settled(page)
    await page.click('button:has-text("Workshop room")')
    await settled(page)
    await page.click('details[data-part=room] > summary')
    const before = await page.locator('details[data-part=room] > summary').innerText()
    await drag(page)
    await settled(page)
    expect(await page.locator('details[data-part=room] > summary').innerText()).not.toBe(before)
    const area = await page.locator(answer).innerText()
    expect(area).toMatch(/\d m²/)
    expect(await axeViolations(page)).toEqual([])

    await goTo(page, 'compare')
    await page.click('button:has-text("Night-only against all-day")')
    const rows = '[aria-label=Comparison] tbody tr'
    await page.waitForFunction((row) => document.querySelectorAll(row).length === 2, rows, {
      timeout: WAIT_MS,
    })
    await page.waitForSelector('progress[aria-label=Comparing]', { state: 'detached', timeout: WAIT_MS })
    expect(await axeViolations(page)).toEqual([])

    await page.click('nav[aria-label=Path] a[href$="sheet/"]')
    await page.waitForSelector('[data-sheet][aria-busy="false"]', { timeout: WAIT_MS })
    const headline = await page.locator('article.sheet .headline').innerText()
    expect(plain(headline)).toContain(plain(area))
    expect(await axeViolations(page)).toEqual([])
    if (unreadable === null) {
      const { text } = await printedText(page, 'A4')
      const screen = numbersOf(await page.locator('article.sheet').innerText())
      expect(moreOften(screen, numbersOf(text)), 'on screen but not on paper').toEqual([])
    }
    expect(complaints).toEqual([])
    expect(requests.filter((url) => !url.startsWith(stage.url) && !/^(data|blob):/.test(url))).toEqual([])
    await context.close()
  })
})
