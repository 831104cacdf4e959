import { existsSync } from 'node:fs'
import { chromium, type Browser } from 'playwright-core'

/** Names a Chromium goes by on common systems. */
const SYSTEM_BROWSERS = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/usr/bin/google-chrome-stable',
  '/snap/bin/chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
]

const INSTALL = 'Install one (Debian: apt-get install chromium) or set DUSKBANK_BROWSER to its path.'

/**
 * Starts a Chromium: the one DUSKBANK_BROWSER names, else a system one that really starts, else the one
 * playwright keeps.
 * @throws Error that says what was tried and what to install
 */
export async function startBrowser(): Promise<Browser> {
  const named = process.env.DUSKBANK_BROWSER
  const tried: string[] = []
  const candidates = named ? [named] : [...SYSTEM_BROWSERS.filter((path) => existsSync(path)), undefined]
  for (const executablePath of candidates) {
    try {
      return await chromium.launch({ executablePath, args: ['--no-sandbox'] })
    } catch (reason) {
      tried.push(`${executablePath ?? 'playwright’s own'}: ${String(reason).split('\n')[0]}`)
    }
  }
  throw new Error(`No browser starts for the browser tests. ${INSTALL}\nTried:\n${tried.join('\n')}`)
}
