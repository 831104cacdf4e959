import type { Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { PLACE_CREDITS } from '#model/outdoors/place'
import { axeViolations, openStage, settled, SIZES, type Stage } from './stage.ts'

let stage: Stage
beforeAll(async () => {
  stage = await openStage()
})
afterAll(async () => {
  await stage?.close()
})

const TOWN = 'input[role=combobox]'
/** The two files of the places; the sample climates are other files. */
const ofPlaces = (url: string): boolean => /\/places\/[^/]+\.bin$/.test(url)
const big = 'section[aria-label="Answer"] .big'

/** Types a town, waits for its row in the list, and takes the first with the keyboard. */
async function goTo(page: Page, typed: string, row: string): Promise<void> {
  await page.fill(TOWN, typed)
  await page.waitForSelector(`[role=option]:has-text("${row}")`, { timeout: 60_000 })
  await page.press(TOWN, 'ArrowDown')
  await page.press(TOWN, 'Enter')
  await page.waitForSelector('.trust:has-text("not from measured hours")', { timeout: 60_000 })
  await settled(page)
}

describe('a place by its town', () => {
  for (const name of ['phone', 'laptop'] as const) {
    test(`on a ${name}: typed without its accents, answered with what it is and what it is not`, async () => {
      const { page, context, complaints, requests } = await stage.open('design/', { viewport: SIZES[name] })
      await settled(page)
      expect(requests.filter(ofPlaces)).toEqual([])
      await goTo(page, 'krako', 'Kraków')
      expect(await page.locator('#climate option:checked').innerText()).toContain('Kraków')
      expect(await page.locator('.trust').innerText()).toMatch(
        /came out between a fifth of the right one and 1\.6 times it, and once none was enough/,
      )
      expect(await page.locator(big).innerText()).toMatch(/\d m²/)
      await page.click('summary:has-text("Check this climate")')
      for (const credit of PLACE_CREDITS) expect(await page.locator('main').innerText()).toContain(credit)
      expect(await axeViolations(page)).toEqual([])
      const sideways = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)
      expect(sideways).toBeLessThanOrEqual(0)
      expect(complaints).toEqual([])
      await context.close()
    })
  }

  test('a name that is not there brings what is like it; Escape closes', async () => {
    const { page, context } = await stage.open('design/')
    await settled(page)
    await page.fill(TOWN, 'Krakov')
    await page.waitForSelector('[role=status]:has-text("these are like it")', { timeout: 60_000 })
    await page.waitForSelector('[role=option]:has-text("Kraków")')
    await page.press(TOWN, 'Escape')
    await page.waitForSelector('[role=listbox]', { state: 'hidden' })
    await context.close()
  })

  test('the hottest hour that is known is in the climate, in its link and one undo away; nonsense is said', async () => {
    const { page, context } = await stage.open('design/#climate=at:50.06,19.94,220')
    await page.waitForSelector('.trust', { timeout: 60_000 })
    await settled(page)
    await page.click('summary:has-text("Check this climate")')
    const hottest = page.getByLabel('Hottest hour of an ordinary year')
    await hottest.fill('60')
    await hottest.blur()
    await page.waitForSelector('[role=alert]:has-text("60 °C")', { timeout: 60_000 })
    await hottest.fill('34')
    await hottest.blur()
    await page.waitForSelector('[role=alert]:has-text("60 °C")', { state: 'detached', timeout: 60_000 })
    await settled(page)
    expect(await page.locator('#climate').inputValue()).toBe('at:50.06,19.94,220;hottest=34')
    await context.close()
  })

  test('a month typed over is in the climate, said with what it was, and goes back when emptied', async () => {
    const { page, context } = await stage.open('design/#climate=at:50.06,19.94,220')
    await page.waitForSelector('.trust', { timeout: 60_000 })
    await settled(page)
    await page.click('summary:has-text("Check this climate")')
    const before = await page.locator(big).innerText()
    const july = page.getByLabel('July, mean temperature, °C')
    await july.fill('99')
    await july.blur()
    await page.waitForSelector('[role=alert]:has-text("99 is out of range")')
    await july.fill('23')
    await july.blur()
    await page.waitForSelector('[role=status]:has-text("July mean temperature 23.0 °C instead of")', {
      timeout: 60_000,
    })
    await settled(page)
    expect(await page.locator('#climate').inputValue()).toBe('at:50.06,19.94,220;months=T7_23')
    expect(await page.locator(big).innerText()).not.toBe(before)
    await page.click('button:has-text("Back to the held values")')
    await page.waitForFunction(
      () => document.querySelector<HTMLSelectElement>('#climate')?.value === 'at:50.06,19.94,220',
    )
    await context.close()
  })

  test('a point on the map: by click, by arrow keys, by its coordinates', async () => {
    const { page, context, complaints } = await stage.open('design/')
    await settled(page)
    await page.click('summary:has-text("a point on a map")')
    const map = page.locator('[aria-label="Map of land"]')
    await page.waitForSelector('[role=status]:has-text("nearest held climate")', { timeout: 60_000 })
    const box = (await map.boundingBox())!
    // 20° E, 50° N on a map of even degrees.
    await page.mouse.click(box.x + box.width * (200 / 360), box.y + box.height * (40 / 180))
    const latitude = page.getByLabel('Latitude, ° (south negative)')
    expect(Math.abs(Number(await latitude.inputValue()) - 50)).toBeLessThan(2)
    await latitude.fill('50')
    await latitude.blur()
    await map.focus()
    await page.keyboard.press('ArrowUp')
    expect(await latitude.inputValue()).toBe('52')
    expect(await axeViolations(page)).toEqual([])
    await map.focus()
    await page.keyboard.press('Enter')
    await page.waitForSelector('.trust', { timeout: 60_000 })
    await settled(page)
    expect(await page.locator('#climate').inputValue()).toMatch(/^at:52,/)
    expect(complaints).toEqual([])
    await context.close()
  })

  test('a point where no climate is held is said beside the map, and not taken; one far from all is warned of', async () => {
    const { page, context, complaints } = await stage.open('design/')
    await settled(page)
    await page.click('summary:has-text("a point on a map")')
    await page.waitForSelector('[role=status]:has-text("nearest held climate")', { timeout: 60_000 })
    const latitude = page.getByLabel('Latitude, ° (south negative)')
    const take = page.getByRole('button', { name: 'Take this point' })
    for (const text of ['95', '-', '']) {
      await latitude.fill(text)
      await latitude.blur()
      const box = page.locator('.box:has-text("Latitude, ° (south negative)")')
      await box.getByRole('alert').waitFor()
      expect(await box.getByRole('alert').innerText()).toMatch(/stays in use/)
      expect(await latitude.inputValue(), 'stays as it was typed').toBe(text)
      expect(await take.isDisabled(), 'nothing is taken past a box that cannot be read').toBe(true)
    }
    await latitude.fill('-80')
    await latitude.blur()
    await page.waitForSelector('text=No monthly climate is held for this part of the Earth')
    expect(await take.isDisabled()).toBe(true)
    await latitude.fill('-48')
    await latitude.blur()
    const longitude = page.getByLabel('Longitude, ° (west negative)')
    await longitude.fill('-123')
    await longitude.blur()
    await page.waitForSelector('text=the climate here would be a guess')
    expect(await take.isDisabled()).toBe(false)
    expect(complaints).toEqual([])
    await context.close()
  })

  test('fetched only when used; from then on it works with the network off', async () => {
    const { page, context, requests } = await stage.open('design/')
    await settled(page)
    await page.evaluate(() => navigator.serviceWorker.ready.then(() => true))
    await page.waitForFunction(() => navigator.serviceWorker.controller !== null)
    const data = () => requests.filter(ofPlaces)
    expect(data()).toEqual([])
    await goTo(page, 'krako', 'Kraków')
    expect(data().length).toBeGreaterThanOrEqual(2)
    await context.setOffline(true)
    await page.goto(`${stage.url}design/#climate=at:-23.55,-46.64,760`)
    await page.reload()
    await page.waitForSelector('.trust', { timeout: 60_000 })
    await settled(page)
    await goTo(page, 'sao paulo', 'São Paulo')
    expect(await page.locator('main [role=alert]').count()).toBe(0)
    await context.close()
  })

  test('two towns side by side', async () => {
    const { page, context } = await stage.open('design/#climate=at:50.06,19.94,220;name=Krak%25C3%25B3w')
    await page.waitForSelector('.trust', { timeout: 60_000 })
    await settled(page)
    await page.click('nav[aria-label=Pages] summary')
    await page.click('a[href$="compare/"]')
    await page.getByLabel('Or beside another town').fill('lodz')
    await page.waitForSelector('[role=option]:has-text("Łódź")', { timeout: 60_000 })
    await page.getByLabel('Or beside another town').press('Enter')
    await page.waitForFunction(
      () => document.querySelectorAll('[aria-label=Comparison] tbody tr').length === 2,
      null,
      { timeout: 110_000 },
    )
    const table = await page.locator('[aria-label=Comparison]').innerText()
    expect(table).toContain('Kraków')
    expect(table).toContain('Łódź')
    await context.close()
  })
})
