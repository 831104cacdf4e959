import type { Page } from 'playwright-core'
import { FURTHER, PATH } from '#ui/shell/pages.ts'

/** All pages that exist, in the order of the work. */
export const PAGES = [...PATH, ...FURTHER] as const

/** What shows that a page has worked something out, where more than its heading is to be waited for. */
const ANSWER = 'section[aria-label="Answer"][aria-busy="false"] .big'
const COMPUTED: Readonly<Record<string, string>> = {
  '': ANSWER,
  room: ANSWER,
  plant: ANSWER,
  range: ANSWER,
  design: ANSWER,
  coating: '[data-out=estimate][aria-busy=false]',
  weather: 'canvas',
  sheet: '[data-sheet] table',
  asbuilt: 'button:enabled',
  trust: 'details > summary',
}

/** Goes to a page by its link in the menu of all pages, as a user does, so that what is open stays open. */
export async function goTo(page: Page, path: string): Promise<void> {
  const label = PAGES.find((row) => row.path === path)!.label
  const menu = 'nav[aria-label=Pages]'
  await page.click(`${menu} summary`)
  await page.click(`${menu} a:text-is("${label}")`)
  await page.waitForSelector(`${menu} a[aria-current=page]:text-is("${label}")`, { state: 'attached' })
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
