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
      for (const word of ['Ground calcium carbonate', 'Diatomite', 'Invented: every amount'])
        expect(text).toContain(word)
      const cautions = await page.locator('[data-out=cautions]').innerText()
      expect(cautions).toMatch(/dust harms the lungs/)
      expect(await axeViolations(page)).toEqual([])
      expect(
        await page.evaluate(() => document.documentElement.scrollWidth - innerWidth),
      ).toBeLessThanOrEqual(0)
      expect(complaints).toEqual([])
      expect(requests.filter((url) => !url.startsWith(stage.url) && !/^(data|blob):/.test(url))).toEqual([])
      await context.close()
    })
  }

  test('panels that do not fit are said before anything is mixed for them', async () => {
    const { page, context } = await stage.open(
      'batch/#climate=hot-desert&target.autoArea=false&target.area_m2=60',
    )
    await page.waitForSelector(`${following}:checked`, { timeout: 90_000 })
    await page.waitForSelector('text=do not fit')
    expect(await page.locator('main').innerText()).toContain('Not buildable as it is')
    await page.locator(following).uncheck()
    expect(await page.locator('main').innerText()).not.toContain('Not buildable')
    await context.close()
  })

  test('14 m² at 0.24 mm match arithmetic by hand; a solvent and a barium pigment bring their cautions', async () => {
    const { page, context } = await stage.open('batch/')
    await page.waitForSelector(`${following}:checked`, { timeout: 90_000 })
    await page.locator(following).uncheck()
    await page.getByLabel('Area to coat').fill('14')
    // Dry film of 1 g binder: (1/1.12 + 2.65/2.71 + 0.35/2.2) mL / (1 − 0.32) = 2.9850 mL; 3360 mL wanted, 12 % lost:
    // 3360 / 2.9850 / 0.88 = 1279.1 g of binder, 2.65 times that of calcium carbonate, 1/0.92 mL/g of water in it.
    expect(await page.locator(cell('dry part')).nth(1).innerText()).toBe('1.28 kg')
    expect(await page.locator(cell('Ground calcium')).nth(1).innerText()).toBe('3.39 kg')
    expect(await page.locator(cell('Water of the')).nth(2).innerText()).toBe('1.39 L')
    await page.getByLabel('Solvent', { exact: true }).fill('Ethanol')
    await page.getByLabel('Solvent', { exact: true }).blur()
    await page.getByLabel('Solid', { exact: true }).first().fill('Barium sulfate')
    await page.getByLabel('Solid', { exact: true }).first().blur()
    const cautions = page.locator('[data-out=cautions]')
    await expect.poll(() => cautions.innerText()).toMatch(/vapour burns/)
    await expect.poll(() => cautions.innerText()).toMatch(/barium salts/)
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
    const before = await page.locator(cell('dry part')).nth(1).innerText()
    await page.getByLabel('Mixing jar').fill('')
    await page.waitForSelector('[role=alert]:has-text("0.01 to 1000")')
    expect(await page.locator(cell('dry part')).nth(1).innerText()).toBe(before)
    expect(complaints).toEqual([])
    await context.close()
  })

  test('in US units masses are in pounds and volumes in gallons', async () => {
    const { page, context } = await stage.open('batch/')
    await page.waitForSelector(`${following}:checked`, { timeout: 90_000 })
    await page.check('input[name=units][value=us]')
    await expect.poll(() => page.locator(cell('Ground calcium')).nth(1).innerText()).toMatch(/ lb$/)
    expect(await page.locator(cell('Water of the')).nth(2).innerText()).toMatch(/ (gal|fl oz)$/)
    await context.close()
  })
})
