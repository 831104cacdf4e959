import { execFileSync } from 'node:child_process'
import { readFile } from 'node:fs/promises'
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { axeViolations, openStage, settled, type Stage } from './stage.ts'

let stage: Stage
beforeAll(async () => {
  stage = await openStage()
})
afterAll(async () => {
  await stage?.close()
})

/** A brick room under dark felt: what a way once wrote over. */
const ROOM = ['room.wallBuild=brick', 'room.roofReflectance_frac=0.1'] as const
const LINK = `climate=continental&${ROOM.join('&')}`
const TAKEN = '[role=status]:has-text("In the design now")'
const CARD = '.ways article'

function shell<T>(command: string, ...words: readonly string[]): T {
  const set = ROOM.flatMap((one) => ['--set', one])
  const asked = [command, '--weather', 'continental', ...set, ...words, '--format', 'json']
  return JSON.parse(
    execFileSync(process.execPath, ['--import', 'tsx', 'src/shell/duskbank.ts', ...asked], {
      encoding: 'utf8',
      stdio: ['ignore', 'pipe', 'ignore'],
      maxBuffer: 1e8,
    }),
  ) as T
}

const plainly = (text: string): string => text.replaceAll('\u00a0', ' ')
const answerOf = async (page: Page): Promise<string> => {
  await settled(page)
  return plainly(await page.locator('section[aria-label="Answer"]').innerText())
}
const go = (page: Page, step: string) => page.locator(`nav a:has-text("${step}"):visible`).first().click()

test.each([
  ['insulateWalls,panels', 'Insulate the walls + panels'],
  ['paintRoof,insulateWalls,nightFan', 'Paint the roof with your coating + Insulate the walls + Night fan'],
  ['airConditioner', 'small air conditioner'],
])(
  'one answer for %s: on Cool, Panel, Range and Sheet, and from the shell',
  async (way, name) => {
    const taken = ['--set', `job.way=${way}`]
    const size = shell<Record<string, number | string>>('size', ...taken, '--draws', '0')
    const hours = Number(size['hoursOver_h']).toFixed(0)
    const peak = `${Number(size['peak_C']).toFixed(1)} °C`
    const before = `${Number(size['asItIsPeak_C']).toFixed(1)} °C, ${Number(size['asItIsHoursOver_h']).toFixed(0)} h`
    expect(size['way']).toBe(name)
    const found = shell<Record<string, readonly (number | string)[]>>('decide', '--only', way, '--all')
    const at = found['measures']!.indexOf(name)
    expect(Number(found['hoursOver']![at]).toFixed(0)).toBe(hours)
    expect(`${Number(found['peak_C']![at]).toFixed(1)} °C`).toBe(peak)

    const { page, context, complaints } = await stage.open(`decide/#${LINK}&job.way=${way}`)
    await page.locator(`${TAKEN} [data-out=hours]`).waitFor({ timeout: 60_000 })
    expect(await page.locator('[data-out=hours]').innerText()).toBe(`${hours} h`)
    expect(plainly(await page.locator('[data-out=peak]').innerText())).toBe(peak)
    expect(await axeViolations(page)).toEqual([])
    for (const step of ['Panel', 'Range'] as const) {
      await go(page, step)
      const answer = await answerOf(page)
      expect(answer, step).toMatch(new RegExp(`Hottest hour\\s+${peak.replace('.', '\\.')}`))
      expect(answer, step).toMatch(new RegExp(`Hours above the limit\\s+${hours}(\\D|$)`))
      expect(answer, step).toContain(before)
    }
    if (!way.includes('panels'))
      await page
        .locator(`.own-words:has-text("as described: ${hours} h")`)
        .waitFor({ state: 'attached', timeout: 150_000 })
    await go(page, 'Sheet')
    const sheet = page.locator('[data-sheet] >> nth=0')
    await sheet.locator('text=Hours above the limit').waitFor({ timeout: 60_000 })
    const words = plainly(await sheet.innerText())
    expect(words).toMatch(new RegExp(`Hours above the limit\\s+${hours};`))
    expect(words).toMatch(new RegExp(`Hottest hour\\s+${peak.replace('.', '\\.')};`))
    expect(complaints).toEqual([])
    await context.close()
  },
  420_000,
)

test(
  'taken, reloaded, taken back, looked for again: the room stays the room as it is',
  { timeout: 480_000 },
  async () => {
    const { page, context, complaints } = await stage.open(`decide/#${LINK}`)
    const look = async (): Promise<readonly string[]> => {
      await page.click('button:has-text("Look at all ways"):enabled')
      await page.waitForSelector('progress[aria-label=Looking]', { state: 'attached', timeout: 30_000 })
      await page.waitForSelector(CARD, { timeout: 200_000 })
      return page.locator(`${CARD} .what`).allInnerTexts()
    }
    const first = await look()
    const said = await page.locator(`${CARD} >> nth=0`).innerText()
    const [, hours, before] = /Too warm for (\d+) h a year; the room as it is: (\d+) h/.exec(said)!
    await page.click(`${CARD} >> nth=0 >> button:has-text("Take this way")`)
    await page.locator(`${TAKEN} [data-out=hours]:text-is("${hours} h")`).waitFor({ timeout: 60_000 })
    await page.waitForTimeout(500)

    await page.reload()
    await page.locator(`${TAKEN} [data-out=hours]:text-is("${hours} h")`).waitFor({ timeout: 60_000 })
    expect(await page.locator(TAKEN).innerText()).toContain(`The room as it is: ${before} h`)

    // a second search starts from the room as it is, and knows the way that is taken
    expect(await look()).toEqual(first)
    const again = await page.locator(`${CARD} >> nth=0`).innerText()
    expect(again).toContain(`Too warm for ${hours} h a year; the room as it is: ${before} h`)
    expect(again).toContain('In the design now')

    // swapped, one step; back, one step
    const other = page.locator(`${CARD}:has(button:has-text("Take this way"))`).first()
    await other.getByRole('button', { name: 'Take this way' }).click()
    await page.locator(`${CARD} >> nth=0 >> button:has-text("Take this way")`).waitFor()
    await page.getByRole('button', { name: 'Undo' }).click()
    await page.locator(`${CARD} >> nth=0 >> text=In the design now`).waitFor()
    await page.getByRole('button', { name: 'Take it back' }).click()
    await page.waitForSelector(TAKEN, { state: 'detached' })
    await go(page, 'Room')
    const build = page.locator('[data-field="room.wallBuild"] select')
    expect(await build.inputValue()).toBe('brick')
    await page.getByRole('button', { name: 'Undo' }).click()
    await page.waitForSelector('[role=status]:has-text("This is the room as it is")')
    expect(await build.inputValue()).toBe('brick')
    expect(complaints).toEqual([])
    await context.close()
  },
)

const WAY = 'insulateWalls,nightFan'
const hoursTaken = async (page: Page): Promise<string> => {
  await settled(page)
  const shown = page.locator(`${TAKEN} [data-out=hours]`)
  await shown.waitFor({ timeout: 60_000 })
  return shown.innerText()
}

test('the room changes while a way is taken: the way stays, and is worked out anew in the changed room', async () => {
  const { page, context, complaints } = await stage.open(`decide/#${LINK}&job.way=${WAY}`)
  const before = await hoursTaken(page)
  await go(page, 'Room')
  const length = page.locator('[data-field="room.length_m"] input[inputmode=decimal]')
  const old = await length.inputValue()
  const longer = String(Number(old) + 3)
  await length.fill(longer)
  await length.press('Enter')
  await settled(page)
  await go(page, 'Cooling')
  const after = await hoursTaken(page)
  expect(after).not.toBe(before)
  const set = ['--set', `job.way=${WAY}`, '--set', `room.length_m=${longer}`]
  const fresh = shell<Record<string, number>>('size', ...set, '--draws', '0')
  expect(after).toBe(`${fresh['hoursOver_h']!.toFixed(0)} h`)
  // the wall that the way insulates is still the brick that was described, and one undo brings room and hours back
  await go(page, 'Room')
  expect(await page.locator('[data-field="room.wallBuild"] select').inputValue()).toBe('brick')
  await page.getByRole('button', { name: 'Undo' }).click()
  expect(await length.inputValue()).toBe(old)
  await go(page, 'Cooling')
  expect(await hoursTaken(page)).toBe(before)
  expect(complaints).toEqual([])
  await context.close()
}, 240_000)

test('a design with a way taken is kept and exported, and opened again with the way and the room as it is', async () => {
  const { page, context, complaints } = await stage.open(`decide/#${LINK}&job.way=${WAY}`)
  const hours = await hoursTaken(page)
  const tools = page.locator('button:has-text("Keep & share")')
  await tools.click()
  await page.click('dialog button:has-text("Keep under this name")')
  const coming = page.waitForEvent('download')
  await page.click('dialog button:has-text("Save to a file")')
  const path = await (await coming).path()
  const file = JSON.parse(await readFile(path, 'utf8')) as {
    job: { way: string }
    room: { wallBuild: string; roofReflectance_frac: number }
  }
  expect(String(file.job.way)).toBe(WAY)
  expect(file.room.wallBuild).toBe('brick')
  await page.keyboard.press('Escape')
  await page.getByRole('button', { name: 'Take it back' }).click()
  await page.waitForSelector(TAKEN, { state: 'detached' })

  await tools.click()
  await page.setInputFiles('dialog input[type=file]', path)
  expect(await hoursTaken(page)).toBe(hours)
  await page.getByRole('button', { name: 'Take it back' }).click()
  await page.waitForSelector(TAKEN, { state: 'detached' })

  await tools.click()
  await page.locator('dialog button:has-text("Open")').first().click()
  expect(await hoursTaken(page)).toBe(hours)
  await go(page, 'Room')
  expect(await page.locator('[data-field="room.wallBuild"] select').inputValue()).toBe('brick')
  expect(complaints).toEqual([])
  await context.close()
}, 240_000)
