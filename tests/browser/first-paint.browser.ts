import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import type { Page } from 'playwright-core'
import { workedExample } from '#live/worked-example.ts'
import { createStudies, finish } from '#studies/index.ts'
import { verdictOf } from '#ui/answer/verdict-words.ts'
import { sampleWeather } from '../../src/shell/samples.ts'
import { openStage, settled, type Stage } from './stage.ts'

let stage: Stage
beforeAll(async () => {
  stage = await openStage()
})
afterAll(async () => {
  await stage?.close()
})

/** Verdict, its reasons, and whose they are, as the page shows them. */
async function shown(page: Page): Promise<readonly string[]> {
  const lines = await page.locator('.verdict .for, .verdict .big, .verdict p:not([class])').allInnerTexts()
  return lines.map((line) => line.trim())
}

describe('the worked example is answered when the page is first painted', () => {
  test('without script, by what the build wrote; the answer worked out in the page is the same', async () => {
    const still = await stage.open('', { javaScriptEnabled: false })
    const written = await shown(still.page)
    await still.context.close()
    const { page, context, complaints } = await stage.open()
    await settled(page)
    await page.waitForFunction(() => !document.querySelector('.verdict')?.textContent.includes('follows'))
    expect(await shown(page)).toEqual(written)
    expect(complaints).toEqual([])
    await context.close()

    const { scenario, climate } = workedExample()
    const { result } = finish(createStudies().size({ scenario, weather: sampleWeather(climate) }))
    const { big, why } = verdictOf(result, 'si')
    expect(written).toEqual([`${scenario.job.name}, ${result.weather.site.name}`, big, ...why])
  })

  test('a design kept from an earlier visit is not painted with the example’s answer once the page is awake', async () => {
    const { page, context } = await stage.open('design/')
    await settled(page)
    const before = await page.locator('.verdict').count()
    expect(before, 'the verdict is on the first page').toBe(0)
    await page.locator('details[data-part=target] > summary').click()
    const limit = page.locator('[data-field="target.limit_C"] input').first()
    await limit.fill('24')
    await limit.press('Enter')
    await settled(page)
    await page.goto(stage.url)
    await page.waitForFunction(() => !document.querySelector<HTMLFieldSetElement>('main fieldset')?.disabled)
    expect(await page.locator('.verdict').innerText()).not.toContain('Worked example')
    await context.close()
  })
})
