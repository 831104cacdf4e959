import { createHash } from 'node:crypto'
import { readdirSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { writeReadings, DEMO_READINGS } from '#model/panels/readings'
import { defaultScenario, writeScenarioFile } from '#model/design/scenario'
import { openStage, settled, type Stage } from './stage.ts'
import { goTo, walk } from './walk.ts'
import { picked, resavedSample } from './weather-files.ts'

let stage: Stage
beforeAll(async () => {
  stage = await openStage()
})
afterAll(async () => {
  await stage?.close()
})

const BUILD = fileURLToPath(new URL('../../build/', import.meta.url))
const builtPages = () =>
  readdirSync(BUILD, { recursive: true, encoding: 'utf8' }).filter((file) => file.endsWith('.html'))

describe('the built pages', () => {
  test('each carries a content-security policy ahead of all script, and no script but its own', () => {
    expect(builtPages().length).toBeGreaterThan(8)
    for (const file of builtPages()) {
      const html = readFileSync(BUILD + file, 'utf8')
      const policy = /<meta http-equiv="content-security-policy" content="([^"]+)">/.exec(html)
      expect(policy, file).not.toBeNull()
      expect(html.search(/<script|<link[^>]*modulepreload/), file).toBeGreaterThan(policy!.index)
      const scripts = /script-src ([^;]*)/.exec(policy![1]!)![1]!
      expect(scripts, file).not.toMatch(/unsafe|https?:|data:|blob:|\*/)
      expect(policy![1], file).toContain("default-src 'self'")
      expect(policy![1], file).toContain("object-src 'none'")
      for (const [, attributes, text] of html.matchAll(/<script([^>]*)>([\s\S]*?)<\/script>/g)) {
        const hash = createHash('sha256').update(text!).digest('base64')
        expect(attributes!.includes('src=') || scripts.includes(`'sha256-${hash}'`), file).toBe(true)
      }
      expect(html, 'handlers in attributes').not.toMatch(/<[^>]+\son[a-z]+\s*=/i)
      expect(html, 'things from elsewhere').not.toMatch(
        /<(?:script|img|iframe|link)[^>]+(?:src|href)="(?:https?:)?\/\//,
      )
    }
  })

  test('the browser keeps to it: script put into the page, eval and a call to another machine are stopped', async () => {
    const { page, context } = await stage.open('design/')
    await settled(page)
    const outcome = await page.evaluate(async () => {
      const broken: string[] = []
      addEventListener('securitypolicyviolation', (event) => broken.push(event.effectiveDirective))
      const script = document.createElement('script')
      script.textContent = 'window.ranInline = true'
      document.body.append(script)
      document.body.insertAdjacentHTML('beforeend', '<img src="nothing" onerror="window.ranHandler = true">')
      const called = await fetch('https://duskbank.invalid/').then(
        () => true,
        () => false,
      )
      const image = new Image()
      image.src = 'https://duskbank.invalid/x.png'
      await new Promise((resolve) => setTimeout(resolve, 500))
      return {
        broken: [...new Set(broken)].sort(),
        called,
        ran: Object.keys(window).filter((key) => /^ran/.test(key)),
      }
    })
    expect(outcome.ran).toEqual([])
    expect(outcome.called).toBe(false)
    expect(outcome.broken).toEqual(
      expect.arrayContaining(['connect-src', 'img-src', 'script-src-attr', 'script-src-elem']),
    )
    await context.close()
  })
})

/** Names that would run, load or restyle if they were ever taken for markup; short enough for every name field. */
const EVIL_NAME = '"><img src=x onerror=evil=1><script>evil=1</script><style>*{display:none}'
const EVIL_CELL = '\'"><svg onload=evil=1><iframe src=//duskbank.invalid>{@html 1}${evil=1}'

/** What must not be there on any page after such names came in. */
async function expectOnlyText(page: Page, where: string): Promise<void> {
  const found = await page.evaluate(() => ({
    ran: 'evil' in window,
    elements: document.querySelectorAll('img[src=x], main script, main style, iframe, svg[onload], [onerror]')
      .length,
    shown: document.querySelector('main')!.offsetHeight > 0,
  }))
  expect(found, where).toEqual({ ran: false, elements: 0, shown: true })
}

describe('names from files', () => {
  test('of design, weather, columns, samples and files are text on every page; nothing but the app is asked for', async () => {
    const { page, context } = await stage.open('design/')
    const asked: string[] = []
    context.on('request', (request) => asked.push(request.url()))
    await page.reload()
    await settled(page)

    const scenario = {
      ...defaultScenario(),
      job: { name: EVIL_NAME, note: EVIL_NAME + EVIL_CELL, way: [] },
    }
    await page.click('button:has-text("Keep & share")')
    await page.setInputFiles(
      'dialog input[type=file]',
      picked(`${EVIL_CELL}.json`, writeScenarioFile(scenario)),
    )
    await page.waitForSelector(`dialog`, { state: 'detached' })
    await settled(page)
    expect(await page.locator('main').innerText()).toContain(EVIL_NAME)
    await page.click('button:has-text("Keep & share")')
    await page.click('dialog button:has-text("Keep under this name")')
    await page.waitForSelector('dialog li strong')
    expect(await page.locator('dialog li strong').first().innerText()).toContain('<img src=x')
    await expectOnlyText(page, 'dialog')
    await page.setInputFiles(
      'dialog input[type=file]',
      picked(`${EVIL_NAME}.json`, `{"${EVIL_CELL.replaceAll('"', '')}":1}`),
    )
    await page.waitForSelector('dialog [role=alert]')
    await expectOnlyText(page, 'refusal')
    await page.click('dialog button:text-is("Close")')

    await goTo(page, 'weather')
    const table = resavedSample()
      .replace('Zeit;', `Zeit;`)
      .replace(/^\uFEFF?([^\r]*)\r/, `\uFEFFsite: ${EVIL_NAME}\r\n$1;${EVIL_CELL}\r`)
    const rows = table.split('\r\n').map((row, i) => (i < 2 || row === '' ? row : `${row};${EVIL_CELL}`))
    const input = '[aria-label="Open a weather file"] input[type=file]'
    await page.waitForSelector(`${input}:enabled`)
    await page.setInputFiles(input, picked(`${EVIL_CELL.replaceAll('/', '')}.csv`, rows.join('\r\n')))
    await page.waitForSelector('[data-open-file]', { timeout: 60_000 })
    for (const [label, value] of [
      ['Latitude', 48],
      ['Longitude', 15],
      ['Height above the sea', 200],
    ] as const) {
      await page.getByLabel(label).fill(String(value))
      await page.getByLabel(label).blur()
    }
    await page.waitForSelector('[aria-label="Open a weather file"]:not(:has(progress))')
    await expectOnlyText(page, 'weather table')
    await page.click('button:has-text("Use")')
    await page.waitForTimeout(500)

    await goTo(page, 'coating')
    const [first, ...others] = DEMO_READINGS.samples
    const readings = {
      ...DEMO_READINGS,
      basis: EVIL_NAME,
      samples: [{ ...first!, name: EVIL_NAME }, ...others],
    }
    await page.setInputFiles('main input[type=file] >> nth=0', picked('notes.json', writeReadings(readings)))
    await page.waitForFunction(() => document.querySelector('main')!.innerHTML.includes('&lt;img src=x'))

    await walk(page, async (path) => {
      await page.waitForTimeout(700)
      for (const summary of await page.locator('main details:not([open]) > summary:visible').all())
        await summary.click({ timeout: 2000 }).catch(() => null)
      await expectOnlyText(page, `page ${path}`)
    })
    const outside = asked.filter((url) => !url.startsWith(stage.url) && !/^(data|blob):/.test(url))
    expect(outside, 'requests to other machines').toEqual([])
    console.log(`walk of all pages: ${asked.length} requests, all to the app’s own origin`)
    expect(asked.length).toBeGreaterThan(50)
    await context.close()
  }, 400_000)

  test('a link with markup in it opens as text, and a hostile link leaves the page as it was', async () => {
    const name = encodeURIComponent(EVIL_NAME)
    const good = await stage.open(`design/#climate=continental&job.name=${name}`)
    await settled(good.page)
    expect(await good.page.locator('main').innerText()).toContain(EVIL_NAME)
    await expectOnlyText(good.page, 'link')
    await good.context.close()
    for (const hash of [
      '#climate=__proto__',
      `#climate=${name}`,
      '#climate=continental&__proto__.polluted=1',
      `#climate=continental&room.${name}=1`,
      `#climate=continental&room.length_m=${'9'.repeat(30_000)}`,
    ]) {
      const { page, context } = await stage.open(hash)
      await page.waitForSelector('main [role=alert]', { timeout: 60_000 })
      await expectOnlyText(page, hash.slice(0, 60))
      expect(await page.evaluate(() => 'polluted' in {})).toBe(false)
      await page.selectOption('#climate', 'hot-desert')
      await settled(page)
      await context.close()
    }
  }, 300_000)
})
