import { mkdtempSync, readFileSync, rmSync, truncateSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { BrowserContext, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { axeViolations, openStage, settled, SIZES, type Stage } from './stage.ts'
import { goTo } from './walk.ts'
import {
  DATA_FILES,
  PLACES,
  dataFile,
  picked,
  resavedSample,
  sample,
  sampleName,
  strippedFile,
  writeMinuteYear,
  type PickedFile,
} from './weather-files.ts'

let stage: Stage
beforeAll(async () => {
  stage = await openStage()
})
afterAll(async () => {
  await stage?.close()
})

const PICKER = '[aria-label="Open a weather file"] input[type=file]'

async function pick(page: Page, file: PickedFile): Promise<void> {
  await page.waitForSelector(`${PICKER}:enabled`)
  await page.setInputFiles(PICKER, file)
  await page
    .waitForSelector('[role=status]:has(progress)', { state: 'attached', timeout: 2000 })
    .catch(() => null)
  await unread(page)
}

/** Waits until nothing is being read. */
async function unread(page: Page): Promise<void> {
  await page.waitForSelector('[aria-label="Open a weather file"]:not(:has(progress))', { timeout: 60_000 })
}

async function setNumber(page: Page, label: string, value: number): Promise<void> {
  await page.getByLabel(label).fill(String(value))
  await page.getByLabel(label).blur()
  await unread(page)
}

/** Gives the place a file does not name. */
async function place(
  page: Page,
  latitude_deg: number,
  longitude_deg: number,
  altitude_m: number,
): Promise<void> {
  await setNumber(page, 'Latitude', latitude_deg)
  await setNumber(page, 'Longitude', longitude_deg)
  await setNumber(page, 'Height above the sea', altitude_m)
}

/** Processor time of the pages so far, their workers included, s: what other work on the machine does not lengthen. */
async function pagesOwnTime_s(context: BrowserContext): Promise<number> {
  const session = await context.browser()!.newBrowserCDPSession()
  const { processInfo } = await session.send('SystemInfo.getProcessInfo')
  await session.detach()
  return processInfo.filter(({ type }) => type === 'renderer').reduce((sum, { cpuTime }) => sum + cpuTime, 0)
}

/**
 * The plainest reading of the same kind of text in the same page: every row cut at its commas, every cell made a number.
 * What the reader's time is compared with, so that a slow or busy machine slows both.
 */
async function plainReadingTime_s(page: Page, context: BrowserContext, row: string, rows: number) {
  await page.evaluate(
    ([text, count]) => {
      Object.assign(window, { plainText: Array.from({ length: count }, () => text).join('\n') })
    },
    [row, rows] as const,
  )
  const before_s = await pagesOwnTime_s(context)
  const sum = await page.evaluate(() => {
    const { plainText } = window as unknown as { plainText: string }
    let total = 0
    for (const line of plainText.split('\n')) for (const cell of line.split(',')) total += Number(cell) || 0
    return total
  })
  expect(sum).toBeGreaterThan(0)
  return (await pagesOwnTime_s(context)) - before_s
}

const taken = (page: Page, column: number) =>
  page.locator(`tr[data-column="${column}"] select`).first().inputValue()

describe('the weather page', () => {
  for (const [name, viewport] of Object.entries(SIZES)) {
    test(`on a ${name}: charts of the climate, a file opened, no complaint, no sideways scroll, no axe violation`, async () => {
      const { page, context, complaints, requests } = await stage.open('weather/', { viewport })
      await page.waitForSelector('h2:has-text("What its nights give a panel")')
      await pick(page, picked('neu.csv', resavedSample()))
      await place(page, sample.site.latitude_deg, sample.site.longitude_deg, sample.site.altitude_m)
      await page.waitForSelector('[data-clock=agrees]')
      await page.check('input[name=night-year][value=sky]')
      for (const summary of await page.locator('main details > summary').all()) await summary.click()
      expect(await axeViolations(page)).toEqual([])
      const sideways = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)
      expect(sideways).toBeLessThanOrEqual(0)
      expect(complaints).toEqual([])
      const outside = requests.filter((url) => !url.startsWith(stage.url) && !/^(data|blob):/.test(url))
      expect(outside, 'requests to other machines').toEqual([])
      await context.close()
    })
  }

  test('is as accessible in the dark, in US units', async () => {
    const { page, context, complaints } = await stage.open('weather/', { colorScheme: 'dark' })
    await pick(page, picked('neu.csv', resavedSample()))
    await place(page, sample.site.latitude_deg, sample.site.longitude_deg + 20, 300)
    await page.waitForSelector('[data-clock]:not([data-clock=agrees])')
    await page.check('input[name=units][value=us]')
    await page.waitForSelector('td:has-text("°F")')
    expect(await axeViolations(page)).toEqual([])
    expect(complaints).toEqual([])
    await context.close()
  })

  test('a sample re-saved with other headers, semicolons and decimal commas is used and gives the sample’s answer', async () => {
    const { page, context } = await stage.open(`design/#climate=${sampleName}`)
    await settled(page)
    const area_m2 = parseFloat(await page.locator('section[aria-label="Answer"] .big').innerText())
    await goTo(page, 'weather')
    await pick(page, picked('neu.csv', resavedSample()))
    expect(await page.locator('[role=alert]').first().innerText()).toContain('does not say where')
    await place(page, sample.site.latitude_deg, sample.site.longitude_deg, sample.site.altitude_m)
    // The rows begin their hour; an hour's end is the usual reading of such stamps, so the sun must decide.
    const clock = page.locator('[data-clock]')
    if ((await clock.getAttribute('data-clock')) !== 'agrees') {
      await page.click('button:has-text("Read each stamp as the beginning")')
      await unread(page)
    }
    await page.waitForSelector('[data-clock=agrees]')
    expect(await taken(page, 4)).toBe('windSpeed')
    await page.click('button:has-text("Use this weather")')
    await page.click('a:has-text("See the answer")')
    await settled(page)
    const own = await page.inputValue('#climate')
    expect(own).toMatch(/^own:[0-9a-f]{8}$/)
    // Cloud and the split of sunlight are worked out here, not read: a few per cent, or one module more or less.
    const own_m2 = parseFloat(await page.locator('section[aria-label="Answer"] .big').innerText())
    console.log(`area in the sample ${area_m2} m², in the re-saved file ${own_m2} m²`)
    expect(Math.abs(own_m2 - area_m2) / area_m2).toBeLessThan(0.15)
    await page.reload()
    await settled(page)
    expect(await page.inputValue('#climate'), 'kept for the next visit').toBe(own)
    // A link that uses another person's file, of today or of before files were distinguished.
    for (const others of ['own:00000000', 'own']) {
      await page.goto(`${stage.url}design/#climate=${others}&room.roofU_Wm2K=0.2`)
      await page.click('[data-offered] button >> nth=0')
      await page.waitForSelector('[role=alert]:has-text("a weather file that is not here")', {
        timeout: 60_000,
      })
      expect(await page.locator('#climate option:checked').innerText()).toBe(
        'A weather file that is not here',
      )
      await page.selectOption('#climate', own)
      await settled(page)
    }
    await context.close()
  })

  test('a unit that nobody names is asked about: every answer with its consequence, and none goes on without', async () => {
    const { page, context } = await stage.open('weather/', { viewport: SIZES.laptop })
    await pick(page, picked('ohne.csv', resavedSample().replace(' [km/h]', '')))
    await place(page, sample.site.latitude_deg, sample.site.longitude_deg, sample.site.altitude_m)
    const card = page.locator('[data-question=windSpeed]')
    await card.waitFor()
    expect(await page.getByRole('button', { name: 'Use this weather' }).count()).toBe(0)
    await page.waitForFunction(
      () =>
        [...document.querySelectorAll('[data-consequence]')].every((one) =>
          / m²|No panels|Out of reach/.test(one.textContent),
        ),
      null,
      { timeout: 60_000 },
    )
    expect(await card.locator('canvas').count()).toBeGreaterThan(1)
    expect(await axeViolations(page)).toEqual([])
    const doubted = page.locator('[data-ledger] tr.doubt', { hasText: 'Windgeschwindigkeit' })
    expect(await doubted.innerText()).toContain('several fit')
    await card.getByRole('button', { name: 'It is km/h.' }).click()
    await unread(page)
    await card.waitFor({ state: 'detached' })
    expect(await page.getByRole('button', { name: 'Use this weather' }).count()).toBe(1)
    await context.close()
  })

  test('a corrected column is read anew at once, is remembered for the layout, and is taken back', async () => {
    const { page, context } = await stage.open('weather/')
    await pick(page, picked('neu.csv', resavedSample()))
    const unit = page.getByLabel('Unit of column 5')
    expect(await unit.inputValue()).toBe('km/h')
    const before = await page.locator('tr[data-column="4"]').innerText()
    await unit.selectOption('kn')
    await unread(page)
    expect(await page.locator('tr[data-column="4"]').innerText()).not.toBe(before)
    await page.reload()
    await pick(page, picked('next-year.csv', resavedSample()))
    expect(await page.getByLabel('Unit of column 5').inputValue()).toBe('kn')
    await page.click('button:has-text("Start over from the file")')
    await unread(page)
    expect(await page.getByLabel('Unit of column 5').inputValue()).toBe('km/h')
    await context.close()
  })

  test('the mapping goes out as a small file and comes back from it', async () => {
    const { page, context } = await stage.open('weather/')
    await pick(page, picked('neu.csv', resavedSample()))
    await page.getByLabel('Unit of column 5').selectOption('mph')
    await unread(page)
    const download = page.waitForEvent('download')
    await page.click('button:has-text("Save these columns")')
    const path = await (await download).path()
    await page.click('button:has-text("Start over from the file")')
    await unread(page)
    await page.setInputFiles('label:has-text("Use a saved columns file") input', path)
    await unread(page)
    await page.waitForFunction(
      () =>
        (document.querySelector('tr[data-column="4"] td:nth-of-type(2) select') as HTMLSelectElement)
          ?.value === 'mph',
    )
    await page.setInputFiles(
      'label:has-text("Use a saved columns file") input',
      picked('bad.json', '{"version":1}'),
    )
    await page.waitForSelector('[role=alert]:has-text("bad.json")', { timeout: 20_000 })
    expect(await page.getByLabel('Unit of column 5').inputValue()).toBe('mph')
    await context.close()
  })

  test('an hour’s error of the clock is shown, with a button that mends it', async () => {
    const { page, context } = await stage.open('weather/')
    const late = resavedSample().replace(/ (\d\d):00;/g, (_, hour: string) => ` ${hour}:59;`)
    await pick(page, picked('late.csv', late))
    await place(page, sample.site.latitude_deg, sample.site.longitude_deg - 15, sample.site.altitude_m)
    await page.waitForSelector('[data-clock]:not([data-clock=agrees]):not([data-clock=unknown])')
    await page.locator('li button.strong').first().click()
    await unread(page)
    await page.waitForSelector('[data-clock=agrees]')
    await page.click('button:has-text("Take my last change back")')
    await unread(page)
    await page.waitForSelector('[data-clock]:not([data-clock=agrees])')
    await context.close()
  })

  test('gaps of days are refused with their dates until accepted', async () => {
    const { page, context } = await stage.open('weather/')
    const lines = resavedSample().split('\r\n')
    await pick(page, picked('gappy.csv', [...lines.slice(0, 3000), ...lines.slice(3120)].join('\r\n')))
    await place(page, sample.site.latitude_deg, sample.site.longitude_deg, sample.site.altitude_m)
    expect(await page.locator('[role=alert]').first().innerText()).toContain('missing for more than 48 h')
    await page.click('button:has-text("Fill the long gaps")')
    await unread(page)
    await page.waitForSelector('button:has-text("Use this weather")')
    expect(await page.locator('section:has-text("How good is this record")').last().innerText()).toContain(
      'taken from neighbouring days',
    )
    await context.close()
  })

  test('whatever is thrown at it gets a sentence, and the file before stays on the table', async () => {
    const { page, context, complaints } = await stage.open('weather/')
    await pick(page, picked('good.csv', resavedSample()))
    const bad: readonly PickedFile[] = [
      picked('empty.csv', ''),
      picked('picture.csv', Buffer.from([0x89, 0x50, 0x4e, 0x47, 0, 0, 0, 13, 1, 2, 3, 0, 0])),
      picked('prose.txt', 'Dear reader,\nthere is no table here.\nNone at all.\n'),
      picked('mapping.csv', '{"a": [1, 2, 3]}'),
    ]
    for (const file of bad) {
      await pick(page, file)
      const said = await page.locator('[role=alert]').first().innerText()
      expect(said).toContain(file.name)
      expect(said).toContain('good.csv is still on the table')
    }
    expect(await page.locator('[data-open-file]').innerText()).toContain('good.csv')
    expect(complaints).toEqual([])
    await context.close()
  })

  test('200 MB are refused at once, with what to do', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'duskbank-large-'))
    const file = join(folder, 'large.csv')
    writeFileSync(file, 'time,temp\n')
    truncateSync(file, 200e6)
    const { page, context } = await stage.open('weather/')
    await page.waitForSelector(`${PICKER}:enabled`)
    await page.setInputFiles(PICKER, file)
    await page.waitForSelector('[role=alert]', { timeout: 20_000 })
    rmSync(folder, { recursive: true })
    expect(await page.locator('[role=alert]').innerText()).toMatch(/large\.csv.*200 MB.*one year/s)
    await context.close()
  })

  test('a file can be dropped', async () => {
    const { page, context } = await stage.open('weather/')
    await page.waitForSelector(`${PICKER}:enabled`)
    const carried = await page.evaluateHandle((text) => {
      const transfer = new DataTransfer()
      transfer.items.add(new File([text], 'dropped.csv'))
      return transfer
    }, resavedSample())
    await page.dispatchEvent('[aria-label="Open a weather file"]', 'drop', { dataTransfer: carried })
    await page.waitForSelector('[data-open-file]:has-text("dropped.csv")')
    await context.close()
  })

  test('60 MB of one-minute rows: a small multiple of a plain reading’s time, can be cancelled, and the page answers meanwhile', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'duskbank-minutes-'))
    const file = join(folder, 'minutes.csv')
    const bytes = writeMinuteYear(file)
    const { page, context } = await stage.open('weather/')
    await page.waitForSelector(`${PICKER}:enabled`)
    await page.setInputFiles(PICKER, file)
    await page.click('button:has-text("Cancel")')
    expect(await page.locator('[data-open-file]').count()).toBe(0)
    const [started, before_s] = [performance.now(), await pagesOwnTime_s(context)]
    await page.setInputFiles(PICKER, file)
    await page.check('input[name=night-year][value=dew]')
    const answered_s = (performance.now() - started) / 1000
    expect(await page.locator('progress').count(), 'the click came while the file was read').toBe(1)
    await page.waitForSelector('[data-open-file]', { timeout: 90_000 })
    const [took_s, own_s] = [(performance.now() - started) / 1000, (await pagesOwnTime_s(context)) - before_s]
    const lines = readFileSync(file, 'utf8').split('\n')
    rmSync(folder, { recursive: true })
    const plain_s = await plainReadingTime_s(page, context, lines[1]!, lines.length)
    console.log(
      `${(bytes / 1e6).toFixed(0)} MB: ${own_s.toFixed(1)} s of the page’s own time, ${(own_s / plain_s).toFixed(1)} × a plain reading’s ${plain_s.toFixed(1)} s, ${took_s.toFixed(1)} s by the clock; a click meanwhile took ${answered_s.toFixed(2)} s`,
    )
    expect(bytes).toBeGreaterThan(58e6)
    expect(own_s / plain_s).toBeLessThan(40)
    await context.close()
  })

  test('stress is a field of the design and its effect is beside it; a sample is put under the design', async () => {
    const { page, context } = await stage.open('weather/')
    await page.click('button:has-text("hot desert") >> nth=0')
    await page.waitForSelector('h2:has-text("Tarrazine Wells")')
    await page.click('button:has-text("Put the design in this climate")')
    await page.waitForSelector('text=The design uses this climate')
    const hottest = page.locator('tr:has-text("Hottest hour") td')
    expect(await hottest.nth(0).innerText()).toBe(await hottest.nth(1).innerText())
    await page.locator('[data-field="site.hotSpell_K"] input[inputmode=decimal]').fill('4')
    await page.waitForSelector('tr:has-text("Hottest hour") td.moved')
    const [asIs, harder] = [await hottest.nth(0).innerText(), await hottest.nth(1).innerText()].map(
      parseFloat,
    )
    expect(harder! - asIs!).toBeGreaterThan(2)
    expect(harder! - asIs!).toBeLessThan(4.3)
    await goTo(page, 'design')
    expect(await page.inputValue('#climate')).toBe('hot-desert')
    await context.close()
  })
})

const AWAY = DATA_FILES.length === 0 ? 'the open data files are not beside this repository' : ''
if (AWAY) console.log(`weather page: not tried on open data, ${AWAY}`)

describe.skipIf(AWAY !== '')(`open data on the page${AWAY ? `: skipped, ${AWAY}` : ''}`, () => {
  test.each(DATA_FILES)(
    '%s opens without a mapping made by hand, with a verdict on its clock',
    async (name) => {
      const { page, context, complaints } = await stage.open('weather/')
      await pick(page, dataFile(name))
      expect(await page.locator('[data-open-file]').innerText()).toContain(name)
      if ((await page.locator('[role=alert]:has-text("does not say where")').count()) > 0) {
        console.log(`${name}: names no place; given by hand`)
        await place(page, ...PLACES[name]!)
      }
      const accept = page.locator('button:has-text("Fill the long gaps")')
      if ((await accept.count()) > 0) {
        await accept.click()
        await unread(page)
      }
      await page.waitForSelector('h2:has-text("Where does each column come from")')
      console.log(`${name}: ${await page.locator('[data-clock]').innerText()}`)
      expect(complaints).toEqual([])
      await context.close()
    },
  )

  test.each(DATA_FILES.filter((name) => name.startsWith('typical')))(
    '%s without its header: the main columns found by physics',
    async (name) => {
      const { file, quantities } = strippedFile(name)
      const { page, context } = await stage.open('weather/')
      await pick(page, file)
      for (const quantity of ['airTemp', 'pressure', 'windSpeed', 'globalHorizontal'] as const) {
        expect(await taken(page, quantities.indexOf(quantity)), quantity).toBe(quantity)
      }
      await context.close()
    },
  )
})
