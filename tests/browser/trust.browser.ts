import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { totals } from '#ui/trust/evidence-row.ts'
import { EVIDENCE } from '#ui/trust/evidence.ts'
import { axeViolations, openStage, SIZES, type Stage } from './stage.ts'

let stage: Stage
beforeAll(async () => {
  stage = await openStage()
})
afterAll(async () => {
  await stage?.close()
})

describe('how far to trust it', () => {
  for (const [name, viewport] of Object.entries(SIZES)) {
    test(`on a ${name}: all checks with their sources, the misses in sight, no axe violation`, async () => {
      const { page, context, complaints } = await stage.open('trust/', { viewport })
      await page.waitForSelector('h1')
      const { checks, sources, misses } = totals(EVIDENCE.rows)
      const text = await page.locator('main').innerText()
      expect(text).toContain(`${checks} checks against ${sources} sources; ${misses} miss`)
      for (const { cause } of EVIDENCE.rows.filter((row) => row.status === 'misses'))
        expect(text.toLowerCase()).toContain(cause.toLowerCase())
      for (const summary of await page.locator('details > summary').all()) await summary.click()
      expect(await page.locator('details tbody tr').count()).toBeGreaterThanOrEqual(checks)
      expect(await axeViolations(page)).toEqual([])
      expect(
        await page.evaluate(() => document.documentElement.scrollWidth - innerWidth),
      ).toBeLessThanOrEqual(0)
      expect(complaints).toEqual([])
      await context.close()
    })
  }

  test('the doubts that move the area come from the design on the bench', async () => {
    const { page, context } = await stage.open('trust/')
    await page.waitForSelector('figure [role=img][aria-label*="rank correlation"]', { timeout: 90_000 })
    await page.click('section:has-text("Which doubts") details > summary')
    await page.waitForSelector('section:has-text("Which doubts") tbody tr')
    expect(await page.locator('section:has-text("Which doubts") tbody tr').count()).toBeGreaterThan(5)
    await context.close()
  })
})

test('the methods page shows every part of the physics on paper, without an axe violation', async () => {
  const { page, context, complaints } = await stage.open('methods/')
  await page.waitForSelector('h1')
  for (const part of ['Air', 'Sun', 'Sky', 'Panel', 'Loop', 'Room', 'Store', 'Year', 'Sizing'])
    expect(await page.locator(`h2:text-is("${part}")`).count(), part).toBe(1)
  expect(await page.locator('pre').count()).toBeGreaterThan(10)
  expect(await axeViolations(page)).toEqual([])
  expect(complaints).toEqual([])
  await context.close()
})
