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

const WAYS = '.ways article'

/** A way with panels is first looked at with few draws; taken, card, panel step and sheet say the same of it. */
async function expectOneAnswer(page: Page): Promise<void> {
  const card = page.locator(`${WAYS}:has(dt:text-is("Panels"))`).first()
  expect(await card.locator('.sure').innerText()).toMatch(/^First look, 32 draws\./)
  await card.getByRole('button', { name: 'Take this way' }).click()
  const sure = card.locator('.sure:has-text("of 256 years tried")')
  await sure.waitFor({ timeout: 200_000 })
  const words = await sure.innerText()
  const [, low, high, met] = /^In practice (\d+) to (\d+) h.* in (\d+) of 256 years tried/.exec(words)!
  await page.click('nav a:visible:has-text("Panel")')
  await page.waitForSelector(`dd:has-text("In ${met} of 256 possible years")`)
  await page.click('nav a:visible:has-text("Sheet")')
  await page
    .locator(`[data-out=sure]:has-text("as built, ${low} to ${high} h")`)
    .waitFor({ timeout: 200_000 })
}

describe('what keeps it cool', () => {
  for (const name of ['phone', 'laptop'] as const) {
    test(
      `on a ${name}: from the design to a few named ways, each with cost and reason`,
      { timeout: 480_000 },
      async () => {
        const { page, context, complaints } = await stage.open('design/', { viewport: SIZES[name] })
        await settled(page)
        await page.click('a:has-text("are panels the right thing here")')
        await page.click('button:has-text("Look at all ways"):enabled')
        await page.waitForSelector('progress[aria-label=Looking]', { state: 'attached', timeout: 30_000 })
        await page.waitForSelector(WAYS, { timeout: 200_000 })
        const cards = await page.locator(WAYS).allInnerTexts()
        expect(cards.length).toBeGreaterThanOrEqual(2)
        expect(cards[0]).toContain('Cheapest that meets the target')
        for (const card of cards) {
          expect(card).toMatch(/Cost at first\s+\d+/)
          expect(card).toMatch(/Heating a winter\s+[+−]?[\d.]+ kWh/)
          expect(card).toMatch(/The \d+ years with heating\s+\d+/)
        }
        expect(await page.locator('h2').allInnerTexts()).toContainEqual(
          expect.stringMatching(/No panels here|Panels belong here/),
        )
        await page.waitForSelector(`${WAYS} .sure:has-text("eight times in ten")`, { timeout: 200_000 })
        const sure = await page.locator(`${WAYS} .sure`).allInnerTexts()
        for (const words of sure) {
          expect(words).toMatch(/In practice \d+ to \d+ h, eight times in ten.* in \d+ of \d+ years tried/)
        }
        await page.click('.ways article >> nth=0 >> button:has-text("Take this way")')
        await page.waitForSelector('[role=status]:has-text("In the design now")')
        expect(await axeViolations(page)).toEqual([])
        expect(await page.locator('[role=status] .stale, strong.stale').count()).toBe(0)
        const sideways = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)
        expect(sideways).toBeLessThanOrEqual(0)
        await page.click('.way .next')
        await page.waitForSelector('h2:has-text("You can skip this step")')
        expect(await page.locator('main').innerText()).not.toMatch(/Heat given off|From room to store/)
        await page.goBack()
        await page.waitForSelector(WAYS, { timeout: 10_000 })
        expect(await page.locator(WAYS).count(), 'the decision is kept').toBe(cards.length)
        if (name === 'laptop') await expectOneAnswer(page)
        expect(complaints).toEqual([])
        await context.close()
      },
    )
  }

  test('kept cool for sleepers: their hours; a budget is kept; a search can be stopped', async () => {
    const { page, context } = await stage.open('decide/')
    await page.waitForSelector('button:has-text("Look at all ways"):enabled')
    await page.getByLabel('Kept cool for').selectOption('asleep')
    await page.waitForSelector('text=At most 32 h a year above 26.0 °C, counted from 22 to 7 h.')
    await page.click('summary:has-text("Budget and prices")')
    await page.getByLabel('Budget at first').first().fill('900')
    const price = page.locator('[data-field="prices.shade_perm2"]')
    await price.getByText('invented start value').waitFor()
    await price.locator('input[inputmode=decimal]').fill('0')
    await price.locator('input[inputmode=decimal]').press('Enter')
    await price.getByText('invented start value').waitFor({ state: 'detached' })
    await page.click('button:has-text("Look at all ways"):enabled')
    await page.click('button:has-text("Stop")')
    await page.waitForSelector('progress[aria-label=Looking]', { state: 'detached' })
    expect(await page.locator(WAYS).count()).toBe(0)
    await context.close()
  })
})
