import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { PATH } from '#ui/shell/pages.ts'
import { axeViolations, openStage, settled, SIZES, type Stage } from './stage.ts'

let stage: Stage
beforeAll(async () => {
  stage = await openStage()
})
afterAll(async () => {
  await stage?.close()
})

/** Inputs of a step that lie open: sliders beside a box belong to it, and buttons are no questions. */
const INPUTS = 'main [data-field], main #climate, main [role=combobox]'

describe('the path of six steps', () => {
  for (const [name, viewport] of Object.entries(SIZES)) {
    test(
      `place to sheet on a ${name}: the answer in sight, few inputs, no violation`,
      { timeout: 300_000 },
      async () => {
        const { page, context, complaints } = await stage.open('', { viewport })
        await settled(page)
        expect(await page.locator('.verdict .big').innerText()).not.toContain('Working out')
        let clicks = 0
        for (const [i, { label }] of PATH.entries()) {
          const at = page.locator('nav[aria-label=Path] [aria-current=step]')
          expect(await at.innerText()).toBe(label)
          const header = await page
            .locator('.top header')
            .evaluate((element) => element.getBoundingClientRect().height)
          expect(header, 'height of the header').toBeLessThanOrEqual(56)
          if (i < PATH.length - 1) {
            await settled(page)
            const answer = await page.locator('section[aria-label="Answer"] .big').boundingBox()
            expect(answer!.y).toBeGreaterThanOrEqual(0)
            expect(answer!.y + answer!.height, 'the answer is in sight').toBeLessThanOrEqual(viewport.height)
            const inputs = await page
              .locator(INPUTS)
              .evaluateAll((found) => found.filter((x) => x.checkVisibility()).length)
            expect(inputs, `inputs of “${label}”`).toBeLessThanOrEqual(7)
          }
          expect(await axeViolations(page), label).toEqual([])
          const sideways = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)
          expect(sideways, label).toBeLessThanOrEqual(0)
          if (i === PATH.length - 1) break
          await page.click('.way .next')
          clicks++
          await page.waitForURL(`${stage.url}${PATH[i + 1]!.path}/`)
        }
        await page.waitForSelector('[data-sheet]')
        expect(clicks).toBe(5)
        expect(complaints).toEqual([])
        await context.close()
      },
    )
  }

  test('the room is dragged to its size, by pointer and by keys, and one undo brings it back', async () => {
    const { page, context } = await stage.open('room/')
    await settled(page)
    const length = page.locator('[data-field="room.length_m"] input[inputmode=decimal]')
    const before = await length.inputValue()
    const handle = (await page.locator('[data-handle=length_m]').boundingBox())!
    const [x, y] = [handle.x + handle.width / 2, handle.y + handle.height / 2]
    await page.mouse.move(x, y)
    await page.mouse.down()
    await page.mouse.move(x - 60, y, { steps: 6 })
    await page.mouse.up()
    const dragged = Number(await length.inputValue())
    expect(dragged).toBeLessThan(Number(before) - 0.2)
    await page.waitForTimeout(1000)
    await page.locator('[data-handle=length_m]').focus()
    await page.keyboard.press('ArrowRight')
    expect(Number(await length.inputValue())).toBeCloseTo(dragged + 0.1, 6)
    await page.click('button:has-text("Undo")')
    await page.click('button:has-text("Undo")')
    expect(await length.inputValue()).toBe(before)
    await context.close()
  })

  test('first page loads less than 250 kB of compressed script, the worker included', async () => {
    const { page, context } = await stage.open('', { serviceWorkers: 'block' })
    await settled(page)
    await page.waitForTimeout(500)
    const sizes = await page.evaluate(() =>
      (performance.getEntriesByType('resource') as PerformanceResourceTiming[])
        .filter(({ name }) => name.includes('.js'))
        .map(({ name, encodedBodySize }) => [name, encodedBodySize] as const),
    )
    const bytes = [...new Map(sizes).values()].reduce((sum, size) => sum + size, 0)
    console.log(`first page: ${(bytes / 1000).toFixed(1)} kB of compressed script`)
    expect(bytes).toBeGreaterThan(50_000)
    expect(bytes).toBeLessThan(250_000)
    await context.close()
  })
})
