import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import type { Page } from 'playwright-core'
import { axeViolations, openStage, settled, SIZES, type Stage } from './stage.ts'

let stage: Stage
beforeAll(async () => {
  stage = await openStage()
})
afterAll(async () => {
  await stage?.close()
})

const map = 'button[aria-label^="Design map"]'
const under = 'p[role=status].under'
const big = 'section[aria-label="Answer"] .big'

async function drawn(page: Page): Promise<void> {
  await settled(page)
  await page.waitForSelector(map, { timeout: 90_000 })
  await page.waitForSelector('progress[aria-label="Drawing the map"]', { state: 'detached', timeout: 90_000 })
}

describe('the design map', () => {
  test('draws itself, is reached and adopted from the keyboard, and one undo brings the old design back', async () => {
    const { page, context, complaints } = await stage.open('map/')
    await drawn(page)
    const before = await page.locator(big).innerText()
    await page.focus(map)
    const first = await page.locator(under).innerText()
    await page.keyboard.press('ArrowRight')
    await page.keyboard.press('ArrowUp')
    const second = await page.locator(under).innerText()
    expect(second).not.toBe(first)
    await page.keyboard.press('Enter')
    await settled(page)
    // The answer now has exactly the area, hours and hottest hour the map showed (same engine, same design).
    const area = second.split(' with ')[0]!
    expect(await page.locator(big).innerText()).toBe(area)
    const answer = await page.locator('section[aria-label="Answer"]').innerText()
    expect(answer).toContain(`${/([\d.]+ °C)/.exec(second)![1]}; `)
    expect(answer).toContain(`${/(\d+) h above/.exec(second)![1]}; `)
    // Adopting a point leaves the map as it is: nothing to draw again.
    expect(await page.locator('button:has-text("Draw the map")').count()).toBe(0)
    await page.click('button:has-text("Undo")')
    await settled(page)
    expect(await page.locator(big).innerText()).toBe(before)
    expect(complaints).toEqual([])
    await context.close()
  })

  test('a click adopts the point clicked; prices lead to the cheapest design, sized exactly', async () => {
    const { page, context, complaints } = await stage.open('map/')
    await drawn(page)
    const box = (await page.locator(map).boundingBox())!
    await page.mouse.click(box.x + box.width - 3, box.y + box.height / 2)
    await settled(page)
    const words = await page.locator(under).innerText()
    expect(words).toContain('Adopted')
    expect(await page.locator(big).innerText()).toBe(words.split(' with ')[0])
    expect(await page.locator('button:has-text("size it exactly")').count()).toBe(0)
    await page.fill('[data-field="prices.panel_perm2"] input[inputmode=decimal]', '80')
    await page.fill('[data-field="prices.store_perm3"] input[inputmode=decimal]', '300')
    await page.press('[data-field="prices.store_perm3"] input[inputmode=decimal]', 'Enter')
    const about = await page.locator('p.answer').innerText()
    const area_m2 = Number(/about ([\d.]+) m²/.exec(about)![1])
    await page.click('button:has-text("size it exactly")')
    await settled(page)
    const sized_m2 = parseFloat(await page.locator(big).innerText())
    // Built in whole panels of 2 m², and read between marks: at most one panel more, and no less than the mark apart.
    expect(sized_m2).toBeGreaterThan(area_m2 - 1)
    expect(sized_m2).toBeLessThan(area_m2 + 3)
    expect(complaints).toEqual([])
    await context.close()
  })

  test('can be stopped half way, keeps the coarse map, and goes on when asked', async () => {
    const { page, context } = await stage.open('map/')
    await page.waitForSelector(map, { timeout: 90_000 })
    await page.click('progress[aria-label="Drawing the map"] ~ button:has-text("Stop")')
    expect(await page.locator(map).count()).toBe(1)
    expect(await page.locator('button:has-text("Go on to the finest map")').count()).toBe(1)
    await page.locator('details:has-text("The numbers behind it") > summary').click()
    expect(await page.locator('details tbody tr').count()).toBeGreaterThanOrEqual(15)
    await context.close()
  })

  test('fits and is accessible at three sizes, by day and by night', async () => {
    const { page, context, complaints } = await stage.open('map/')
    await drawn(page)
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
})
