import { execFileSync } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Page } from 'playwright-core'

/** Why printed pages cannot be read back here, or null when they can. */
export function whyNoPdfText(): string | null {
  try {
    execFileSync('pdftotext', ['-v'], { stdio: 'ignore' })
    return null
  } catch {
    return 'pdftotext is not installed (Debian: apt-get install poppler-utils), so the print is not read back'
  }
}

/** Prints the page as the browser would and reads it back. */
export async function printedText(
  page: Page,
  format: 'A4' | 'Letter',
): Promise<{ pages: number; text: string }> {
  const folder = mkdtempSync(join(tmpdir(), 'duskbank-print-'))
  const path = join(folder, 'print.pdf')
  try {
    await page.pdf({ path, format })
    const text = execFileSync('pdftotext', [path, '-'], { encoding: 'utf8' })
    return { pages: text.split('\f').length - 1, text }
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}

/** Every number of a text without its sign, and how often it is there. */
export function numbersOf(text: string): Map<string, number> {
  const counts = new Map<string, number>()
  for (const [number] of text.matchAll(/\d+(?:\.\d+)?/g)) counts.set(number, (counts.get(number) ?? 0) + 1)
  return counts
}

/** Numbers that are in `these` more often than in `those`, each with by how many. */
export function moreOften(these: Map<string, number>, those: Map<string, number>): [string, number][] {
  return [...these]
    .map(([number, times]): [string, number] => [number, times - (those.get(number) ?? 0)])
    .filter(([, times]) => times > 0)
}
