import { openStage, settled } from '../browser/stage.ts'
import type { Row } from './table.ts'

const RUNS = 3
/** Moves of a drag; whole answers take seconds, so fewer of them are waited for. */
const MOVES = { area: 40, answer: 10 } as const
/** A move without its answer for so long ends the bench of the page, with a word. */
const PATIENCE_MS = 30_000
const FRAME_MS = 50
/** A hand needs so long to find a slider; meanwhile the page lets its second worker warm up. */
const REACH_MS = 1000
/** The page with every slider beside the answer and all its charts; starts are those of the first page. */
const DRAGGED = 'design/'
/** tsx names inner functions by a call that the page does not know. */
const NAMED = 'globalThis.__name = (named) => named'

interface Drag {
  readonly waits_ms: number[]
  readonly longTasks_ms: number[]
}

/** What a drag waits for before its next move: the area that follows it, or the whole answer with tank, modules and year. */
type Awaited = 'area' | 'answer'

interface DragAsked {
  readonly moves: number
  readonly awaited: Awaited
  readonly patience_ms: number
}

const dragFor = (awaited: Awaited): DragAsked => ({
  moves: MOVES[awaited],
  awaited,
  patience_ms: PATIENCE_MS,
})

/** The page in a headless Chromium: start, and a scripted drag. Wall-clock, so other work on the machine counts. */
export async function inBrowser(): Promise<Row[]> {
  const stage = await openStage().catch((reason: unknown) => {
    console.log(`The page is not measured: ${String(reason)}`)
    return null
  })
  if (stage === null) return []
  const starts: { paint_ms: number; answer_ms: number; bytes: number }[] = []
  const drags: Drag[] = []
  const slowDrags: Drag[] = []
  try {
    for (let run = 0; run < RUNS; run++) {
      const { page, context } = await stage.open()
      await settled(page)
      await page.evaluate(NAMED)
      starts.push(await page.evaluate(startOfPage))
      await page.goto(stage.url + DRAGGED)
      await settled(page)
      await page.evaluate(NAMED)
      await page.click('details[data-part=room] > summary')
      await page.waitForSelector('[data-field="room.roofU_Wm2K"] input[type=range]')
      await page.waitForTimeout(REACH_MS)
      drags.push(await page.evaluate(dragRoof, dragFor('area')))
      slowDrags.push(await page.evaluate(dragRoof, dragFor('answer')))
      await context.close()
    }
  } finally {
    await stage.close()
  }
  const late_ms = (of: readonly Drag[]): number[] =>
    of.map(({ waits_ms }) => waits_ms.toSorted((a, b) => a - b)[Math.floor(0.95 * waits_ms.length)]!)
  const long_ms = [...drags, ...slowDrags].map(({ longTasks_ms }) => Math.max(0, ...longTasks_ms))
  const within = (ms: number): boolean => ms <= FRAME_MS
  const printed = { reach: '', met: null }
  return [
    {
      name: 'slider to area, 95th percentile',
      reach: '≤ 50',
      unit: 'ms',
      values: late_ms(drags),
      met: within,
      found:
        'a change of the room, its year without panels and one to three seasons take one or two frames; the first move of a drag may wait for a draw of the range to end.',
    },
    { name: 'slider to whole answer, 95th percentile', unit: 'ms', values: late_ms(slowDrags), ...printed },
    { name: 'longest task on the page’s thread', reach: '≤ 50', unit: 'ms', values: long_ms, met: within },
    { name: 'first paint', unit: 'ms', values: starts.map((start) => start.paint_ms), ...printed },
    { name: 'first answer', unit: 'ms', values: starts.map((start) => start.answer_ms), ...printed },
    { name: 'bytes to start', unit: 'kB', values: starts.map((start) => start.bytes / 1e3), ...printed },
  ]
}

function startOfPage(): { paint_ms: number; answer_ms: number; bytes: number } {
  const files = performance.getEntriesByType('resource') as PerformanceResourceTiming[]
  return {
    paint_ms: performance.getEntriesByName('first-contentful-paint')[0]?.startTime ?? NaN,
    answer_ms: performance.now(),
    bytes: files.reduce((sum, file) => sum + file.encodedBodySize, 0),
  }
}

/** Moves the roof's slider by so many of its steps, up and down, each as soon as what it awaits of the one before is there. */
async function dragRoof({ moves, awaited, patience_ms }: DragAsked): Promise<Drag> {
  const longTasks_ms: number[] = []
  new PerformanceObserver((list) => {
    for (const task of list.getEntries()) longTasks_ms.push(task.duration)
  }).observe({ entryTypes: ['longtask'] })
  const slider = document.querySelector<HTMLInputElement>('[data-field="room.roofU_Wm2K"] input[type=range]')!
  const answer = document.querySelector<HTMLElement>('section[aria-label="Answer"]')!
  const frame = (): Promise<unknown> => new Promise((resolve) => requestAnimationFrame(resolve))
  // What is left from the move before does not count: a mark must have been set since.
  let marked = false
  const marks = ['aria-busy', 'data-following']
  new MutationObserver(() => {
    const rested = answer.getAttribute('aria-busy') === 'false'
    const follows = awaited === 'area' && answer.dataset['following'] === 'newest'
    if (rested || follows) marked = true
  }).observe(answer, { attributeFilter: marks })
  const waits_ms: number[] = []
  for (let i = 0; i < moves; i++) {
    const start = performance.now()
    marked = false
    if (i % 20 < 10) slider.stepUp()
    else slider.stepDown()
    slider.dispatchEvent(new Event('input', { bubbles: true }))
    await frame()
    while (!marked) {
      if (performance.now() - start > patience_ms)
        throw new Error(`bench: move ${i} of the roof’s slider had no ${awaited} within ${patience_ms} ms`)
      await frame()
    }
    waits_ms.push(performance.now() - start)
  }
  return { waits_ms, longTasks_ms }
}
