import { readFileSync } from 'node:fs'
import { readFile } from 'node:fs/promises'
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { defaultScenario } from '#model/design/scenario'
import { openStage, settled, type Stage } from './stage.ts'
import { goTo } from './walk.ts'
import { picked } from './weather-files.ts'

let stage: Stage
beforeAll(async () => {
  stage = await openStage()
})
afterAll(async () => {
  await stage?.close()
})

const room = 'details[data-part=room] > summary'
const notice = '.notice'

/** Replaces what the browser keeps of the design and opens the page anew; the leaving page must not write over it. */
async function reopenWith(page: Page, key: string, text: string): Promise<void> {
  await page.goto(`${stage.url}licences.txt`)
  await page.evaluate(([name, value]) => localStorage.setItem(name!, value!), [key, text])
  await page.goto(`${stage.url}design/`)
}

describe('what the browser kept', () => {
  const damaged: Readonly<Record<string, string>> = {
    'cut off': '{"climate":"hot-desert","scenario":{"room":{"leng',
    'not ours': '[1,2,3]',
    'of a newer version': JSON.stringify({
      climate: 'continental',
      scenario: { duskbankScenario: 99, room: { skyLight: 1 } },
    }),
    'out of range': '{"climate":"continental","scenario":{"room":{"length_m":-4}}}',
    'made to hurt': '{"climate":"continental","scenario":{"__proto__":{"polluted":1}}}',
  }
  test('is set aside and offered as a file when it cannot be read; the page opens and computes', async () => {
    const { page, context } = await stage.open('design/')
    await settled(page)
    for (const [how, text] of Object.entries(damaged)) {
      await reopenWith(page, 'duskbank.design', text)
      await settled(page)
      expect(await page.locator('main [role=alert]').first().innerText(), how).toContain('was not opened')
      const download = page.waitForEvent('download')
      await page.click(`${notice} button:has-text("Save it to a file")`)
      expect(await readFile(await (await download).path(), 'utf8'), how).toBe(text)
      await page.reload()
      await settled(page)
      expect(await page.locator(notice).count(), `${how}, a visit later`).toBe(1)
      await page.click(`${notice} button:has-text("Throw it away")`)
      expect(await page.locator(notice).count()).toBe(0)
    }
    await context.close()
  }, 200_000)

  test('from the first version still opens, by file and from the browser; a newer file is refused in a sentence', async () => {
    const { page, context } = await stage.open('design/')
    await settled(page)
    const sample = readFileSync(new URL('../rooms/design/scenario/version-1.json', import.meta.url), 'utf8')
    await page.click('button:has-text("Keep & share")')
    await page.setInputFiles(
      'dialog input[type=file]',
      picked('newer.json', '{"duskbankScenario":4,"cellar":{}}'),
    )
    const refusal = await page.locator('dialog [role=alert]').innerText()
    expect(refusal).toContain('newer.json')
    expect(refusal).toContain('written by a newer Duskbank (version 4; this one reads up to 3)')
    await page.setInputFiles('dialog input[type=file]', picked('version-1.json', sample))
    await page.waitForSelector('dialog', { state: 'detached' })
    await settled(page)
    const length = (JSON.parse(sample) as { room: { length_m: number } }).room.length_m
    await page.click(room)
    expect(await page.inputValue('[data-field="room.length_m"] input[inputmode=decimal]')).toBe(
      String(length),
    )
    // As the autosave was written before it carried every field.
    await reopenWith(page, 'duskbank.design', '{"climate":"hot-desert","scenario":{"room":{"length_m":7}}}')
    await settled(page)
    expect(await page.inputValue('#climate')).toBe('hot-desert')
    expect(await page.locator(notice).count()).toBe(0)
    await context.close()
  })

  test('of weather and named designs is passed over when it is rubbish', async () => {
    const { page, context, complaints } = await stage.open('design/')
    await settled(page)
    await page.evaluate(async () => {
      const put = (base: string, store: string, entries: [string, unknown][]) =>
        new Promise<void>((resolve, reject) => {
          const opening = indexedDB.open(base)
          opening.onupgradeneeded = () => opening.result.createObjectStore(store)
          opening.onerror = () => reject(opening.error)
          opening.onsuccess = () => {
            const change = opening.result.transaction(store, 'readwrite')
            for (const [key, value] of entries) change.objectStore(store).put(value, key)
            change.oncomplete = () => {
              opening.result.close()
              resolve()
            }
          }
        })
      const half = { site: { name: 'half' }, hours: 8760, airTemp_C: new Float64Array(3) }
      await put('keyval-store', 'keyval', [['duskbank.own-weather', half]])
      await put('duskbank-designs', 'designs', [
        ['a', null],
        ['b', 7],
        ['c', { name: 'c', savedAt_ms: 1, text: '{' }],
      ])
    })
    await reopenWith(page, 'duskbank.design', '{"climate":"own","scenario":{}}')
    await page.waitForSelector('[role=alert]:has-text("not kept in this browser")', { timeout: 60_000 })
    await page.selectOption('#climate', 'continental')
    await settled(page)
    await page.click('button:has-text("Keep & share")')
    await page.waitForSelector('dialog li strong')
    expect(await page.locator('dialog li strong').allInnerTexts()).toEqual(['c'])
    await page.click('dialog li button:has-text("Open")')
    expect(await page.locator('dialog [role=alert]').innerText()).toContain('cannot be read')
    expect(complaints).toEqual([])
    await context.close()
  })
})

/** Changes the design and gives its room as the page words it. */
async function change(page: Page, preset: string): Promise<string> {
  await page.click(`button:has-text("${preset}")`)
  await settled(page)
  await page.waitForTimeout(500)
  return page.locator(room).innerText()
}

describe('a browser that keeps nothing', () => {
  test('because its storage is full: it is said on every page, the page works, a file saves the work', async () => {
    const { page, context } = await stage.open('design/')
    await settled(page)
    const filled = await page.evaluate(() => {
      localStorage.clear()
      let size = 1 << 22
      let kept = 0
      for (let i = 0; size >= 1;) {
        try {
          localStorage.setItem(`x${i++}`, 'x'.repeat(size))
          kept += size
        } catch {
          size >>= 1
        }
      }
      return kept
    })
    expect(filled).toBeGreaterThan(1_000_000)
    const wanted = await change(page, 'Garden shed')
    expect(await page.locator(notice).innerText()).toContain('keeps nothing for the next visit')
    await goTo(page, 'trust')
    expect(await page.locator(notice).count()).toBe(1)
    await goTo(page, 'design')
    await page.click('button:has-text("Keep & share")')
    const download = page.waitForEvent('download')
    await page.click('dialog button:has-text("Save to a file")')
    const path = await (await download).path()
    await page.evaluate(() => localStorage.clear())
    await page.click('dialog button:text-is("Close")')
    await change(page, 'Workshop')
    expect(await page.locator(notice).count()).toBe(0)
    await page.click('button:has-text("Keep & share")')
    await page.setInputFiles('dialog input[type=file]', path)
    await page.waitForSelector('dialog', { state: 'detached' })
    await settled(page)
    expect(await page.locator(room).innerText()).toBe(wanted)
    await context.close()
  })

  test('because it is private: storage that throws at every touch stops nothing', async () => {
    const { page, context, complaints } = await stage.open('licences.txt')
    await page.addInitScript(() => {
      const denied = {
        get: () => {
          throw new DOMException('denied', 'SecurityError')
        },
      }
      Object.defineProperty(window, 'localStorage', denied)
      Object.defineProperty(window, 'sessionStorage', denied)
      Object.defineProperty(window, 'indexedDB', denied)
    })
    await page.goto(`${stage.url}design/`)
    await settled(page)
    await page.waitForSelector(notice)
    await change(page, 'Garden shed')
    await page.check('input[name=units][value=us]')
    await page.click('button:has-text("Keep & share")')
    await page.click('dialog button:has-text("Keep under this name")')
    expect(await page.locator('dialog [role=alert]').innerText()).toContain('Save a file instead')
    await page.click('dialog button:text-is("Close")')
    for (const path of ['coating', 'batch', 'weather']) await goTo(page, path)
    expect(complaints.filter((text) => !text.includes('sessionStorage'))).toEqual([])
    await context.close()
  })
})

describe('two tabs at once', () => {
  test('each is informed when the other keeps something, and either design can be had', async () => {
    const { page: first, context } = await stage.open('design/')
    await settled(first)
    await first.waitForTimeout(500)
    const second = await context.newPage()
    await second.goto(`${stage.url}design/`)
    await settled(second)
    await second.waitForTimeout(500)
    expect(await first.locator(notice).count(), 'looking alone disturbs nobody').toBe(0)
    const shed = await change(second, 'Garden shed')
    await first.waitForSelector(`${notice}:has-text("another tab")`)
    await first.click(`${notice} button:has-text("Show the other tab’s design here")`)
    await settled(first)
    expect(await first.locator(room).innerText()).toBe(shed)
    await first.click('button:has-text("Undo")')
    await settled(first)
    const workshop = await first.locator(room).innerText()
    expect(workshop).not.toBe(shed)
    await second.waitForSelector(`${notice}:has-text("another tab")`)
    await second.close()
    await first.reload()
    await settled(first)
    expect(await first.locator(room).innerText(), 'the last change is kept').toBe(workshop)
    await context.close()
  })
})

test('a change made in the very moment of leaving is kept', async () => {
  const { page, context } = await stage.open('design/')
  await settled(page)
  await page.click('button:has-text("Garden shed")')
  await page.goto(`${stage.url}licences.txt`)
  const kept = await page.evaluate(() => localStorage.getItem('duskbank.design'))
  await page.goto(`${stage.url}design/`)
  await settled(page)
  expect(kept).toContain('duskbankScenario')
  expect(kept).not.toContain(JSON.stringify(defaultScenario().room))
  await context.close()
})

test('starting anew brings the worked example, and one undo what was open', async () => {
  const { page, context } = await stage.open('design/#climate=continental&room.length_m=9&job.name=Mine')
  await settled(page)
  const before = await page.locator(room).innerText()
  await page.click('button:has-text("Keep & share")')
  await page.click('button:has-text("Start anew")')
  await settled(page)
  expect(await page.locator(room).innerText()).not.toBe(before)
  await page.click('button:has-text("Undo")')
  await settled(page)
  expect(await page.locator(room).innerText()).toBe(before)
  await context.close()
})
