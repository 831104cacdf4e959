/* The maker's walk: three samples, a fourth proposed, a batch printed, a fortnight's log with a planted dead module judged. */
import { readFile } from 'node:fs/promises'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import type { Page } from 'playwright-core'
import { axeViolations, openStage, SIZES, type Stage } from './stage.ts'
import { goTo } from './walk.ts'

let stage: Stage
beforeAll(async () => {
  stage = await openStage()
})
afterAll(async () => {
  await stage?.close()
})

const CARBONATE = 'Ground calcium carbonate, fine'
const notebook = '[data-out=notebook]'

async function type(page: Page, label: string, value: string): Promise<void> {
  const box = page.locator(notebook).getByLabel(label, { exact: true })
  await box.fill(value)
  await box.blur()
}

/** Copies the open sample, changes the carbonate and types what the copy reads. */
async function nextOf(page: Page, parts: string, reads: string): Promise<void> {
  await page.click('button:has-text("Copy and change one thing")')
  await type(page, CARBONATE, parts)
  await type(page, 'Solar reflectance (empty: not measured)', reads)
}

const names = (page: Page) =>
  page.locator(notebook).getByLabel('Sample', { exact: true }).locator('option').allInnerTexts()

describe('the maker’s walk', () => {
  for (const [name, viewport] of Object.entries(SIZES)) {
    test(
      `on a ${name}: from three samples to a batch, and to a panel whose dead module is named`,
      { timeout: 300_000 },
      async () => {
        const { page, context, complaints, requests } = await stage.open('coating/', { viewport })
        await page.waitForSelector(`${notebook} button:enabled`, { timeout: 90_000 })

        // Three samples of one's own: the example's others go.
        await page.locator(notebook).getByLabel('Sample', { exact: true }).selectOption('2')
        await page.click('button:has-text("Remove it")')
        await page.locator(notebook).getByLabel('Sample', { exact: true }).selectOption('1')
        await page.click('button:has-text("Remove it")')
        expect(await names(page)).toEqual(['A1'])
        await nextOf(page, '2.4', '0.915')
        await nextOf(page, '3.2', '0.926')
        expect(await names(page)).toEqual(['A1', 'A1 2', 'A1 3'])
        expect(await page.locator(notebook).innerText()).toContain('there are 3')

        // A fourth is proposed, written down, measured; the curve is there.
        const proposal = page.locator('[data-out=next-sample]')
        expect(await proposal.innerText()).toContain(CARBONATE)
        await page.click('button:has-text("Write it down as a new sample")')
        expect((await names(page)).length).toBe(4)
        await type(page, 'Solar reflectance (empty: not measured)', '0.921')
        await page.waitForSelector('text=Quadratic with its 90 % band')
        expect(await axeViolations(page)).toEqual([])
        expect(
          await page.evaluate(() => document.documentElement.scrollWidth - innerWidth),
        ).toBeLessThanOrEqual(0)

        // The batch of the best one; on paper the boxes are gone and the quantities are there.
        await goTo(page, 'batch')
        await page.getByLabel('Sample', { exact: true }).selectOption('A1 3')
        await page.click('button:has-text("Mix this one")')
        await page.waitForSelector('text=are those of A1 3')
        await page.emulateMedia({ media: 'print' })
        expect(await page.locator('main').innerText()).toContain(CARBONATE)
        expect(await page.locator('.inputs').isVisible()).toBe(false)
        expect((await page.pdf()).length).toBeGreaterThan(5000)
        await page.emulateMedia({ media: 'screen' })
        expect(await axeViolations(page)).toEqual([])

        // A fortnight's log with a planted dead module.
        await goTo(page, 'asbuilt')
        await page.waitForSelector('button:has-text("Rehearse"):not([disabled])', { timeout: 90_000 })
        await page.getByLabel('Invent').selectOption('deadModule')
        await page.click('button:has-text("Rehearse")')
        await page.waitForSelector('text=Judged: rehearsal-deadModule.csv', { timeout: 90_000 })
        await page.waitForSelector('.results[aria-busy=false] [data-out=verdict]', { timeout: 90_000 })
        expect(await page.locator('[data-out=verdict]').innerText()).toBe(
          'A part of the panel passes no fluid.',
        )
        expect(
          await page.evaluate(() => document.documentElement.scrollWidth - innerWidth),
        ).toBeLessThanOrEqual(0)

        expect(complaints).toEqual([])
        expect(requests.filter((url) => !url.startsWith(stage.url) && !/^(data|blob):/.test(url))).toEqual([])
        await context.close()
      },
    )
  }

  test('the notebook goes out as CSV and comes back; a broken file changes nothing', async () => {
    const { page, context } = await stage.open('coating/')
    await page.waitForSelector(`${notebook} button:enabled`, { timeout: 90_000 })
    const saved = page.waitForEvent('download')
    await page.click('button:has-text("Save as CSV")')
    const path = await (await saved).path()
    const file = page.locator('label:has-text("Open samples") input')
    await page.click('button:has-text("Remove it")')
    expect(await names(page)).toEqual(['A2', 'A3'])
    await file.setInputFiles({ name: 'bad.csv', mimeType: 'text/csv', buffer: Buffer.from('a,b\n1,2') })
    await page.waitForSelector('[role=alert]:has-text("bad.csv")')
    expect(await names(page)).toEqual(['A2', 'A3'])
    await file.setInputFiles({ name: 'back.csv', mimeType: 'text/csv', buffer: await readFile(path) })
    await expect.poll(() => names(page)).toEqual(['A1', 'A2', 'A3'])
    await context.close()
  })
})
