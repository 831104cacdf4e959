/* What helps a newcomer along the path: names explained, the draws shown, the way on in reach, nothing under a wrong title. */
import { afterAll, beforeAll, expect, test } from 'vitest'
import { axeViolations, openStage, settled, SIZES, type Stage } from './stage.ts'

const WAIT_MS = 240_000
let stage: Stage
beforeAll(async () => {
  stage = await openStage()
})
afterAll(async () => {
  await stage?.close()
})

test(
  'a name is explained by key, by pointing and by pressing, and Escape closes it',
  { timeout: WAIT_MS },
  async () => {
    const { page, context, complaints } = await stage.open('plant/')
    await settled(page)
    const box = page.locator('#term-box')
    const term = page.locator('button.term').first()
    await term.focus()
    await page.keyboard.press('Enter')
    await box.waitFor({ state: 'visible' })
    expect(await box.innerText()).toMatch(/reflectance|emittance/i)
    expect(await axeViolations(page)).toEqual([])
    await page.keyboard.press('Escape')
    await box.waitFor({ state: 'hidden' })
    expect(await term.evaluate((button) => document.activeElement === button)).toBe(true)
    await term.hover()
    await box.waitFor({ state: 'visible' })
    await page.mouse.move(2, 2)
    await box.waitFor({ state: 'hidden' })
    expect(complaints).toEqual([])
    await context.close()
  },
)

test('the range shows every draw, and the design’s own area', { timeout: WAIT_MS }, async () => {
  const { page, context, complaints } = await stage.open('range/', { viewport: SIZES.phone })
  await settled(page)
  const picture = page.locator('svg[aria-label*="possible years"]')
  await picture.waitFor({ timeout: 120_000 })
  const [met, draws] = /In (\d+) of (\d+) possible years/
    .exec(await page.locator('main').innerText())!
    .slice(1)
    .map(Number) as [number, number]
  expect(await picture.locator('circle').count()).toBe(draws)
  expect(await picture.locator('circle.good').count()).toBe(met)
  expect(await picture.locator('.own-words').textContent()).toMatch(/this design: [\d.]+ m²/)
  expect(await axeViolations(page)).toEqual([])
  expect(complaints).toEqual([])
  await context.close()
})

test(
  'with a machine the range has the machine’s own year, without being asked',
  { timeout: WAIT_MS },
  async () => {
    const { page, context, complaints } = await stage.open(
      'range/#climate=continental&job.way=airConditioner',
    )
    await settled(page)
    const picture = page.locator('svg[aria-label*="years tried"]')
    await picture.waitFor({ timeout: 150_000 })
    expect(await picture.locator('circle').count()).toBe(32)
    expect(await picture.locator('.own-words').textContent()).toMatch(/as described: \d+ h/)
    await page.waitForSelector('[role=img][aria-label*="Room with the machine"]')
    expect(await axeViolations(page)).toEqual([])
    expect(complaints).toEqual([])
    await context.close()
  },
)

test(
  'on a phone the way on is in the strip, and a list of towns has the page to itself',
  { timeout: WAIT_MS },
  async () => {
    const { page, context } = await stage.open('', { viewport: SIZES.phone })
    await settled(page)
    const strip = page.locator('aside.answer')
    await page.locator('[role=combobox]').fill('Inns')
    await page.waitForSelector('[role=option]')
    await expect.poll(() => strip.evaluate((one) => getComputedStyle(one).visibility)).toBe('hidden')
    await page.locator('[role=option]').first().click()
    await expect.poll(() => strip.evaluate((one) => getComputedStyle(one).visibility)).toBe('visible')
    await settled(page)
    expect(await page.locator('.verdict .for').innerText()).not.toContain('Worked example')
    await page.click('aside.answer a:has-text("Next")')
    await page.waitForURL('**/room/')
    expect(await page.locator('[aria-pressed=true]').innerText()).toBe('Workshop room')
    await context.close()
  },
)

test(
  'where the browser offers to install, there is a button, and only there',
  { timeout: WAIT_MS },
  async () => {
    const { page, context } = await stage.open()
    await settled(page)
    const button = page.locator('footer button:has-text("Install")')
    expect(await button.count()).toBe(0)
    await page.evaluate(() =>
      dispatchEvent(
        Object.assign(new Event('beforeinstallprompt', { cancelable: true }), {
          prompt: () => document.body.setAttribute('data-asked', ''),
        }),
      ),
    )
    await button.click()
    expect(await page.locator('body').getAttribute('data-asked')).toBe('')
    expect(await button.count()).toBe(0)
    await context.close()
  },
)

test('“Keep & share” has one space before and after its sign', { timeout: WAIT_MS }, async () => {
  const { page, context } = await stage.open()
  await settled(page)
  const button = page.locator('header button:has-text("Keep")')
  expect((await button.innerText()).replaceAll('\u00a0', ' ')).toBe('Keep & share')
  await context.close()
})
