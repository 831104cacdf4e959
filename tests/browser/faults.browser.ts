import type { Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { openStage, settled, type Stage, type Watched } from './stage.ts'
import { goTo } from './walk.ts'
import { picked, resavedSample } from './weather-files.ts'

let stage: Stage
beforeAll(async () => {
  stage = await openStage()
})
afterAll(async () => {
  await stage?.close()
})

/** Opens the app with every worker it starts within reach of the test. */
async function openWithWorkers(prepare: (page: Page) => Promise<void> = async () => {}): Promise<Watched> {
  const watched = await stage.open('licences.txt')
  await prepare(watched.page)
  await watched.page.addInitScript(() => {
    const workers: Worker[] = []
    const Real = Worker
    window.Worker = class extends Real {
      constructor(url: string | URL, options?: WorkerOptions) {
        super(url, options)
        workers.push(Object.assign(this, { address: String(url) }))
      }
      /** The next question of the verb the test has set meets its fault, before the answer can come. */
      override postMessage(message: { kind?: string; verb?: string }) {
        super.postMessage(message)
        const { fault, faulty } = window as unknown as { fault?: (worker: Worker) => void; faulty?: string }
        const first = (window as unknown as { workers: Worker[] }).workers[0]
        if (message.kind !== 'ask' || !fault || message.verb !== faulty) return
        // The judge answers too, in a worker started later: the fault is for the one that sizes.
        if (faulty === 'size' && this !== first) return
        Object.assign(window, { fault: undefined })
        setTimeout(() => fault(this))
      }
    }
    Object.assign(window, { workers })
  })
  await watched.page.goto(`${stage.url}design/`)
  await settled(watched.page)
  return watched
}

const ROOF = '[data-field="room.roofU_Wm2K"] input[inputmode=decimal]'
const stopped = '[role=alert]:has-text("stopped unexpectedly")'

/** Changes the roof and, before it can answer, does something to the worker asked for the area or the whole answer. */
async function changeAnd(
  page: Page,
  roof: string,
  fault: 'die' | 'outOfMemory' | 'garble',
  faulty: 'follow' | 'size' = 'size',
): Promise<void> {
  await page.evaluate(
    ([selector, value, what, task]) => {
      const state = window as unknown as { fault?: (worker: Worker) => void; faulty: string }
      state.faulty = task!
      state.fault = (worker) => {
        if (what === 'garble') worker.dispatchEvent(new MessageEvent('messageerror'))
        if (what === 'outOfMemory')
          worker.dispatchEvent(new ErrorEvent('error', { message: 'Out of memory', cancelable: true }))
        worker.terminate()
      }
      const box = document.querySelector<HTMLInputElement>(selector!)!
      box.value = value!
      box.dispatchEvent(new Event('input', { bubbles: true }))
    },
    [ROOF, roof, fault, faulty],
  )
}

/** True once the fault that was set has been met. */
const faultMet = (page: Page): Promise<boolean> =>
  page.evaluate(() => (window as unknown as { fault?: unknown }).fault === undefined)

describe('a worker that ends mid-run', () => {
  for (const [fault, said] of [
    ['outOfMemory', 'Out of memory'],
    ['garble', 'its answer was damaged'],
  ] as const)
    test(`(${fault}) is said in a sentence, the last answer stays, and the next change is answered`, async () => {
      const { page, context } = await openWithWorkers()
      await page.click('details[data-part=room] > summary')
      const before = await page.locator('section[aria-label="Answer"] .big').innerText()
      await changeAnd(page, '0.9', fault)
      await page.waitForSelector(stopped, { timeout: 30_000 })
      expect(await page.locator(stopped).first().innerText()).toContain(said)
      expect(await page.locator('section[aria-label="Answer"] .big').innerText()).toBe(before)
      expect(await page.inputValue(ROOF)).toBe('0.9')
      await page.fill(ROOF, '0.8')
      await page.waitForSelector(stopped, { state: 'detached', timeout: 60_000 })
      await settled(page)
      expect(await page.locator('section[aria-label="Answer"] .big').innerText()).not.toBe(before)
      await context.close()
    })

  test('while it only follows the hand costs nothing but that: the answer comes all the same', async () => {
    const { page, context } = await openWithWorkers()
    await page.click('details[data-part=room] > summary')
    const before = await page.locator('section[aria-label="Answer"] .big').innerText()
    await changeAnd(page, '0.9', 'outOfMemory', 'follow')
    await settled(page)
    expect(await faultMet(page)).toBe(true)
    expect(await page.locator(stopped).count()).toBe(0)
    expect(await page.locator('section[aria-label="Answer"] .big').innerText()).not.toBe(before)
    await context.close()
  })

  test('without a word is noticed after two minutes of silence, and the next change is answered', async () => {
    const { page, context } = await openWithWorkers((fresh) => fresh.clock.install())
    await page.click('details[data-part=room] > summary')
    await changeAnd(page, '0.9', 'die')
    await page.waitForSelector('section[aria-label="Answer"][data-following]')
    await page.clock.runFor(1_000)
    await page.clock.runFor(100_000)
    expect(await faultMet(page)).toBe(true)
    expect(await page.locator(stopped).count(), 'a slow answer is not given up').toBe(0)
    await page.clock.runFor(60_000)
    await page.waitForSelector(stopped, { timeout: 30_000 })
    await page.fill(ROOF, '0.8')
    await page.waitForSelector(stopped, { state: 'detached', timeout: 60_000 })
    await settled(page)
    await context.close()
  })

  test('while it reads a weather file leaves what was open and takes the next file', async () => {
    const { page, context } = await openWithWorkers()
    await goTo(page, 'weather')
    const input = '[aria-label="Open a weather file"] input[type=file]'
    await page.waitForSelector(`${input}:enabled`)
    await page.evaluate(() => {
      const { workers } = window as unknown as { workers: Worker[] }
      const push = workers.push.bind(workers)
      workers.push = (worker: Worker & { address?: string }) => {
        // Other workers may start meanwhile (a judge, a range): the fault waits for the one that reads weather.
        if (!worker.address?.includes('weather-worker')) return push(worker)
        setTimeout(() =>
          worker.dispatchEvent(new ErrorEvent('error', { message: 'Out of memory', cancelable: true })),
        )
        workers.push = push
        return push(worker)
      }
    })
    await page.setInputFiles(input, picked('large.csv', resavedSample()))
    await page.waitForSelector('[role=alert]:has-text("Out of memory")')
    await page.setInputFiles(input, picked('large.csv', resavedSample()))
    await page.waitForSelector('[data-open-file]', { timeout: 60_000 })
    await context.close()
  })
})

test('a tab asleep for a day wakes with its answer, raises no alarm and answers on', async () => {
  const { page, context, complaints } = await openWithWorkers((fresh) => fresh.clock.install())
  const before = await page.locator('section[aria-label="Answer"] .big').innerText()
  await page.clock.fastForward('24:00:00')
  await page.waitForTimeout(300)
  expect(await page.locator('section[aria-label="Answer"] .big').innerText()).toBe(before)
  await page.click('details[data-part=room] > summary')
  await page.fill(ROOF, '0.9')
  await page.clock.fastForward('24:00:00')
  await settled(page)
  expect(await page.locator('[role=alert]').count()).toBe(0)
  expect(complaints).toEqual([])
  await context.close()
})

describe('a part of the page that throws', () => {
  test('(a chart without a canvas) says so in its place; the answer and the tables stay', async () => {
    const { page, context } = await openWithWorkers(async (fresh) => {
      await fresh.addInitScript(() => {
        const real = HTMLCanvasElement.prototype.getContext
        HTMLCanvasElement.prototype.getContext = function (this: HTMLCanvasElement, ...words: unknown[]) {
          if (this.closest('figure .frame')) throw new Error('no canvas today')
          return Reflect.apply(real, this, words) as null
        }
      })
    })
    await page.waitForSelector('figure [role=status]:has-text("could not be drawn")')
    await page.click('figure summary >> nth=0')
    await page.waitForSelector('figure tbody tr')
    await page.click('button:has-text("Garden shed")')
    await settled(page)
    expect(await page.locator('[role=alert]').count()).toBe(0)
    await context.close()
  })

  test('(numbers that cannot be written) gives way to a sentence, and the page comes back with the work in it', async () => {
    const { page, context } = await openWithWorkers()
    await page.click('button:has-text("Garden shed")')
    await settled(page)
    const room = await page.locator('details[data-part=room] > summary').innerText()
    await page.evaluate(() => {
      const real = Number.prototype.toFixed
      Number.prototype.toFixed = () => {
        throw new Error('no numbers today')
      }
      Object.assign(window, { mend: () => (Number.prototype.toFixed = real) })
    })
    await page.selectOption('#climate', 'hot-desert')
    await page.waitForSelector('[role=alert]:has-text("This page stopped")', { timeout: 60_000 })
    expect(await page.locator('[role=alert]').innerText()).toContain('no numbers today')
    await page.evaluate(() => (window as unknown as { mend: () => void }).mend())
    await page.click('button:has-text("Show the page again")')
    await settled(page)
    expect(await page.locator('details[data-part=room] > summary').innerText()).toBe(room)
    expect(await page.inputValue('#climate')).toBe('hot-desert')
    await context.close()
  })
})
