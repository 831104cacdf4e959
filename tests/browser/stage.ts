import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import type { Browser, BrowserContext, BrowserContextOptions, Page } from 'playwright-core'
import { startBrowser } from './find-browser.ts'
import { serveBuild, type ServedBuild } from './serve-build.ts'

/** Sizes every page is tried at. */
export const SIZES = {
  phone: { width: 390, height: 844 },
  laptop: { width: 1366, height: 768 },
  wide: { width: 1920, height: 1080 },
} as const

/** A page with everything it complained about and everything it asked the network for. */
export interface Watched {
  readonly page: Page
  readonly context: BrowserContext
  /** Console errors, page errors and failed requests so far. */
  readonly complaints: string[]
  readonly requests: string[]
}

/** Browser and served build for one test file: `const stage = await openStage()`, `await stage.close()`. */
export interface Stage {
  readonly url: string
  readonly open: (path?: string, options?: BrowserContextOptions) => Promise<Watched>
  readonly close: () => Promise<void>
}

export async function openStage(): Promise<Stage> {
  const served = await serveBuild()
  let browser: Browser
  try {
    browser = await startBrowser()
  } catch (reason) {
    await served.stop()
    throw reason
  }
  return {
    url: served.url,
    open: (path = '', options = {}) => openPage(browser, served, path, options),
    close: async () => {
      await browser.close()
      await served.stop()
    },
  }
}

/**
 * What the browser calls a request the page itself dropped: one still under way when the page is left. What cannot be
 * had has another name (offline: ERR_INTERNET_DISCONNECTED; refused by a service worker: ERR_FAILED; by policy: csp).
 */
const GIVEN_UP = 'net::ERR_ABORTED'

async function openPage(
  browser: Browser,
  served: ServedBuild,
  path: string,
  options: BrowserContextOptions,
): Promise<Watched> {
  const context = await browser.newContext({ viewport: SIZES.laptop, reducedMotion: 'reduce', ...options })
  const page = await context.newPage()
  const complaints: string[] = []
  const requests: string[] = []
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') complaints.push(message.text())
  })
  page.on('pageerror', (error) => complaints.push(String(error)))
  page.on('requestfailed', (request) => {
    const why = request.failure()?.errorText
    if (why !== GIVEN_UP) complaints.push(`${request.url()}: ${why}`)
  })
  page.on('request', (request) => requests.push(request.url()))
  await page.goto(served.url + path)
  return { page, context, complaints, requests }
}

/** Waits until the answer on screen belongs to the description on screen. */
export async function settled(page: Page): Promise<void> {
  await page.waitForSelector('section[aria-label="Answer"][aria-busy="false"] .big', { timeout: 60_000 })
}

const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8')

/** Accessibility violations of the page as it is, one line each: rule, what is wrong, where. */
export async function axeViolations(page: Page): Promise<string[]> {
  await page.evaluate(AXE)
  return page.evaluate(async () => {
    const axe = (globalThis as unknown as { axe: { run: () => Promise<{ violations: AxeViolation[] }> } }).axe
    interface AxeViolation {
      id: string
      help: string
      nodes: { target: unknown; failureSummary?: string }[]
    }
    const { violations } = await axe.run()
    return violations.flatMap(({ id, help, nodes }) =>
      nodes.map(
        ({ target, failureSummary }) => `${id}: ${help} at ${JSON.stringify(target)} ${failureSummary ?? ''}`,
      ),
    )
  })
}
