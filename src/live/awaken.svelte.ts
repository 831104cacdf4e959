import { untrack } from 'svelte'
import {
  linkHash,
  placedText,
  readLinkHash,
  readPlacedText,
  type PlacedDesign,
  type ReadDesign,
} from '#live/design-link.ts'
import { listenForInstall } from '#live/install-offer.ts'
import { readKept, writeKept } from '#live/kept-text.ts'
import { ownIdInLink } from '#live/own-id.ts'
import { isPlaceId } from '#live/place-id.ts'
import { problemsOf } from '#live/problems-of.ts'
import { SAMPLE_CLIMATES } from '#live/sample-climates.ts'
import { workedExample } from '#live/worked-example.ts'
import type { Workbench } from '#live/workbench.svelte.ts'

const AUTOSAVE = 'design'
const AUTOSAVE_AFTER_MS = 300

/**
 * Brings the page to life in the browser: what the link or the last visit left, then an answer to every
 * change and an autosave behind it. Returns what ends it again.
 */
export function awaken(bench: Workbench): () => void {
  bench.units.recall()
  if (!takeKeptDesign(bench)) bench.keeping.setAside(AUTOSAVE)
  const stopListening = bench.keeping.listen()
  const stopOffers = listenForInstall(bench)
  bench.newVersion.watch()
  const openHash = () => openLink(bench)
  openHash()
  void bench.climate.recallOwn()

  const stopEffects = $effect.root(() => {
    $effect(() => {
      const { climate } = bench.design
      untrack(() => void bench.climate.load(climate))
    })
    $effect(() => {
      const { scenario, climate } = bench.design
      const { id, record, loading } = bench.climate
      if (loading || id !== climate) return
      untrack(() => (record ? bench.run.ask(scenario, record) : bench.run.leave()))
    })
    $effect(() => {
      if (!bench.climate.record || bench.run.updating) return bench.range.leave()
      return bench.range.followSoon(bench.run.answer, bench.climate.record)
    })
    $effect(() => {
      const text = placedText(bench.design.placed)
      const timer = setTimeout(() => (bench.autosaved = writeKept(AUTOSAVE, text)), AUTOSAVE_AFTER_MS)
      return () => clearTimeout(timer)
    })
  })
  /** The last change of all may be younger than the autosave's pause. What another tab kept since stays. */
  const leave = () => {
    if (!bench.keeping.elsewhere) writeKept(AUTOSAVE, placedText(bench.design.placed))
  }
  addEventListener('pagehide', leave)
  addEventListener('hashchange', openHash)
  bench.ready = true
  return () => {
    stopEffects()
    stopListening()
    stopOffers()
    removeEventListener('pagehide', leave)
    removeEventListener('hashchange', openHash)
  }
}

/**
 * Opens what a link carries; where that would take the place of work, it is offered first. The carried part is then taken off
 * the address: from here on the autosave holds the design, and a reload must not bring back the link's.
 */
function openLink(bench: Workbench): void {
  const now = placedText(bench.design.placed)
  const untouched = now === placedText(workedExample())
  const read = open(
    bench,
    () => {
      const carried = readLinkHash(location.hash, bench.design.climate)
      return carried && { ...carried, climate: ownIdInLink(carried.climate) }
    },
    (placed) => {
      if (untouched || placedText(placed) === now) bench.place(placed)
      else bench.offered = placed
    },
  )
  if (read) history.replaceState(history.state, '', location.pathname)
}

/** Opens the design the browser keeps, if it keeps one; false when that cannot be read. */
export function takeKeptDesign(bench: Workbench): boolean {
  const kept = readKept(AUTOSAVE)
  return kept === null || open(bench, () => readPlacedText(kept))
}

/** Puts a design in place if there is one to read; what is wrong with it is shown, what is open stays. */
function open(
  bench: Workbench,
  read: () => ReadDesign | null,
  take: (placed: ReadDesign) => void = (placed) => bench.place(placed),
): boolean {
  try {
    const placed = read()
    if (!placed) return false
    take(placed)
    return true
  } catch (reason) {
    bench.openProblems = problemsOf(reason)
    return false
  }
}

/** The whole address that reopens a design on any machine. */
export function linkOf(placed: PlacedDesign): string {
  return `${location.origin}${location.pathname}#${linkHash(placed)}`
}

/** True when a climate id is one that a link can name on another machine. */
export function travels(climate: string): boolean {
  return isPlaceId(climate) || SAMPLE_CLIMATES.some(({ id }) => id === climate)
}
