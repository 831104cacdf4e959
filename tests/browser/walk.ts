import type { Page } from 'playwright-core'
import { PAGES } from '#ui/shell/pages.ts'

/** What tells that a page has worked something out, where more than its heading is to be waited for. */
const COMPUTED: Readonly<Record<string, string>> = {
  '': 'section[aria-label="Answer"][aria-busy="false"] .big',
  coating: '[data-out=estimate][aria-busy=false]',
  weather: 'canvas',
  sheet: '[data-sheet] table',
  asbuilt: 'button:enabled',
  trust: 'details > summary',
}

/** Goes to a page by its link in the navigation, as a user does, so that what is open stays open. */
export async function goTo(page: Page, path: string): Promise<void> {
  const label = PAGES.find((row) => row.path === path)!.label
  await page.click(`nav[aria-label=Pages] a:text-is("${label}")`)
  await page.waitForSelector(`nav[aria-label=Pages] a[aria-current=page]:text-is("${label}")`)
  await page.waitForSelector('main h1')
  await computed(page, path)
}

/** Waits until a page shows what it works out. */
export async function computed(page: Page, path: string): Promise<void> {
  await page.waitForSelector(COMPUTED[path] ?? 'main h1', { timeout: 90_000 })
}

/** All pages in the order of the navigation. */
export async function walk(page: Page, visit: (path: string) => Promise<void>): Promise<void> {
  for (const { path } of PAGES) {
    await goTo(page, path)
    await visit(path)
  }
}
