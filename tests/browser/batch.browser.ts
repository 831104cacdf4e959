import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { axeViolations, openStage, SIZES, type Stage } from './stage.ts'

let stage: Stage
beforeAll(async () => {
  stage = await openStage()
})
afterAll(async () => {
  await stage?.close()
})

const following = 'label:has-text("The panels of the design:") input'
const cell = (name: string) => `[data-out=quantities] tr:has-text("${name}") td`

describe('the batch', () => {
  for (const [name, viewport] of Object.entries(SIZES)) {
    test(`on a ${name}: quantities for the design’s area with cautions in sight, no complaint`, async () => {
      const { page, context, complaints, requests } = await stage.open('batch/', { viewport })
      await page.waitForSelector(`${following}:checked`, { timeout: 90_000 })
      await page.waitForSelector('canvas')
      const text = await page.locator('main').innerText()
      for (const word of ['Clear acrylic', 'Acetone', 'Barium sulfate', 'Water']) expect(text).toContain(word)
      const cautions = await page.locator('[data-out=cautions]').innerText()
      expect(cautions).toMatch(/vapour burns/)
      expect(cautions).toMatch(/barium salts/)
      expect(await axeViolations(page)).toEqual([])
      expect(
        await page.evaluate(() => document.documentElement.scrollWidth - innerWidth),
      ).toBeLessThanOrEqual(0)
      expect(complaints).toEqual([])
      expect(requests.filter((url) => !url.startsWith(stage.url) && !/^(data|blob):/.test(url))).toEqual([])
      await context.close()
    })
  }

  test('10 m² at 0.4 mm match arithmetic by hand', async () => {
    const { page, context } = await stage.open('batch/')
    await page.waitForSelector(`${following}:checked`, { timeout: 90_000 })
    await page.locator(following).uncheck()
    await page.getByLabel('Area to coat').fill('10')
    // Dry film of 1 g binder: (1/1.18 + 4/4.48) mL / (1 − 0.5) = 3.4806 mL; 4000 mL wanted, a fifth lost:
    // 4000 / 3.4806 / 0.8 = 1436.5 g of binder, four times that of pigment.
    expect(await page.locator(cell('Clear acrylic')).nth(1).innerText()).toBe('1.44 kg')
    expect(await page.locator(cell('Barium sulfate')).nth(1).innerText()).toBe('5.75 kg')
    // Stock 10 mL/g and pre-mix 1.1 mL water with 4 times as much: 14.4 mL/g of acetone, 20.7 L.
    expect(await page.locator(cell('Acetone')).nth(2).innerText()).toBe('20.7 L')
    await context.close()
  })

  test('a price gives a cost, a solid can be added and taken back, an empty box keeps the last good value', async () => {
    const { page, context, complaints } = await stage.open('batch/')
    await page.waitForSelector(`${following}:checked`, { timeout: 90_000 })
    expect(await page.locator('[data-out=quantities] th:text("Cost")').count()).toBe(0)
    await page.getByLabel('Price').first().fill('10')
    await page.waitForSelector('[data-out=quantities] th:text("Cost")')
    await page.click('button:has-text("Add a solid")')
    await page.waitForSelector(cell('Another solid'))
    await page.click('button[aria-label="Take Another solid out of the recipe"]')
    expect(await page.locator(cell('Another solid')).count()).toBe(0)
    const before = await page.locator(cell('Clear acrylic')).nth(1).innerText()
    await page.getByLabel('Mixing jar').fill('')
    await page.waitForSelector('[role=alert]:has-text("0.01 to 1000")')
    expect(await page.locator(cell('Clear acrylic')).nth(1).innerText()).toBe(before)
    expect(complaints).toEqual([])
    await context.close()
  })

  test('in US units masses are in pounds and volumes in gallons', async () => {
    const { page, context } = await stage.open('batch/')
    await page.waitForSelector(`${following}:checked`, { timeout: 90_000 })
    await page.check('input[name=units][value=us]')
    await expect.poll(() => page.locator(cell('Barium sulfate')).nth(1).innerText()).toMatch(/ lb$/)
    expect(await page.locator(cell('Acetone')).nth(2).innerText()).toMatch(/ gal$/)
    await context.close()
  })
})
