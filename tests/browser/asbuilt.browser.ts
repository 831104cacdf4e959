import { readFile } from 'node:fs/promises'
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

const verdict = '[data-out=verdict]'

async function rehearse(page: Page, fault: string): Promise<void> {
  await page.waitForSelector('button:has-text("Rehearse"):not([disabled])', { timeout: 90_000 })
  await page.getByLabel('Invent').selectOption(fault)
  await page.click('button:has-text("Rehearse")')
  await page.waitForSelector(`text=Judged: rehearsal-${fault}.csv`, { timeout: 90_000 })
  await page.waitForSelector(`.results[aria-busy=false] ${verdict}`, { timeout: 90_000 })
}

describe('the as-built check', () => {
  for (const [name, viewport] of Object.entries(SIZES)) {
    test(`on a ${name}: a planted half flow is named, with charts, what to inspect and no complaint`, async () => {
      const { page, context, complaints, requests } = await stage.open('asbuilt/', { viewport })
      await rehearse(page, 'lowFlow')
      expect(await page.locator(verdict).innerText()).toBe('Too little flows.')
      expect(await page.locator('[data-out=inspect]').innerText()).toContain('bucket and a watch')
      expect(await page.locator('main canvas').count()).toBe(2)
      for (const summary of await page.locator('main details > summary').all()) await summary.click()
      expect(await axeViolations(page)).toEqual([])
      expect(
        await page.evaluate(() => document.documentElement.scrollWidth - innerWidth),
      ).toBeLessThanOrEqual(0)
      expect(complaints).toEqual([])
      expect(requests.filter((url) => !url.startsWith(stage.url) && !/^(data|blob):/.test(url))).toEqual([])
      await context.close()
    })
  }

  test('a sound panel is cleared; shading is named; its file is saved, opened again and judged the same', async () => {
    const { page, context, complaints } = await stage.open('asbuilt/')
    await rehearse(page, 'none')
    expect(await page.locator(verdict).innerText()).toBe('The panel does what was predicted.')
    await rehearse(page, 'shading')
    const said = await page.locator(verdict).innerText()
    expect(said).toContain('hides sky or sun')
    const saved = page.waitForEvent('download')
    await page.click('button:has-text("Save the invented file")')
    const text = await readFile(await (await saved).path(), 'utf8')
    expect(text.split('\n')[0]).toContain('Invented')
    await page
      .locator('label:has-text("Open a logger file") input')
      .setInputFiles({ name: 'mine.csv', mimeType: 'text/csv', buffer: Buffer.from(text) })
    await page.waitForSelector('text=Judged: mine.csv', { timeout: 90_000 })
    expect(await page.locator(verdict).innerText()).toBe(said)
    expect(complaints).toEqual([])
    await context.close()
  })

  test('a file without panel columns says what is missing and keeps the page', async () => {
    const { page, context, complaints } = await stage.open('asbuilt/')
    await page.waitForSelector('button:has-text("Rehearse"):not([disabled])', { timeout: 90_000 })
    await page.locator('label:has-text("Open a logger file") input').setInputFiles({
      name: 'odd.csv',
      mimeType: 'text/csv',
      buffer: Buffer.from('time,humidity\n2025-07-01 00:00,40\n2025-07-01 01:00,41\n'),
    })
    await page.waitForSelector('[role=alert]:has-text("odd.csv")', { timeout: 60_000 })
    expect(await page.locator('[role=alert]').innerText()).toContain('Fluid into the panel')
    expect(complaints).toEqual([])
    await context.close()
  })

  test('resized with the panel as found, a low flow needs more panel; it goes into the design in one step', async () => {
    const { page, context, complaints } = await stage.open('asbuilt/')
    await rehearse(page, 'lowFlow')
    await page.click('button:has-text("Resize with the panel as found")')
    await page.waitForSelector('[data-out=resized]:has-text("The job needs")', { timeout: 120_000 })
    const text = await page.locator('[data-out=resized]').innerText()
    const [found, designed] = [...text.matchAll(/([\d.]+) m²/g)].map(([, area]) => Number(area))
    expect(found!).toBeGreaterThanOrEqual(designed!)
    expect(Number(/(\d+) % more/.exec(text)?.[1])).toBeGreaterThan(0)
    await page.click('button:has-text("Put the panel as found into the design")')
    await page.waitForSelector('text=The design now has the panel as found')
    expect(complaints).toEqual([])
    await context.close()
  })

  test('works in US units', async () => {
    const { page, context } = await stage.open('asbuilt/')
    await rehearse(page, 'dirty')
    await page.check('input[name=units][value=us]')
    await expect.poll(() => page.locator('[data-out=agreement]').innerText()).toContain('°F')
    await context.close()
  })
})
