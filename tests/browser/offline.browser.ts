import { createHash } from 'node:crypto'
import { cpSync, mkdtempSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs'
import { createServer, type Server } from 'node:http'
import type { AddressInfo } from 'node:net'
import { tmpdir } from 'node:os'
import { extname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { startBrowser } from './find-browser.ts'
import { openStage, settled, type Stage } from './stage.ts'
import { PAGES, computed, walk } from './walk.ts'

let stage: Stage
beforeAll(async () => {
  stage = await openStage()
})
afterAll(async () => {
  await stage?.close()
})

/** Waits until the service worker holds the whole app and answers for the page. */
async function stored(page: Page): Promise<void> {
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => true))
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null)
}

describe('with the network off, after one visit to one page', () => {
  test('every page opens by its link and by its address, and computes', async () => {
    const { page, context, complaints } = await stage.open('design/')
    await settled(page)
    await stored(page)
    await context.setOffline(true)
    await walk(page, async () => {})
    for (const { path } of PAGES) {
      await page.goto(stage.url + (path ? `${path}/` : ''))
      await computed(page, path)
    }
    await page.goto(`${stage.url}design/`)
    for (const climate of ['hot-desert', 'humid-subtropical', 'high-dry-plateau']) {
      const there = await page.locator(`#climate option[value="${climate}"]`).count()
      if (there === 0) continue
      await page.selectOption('#climate', climate)
      await settled(page)
    }
    await page.goto(`${stage.url}compare`)
    await page.waitForURL(`${stage.url}compare/`)
    expect(await page.locator('main [role=alert]').count()).toBe(0)
    expect(complaints).toEqual([])
    await context.close()
  }, 300_000)
})

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
  '.csv': 'text/csv',
  '.webmanifest': 'application/manifest+json',
}

/** A plain host of a folder that can be swapped for the next version while a browser has the page open. */
async function host(): Promise<{ server: Server; url: string; serve: (folder: string) => void }> {
  let folder = ''
  const server = createServer((request, response) => {
    const path = new URL(request.url ?? '/', 'http://host').pathname
    const file = join(folder, path.endsWith('/') ? `${path}index.html` : path)
    try {
      const body = readFileSync(file)
      response.writeHead(200, {
        'content-type': TYPES[extname(file)] ?? 'text/plain',
        'cache-control': 'no-cache',
      })
      response.end(body)
    } catch {
      response.writeHead(404).end()
    }
  })
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve))
  const { port } = server.address() as AddressInfo
  return { server, url: `http://127.0.0.1:${port}/`, serve: (next) => (folder = next) }
}

const BUILD = fileURLToPath(new URL('../../build/', import.meta.url))

/** The build as a next version would be: every hashed script under another name, none of the old ones there. */
function nextVersion(to: string): void {
  cpSync(BUILD, to, { recursive: true })
  renameSync(join(to, '_app/immutable'), join(to, '_app/renewed'))
  const { version } = JSON.parse(readFileSync(join(to, '_app/version.json'), 'utf8')) as { version: string }
  for (const name of readdirSync(to, { recursive: true, encoding: 'utf8' })) {
    if (!/\.(html|js|css|json)$/.test(name)) continue
    const renewed = readFileSync(join(to, name), 'utf8')
      .replaceAll('_app/immutable', '_app/renewed')
      .replaceAll(version, `${version}2`)
    writeFileSync(join(to, name), name.endsWith('.html') ? marked(renewed) : renewed)
  }
}

/** A page of the next version, its policy in step with its one inline script. */
function marked(html: string): string {
  const script = /<script>([\s\S]*?)<\/script>/.exec(html)![1]!
  const hash = createHash('sha256').update(script).digest('base64')
  return html.replace('<body', '<body data-version="2"').replace(/'sha256-[^']+'/, `'sha256-${hash}'`)
}

test('a new version waits while the old one works on whole, takes over on a click, and the work is kept', async () => {
  const next = mkdtempSync(join(tmpdir(), 'duskbank-next-'))
  const torn = mkdtempSync(join(tmpdir(), 'duskbank-torn-'))
  nextVersion(next)
  nextVersion(torn)
  rmSync(join(torn, '_app/renewed/chunks'), { recursive: true })
  const { server, url, serve } = await host()
  const browser = await startBrowser()
  try {
    serve(BUILD)
    const page = await browser.newPage()
    const complaints: string[] = []
    page.on('pageerror', (error) => complaints.push(String(error)))
    await page.goto(`${url}design/`)
    await settled(page)
    await stored(page)
    await page.click('button:has-text("Garden shed")')
    await settled(page)
    const room = await page.locator('details[data-part=room] > summary').innerText()
    const update = () =>
      page.evaluate(async () =>
        (await navigator.serviceWorker.ready).update().then(
          () => true,
          () => false,
        ),
      )
    const isNew = () => page.locator('body[data-version="2"]').count()

    serve(torn)
    await update()
    await page.waitForTimeout(1500)
    await page.reload()
    await settled(page)
    expect(await page.locator('.notice').count(), 'a version that is only half there is not offered').toBe(0)

    serve(next)
    await update()
    await page.waitForSelector('.notice:has-text("newer Duskbank")', { timeout: 30_000 })
    await walk(page, async () => {})
    await page.goto(`${url}design/`)
    await settled(page)
    expect(await isNew(), 'the old version stays whole until it is let go').toBe(0)

    await page.click('.notice button:has-text("Use it now")')
    await page.waitForSelector('body[data-version="2"]', { timeout: 30_000 })
    await settled(page)
    expect(await page.locator('details[data-part=room] > summary').innerText()).toBe(room)
    await walk(page, async () => {})
    const scripts = await page.evaluate(() =>
      performance
        .getEntriesByType('resource')
        .map(({ name }) => name)
        .filter((name) => name.includes('/_app/')),
    )
    expect(scripts.filter((name) => name.includes('/immutable/'))).toEqual([])
    expect(await page.evaluate(async () => (await caches.keys()).length)).toBe(1)
    expect(complaints).toEqual([])
  } finally {
    await browser.close()
    server.close()
    for (const folder of [next, torn]) rmSync(folder, { recursive: true, force: true })
  }
}, 300_000)
