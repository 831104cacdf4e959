import { afterAll, beforeAll, expect, test } from 'vitest'
import type { Page } from 'playwright-core'
import { duskbank, readCsv } from '../shell/run-shell.ts'
import { openStage, settled, type Stage } from './stage.ts'

/* Label: exact. Page, sheet and map as they are shown, beside the command line: one verdict, one area, one tank, the same hours. */

const WAIT_MS = 300_000
let stage: Stage
beforeAll(async () => {
  stage = await openStage()
})
afterAll(async () => {
  await stage?.close()
})

interface Sized {
  readonly result: string
  readonly fits: boolean
  readonly areaBuilt_m2: number
  readonly storeVolume_m3: number
  readonly hoursOver_h: number
  readonly peak_C: number
}

/** What the command line answers. */
async function asked<T>(command: string, where: readonly string[]): Promise<T> {
  const run = await duskbank(command, ...where, '--format', 'json')
  expect(run.code, run.err).toBe(0)
  return JSON.parse(run.out) as T
}

/** Crossings of the command line's own map, hours and hottest hour, at one tank and some rising areas. */
async function mapped(where: readonly string[], areas_m2: readonly number[], store_m3: number) {
  const axes = ['--areas', areas_m2.join(','), '--others', `${store_m3},${2 * store_m3}`]
  const csv = readCsv((await duskbank('map', ...where, ...axes)).out)
  return areas_m2.map((area_m2) => {
    const at = csv['area_m2']!.findIndex(
      (area, i) => Number(area) === area_m2 && Number(csv['storeVolume_m3']![i]) === store_m3,
    )
    return { hours: Number(csv['hoursOver_h']![at]), peak: Number(csv['peak_C']![at]).toFixed(1) }
  })
}

/** White space as one space: a value and its unit have a hard one between. */
const plain = (text: string): string => text.replace(/\s+/g, ' ').trim()

/** The answer beside a page: its headline, and its rows. */
async function answerOn(page: Page) {
  await settled(page)
  const answer = page.locator('section[aria-label="Answer"]')
  const rows = (await answer.locator('dl > div').allInnerTexts()).map(plain)
  const row = (label: string): string =>
    rows.find((one) => one.startsWith(`${label} `))?.slice(label.length + 1) ?? ''
  return {
    kicker: plain(await answer.locator('.kicker').first().innerText()),
    big: plain(await answer.locator('.big').first().innerText()),
    hours: row('Hours above the limit'),
    peak: row('Hottest hour'),
    store: row('Store'),
  }
}

/** The crossing of the map with a tank that is nearest to an area, from the table behind it. */
async function crossingOn(page: Page, near_m2: number, store_m3: number) {
  await page.waitForSelector('button[aria-label^="Design map"]', { timeout: WAIT_MS })
  await page.waitForSelector('progress[aria-label="Drawing the map"]', {
    state: 'detached',
    timeout: WAIT_MS,
  })
  await page.locator('details:has-text("The numbers behind it") > summary').click()
  const cells = await page
    .locator('details tbody tr')
    .evaluateAll((rows) => rows.map((row) => [...row.children].map((cell) => cell.textContent.trim())))
  const [at] = cells
    .filter(([, store]) => Number(store) === store_m3)
    .toSorted(([a], [b]) => Math.abs(Number(a) - near_m2) - Math.abs(Number(b) - near_m2))
  expect(at, `${store_m3} m³ among ${cells.length} crossings`).toBeDefined()
  return { area_m2: Number(at![0]), hours: Number(at![2]), peak: at![3] }
}

test.each([
  ['the worked example', ['--weather', 'continental'], '', true],
  [
    'a layered tank by the sea, 29 °C allowed, more panel than the roof has room for',
    ['--weather', 'mediterranean-coast', '--set', 'store.kind=layered', '--set', 'target.limit_C=29'],
    '#climate=mediterranean-coast&store.kind=layered&target.limit_C=29',
    false,
  ],
])(
  'page, sheet, map and command line give one verdict on %s',
  async (name, where, link, shouldFit) => {
    const sized = await asked<Sized>('size', [...where, '--draws', '0'])
    const { headline } = await asked<{ headline: string }>('sheet', where)
    const { areaBuilt_m2, storeVolume_m3, hoursOver_h, peak_C, fits } = sized
    console.log(
      `${name}: ${sized.result}, fits ${fits}, ${hoursOver_h} h over, ${peak_C.toFixed(1)} °C; ${plain(headline)}`,
    )
    expect([sized.result, fits]).toEqual(['met', shouldFit])
    const { page, context } = await stage.open(`design/${link}`)
    if (link !== '') await page.waitForSelector('.kicker', { timeout: WAIT_MS })
    const onPage = await answerOn(page)
    expect(onPage.kicker).toBe(
      fits ? 'Panels alone, for the target' : 'Does not fit: panels alone, for the target',
    )
    expect(onPage.big).toBe(`${areaBuilt_m2} m²`)
    expect(onPage.hours).toMatch(new RegExp(`^${hoursOver_h};`))
    expect(onPage.peak).toMatch(new RegExp(`^${peak_C.toFixed(1)} °C;`))
    expect(onPage.store).toMatch(new RegExp(`^${storeVolume_m3} m³ tank,`))

    // The design is kept: sheet and map are opened as a reader of the page opens them, in the same browser.
    await page.goto(`${stage.url}map/`)
    expect(await answerOn(page)).toEqual(onPage)
    const crossing = await crossingOn(page, areaBuilt_m2, storeVolume_m3)
    const areas_m2 = [...new Set([crossing.area_m2, areaBuilt_m2, 2 * areaBuilt_m2])].toSorted(
      (a, b) => a - b,
    )
    const same = await mapped(where, areas_m2, storeVolume_m3)
    const { area_m2, ...shown } = crossing
    expect(shown).toEqual(same[areas_m2.indexOf(area_m2)])
    expect(same[areas_m2.indexOf(areaBuilt_m2)]).toEqual({ hours: hoursOver_h, peak: peak_C.toFixed(1) })
    console.log(`${name}: on the map ${area_m2} m², ${shown.hours} h`)

    await page.goto(`${stage.url}sheet/`)
    const printed = page.locator('article.sheet .headline')
    await printed.waitFor({ timeout: WAIT_MS })
    expect(plain(await printed.innerText())).toBe(plain(headline))
    expect(plain(headline)).toContain(`${areaBuilt_m2} m² of panel: `)
    expect(plain(headline)).toContain(`a ${storeVolume_m3} m³ tank`)
    expect((await page.locator('[data-out="not-buildable"]').count()) === 0).toBe(fits)
    await context.close()
  },
  2 * WAIT_MS,
)
