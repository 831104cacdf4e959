import { base } from '$app/paths'
import { GLOSSARY, sentenceCase, unitText } from '#model/basis/words'

/** One box for all terms: what a name means, beside the name. It closes by Escape, a tap elsewhere, or leaving the name. */
const GRACE_MS = 250
const SPACE_px = 8

let box: HTMLElement | undefined
let shown: HTMLElement | null = null
/** Opened by a press: stays when the pointer leaves. */
let pinned = false
let leaving: ReturnType<typeof setTimeout> | undefined

function theBox(): HTMLElement {
  if (box?.isConnected) return box
  box = document.createElement('div')
  box.className = 'term-box'
  box.id = 'term-box'
  box.popover = 'auto'
  box.setAttribute('role', 'dialog')
  box.setAttribute('aria-label', 'What it means')
  box.addEventListener('pointerenter', () => clearTimeout(leaving))
  box.addEventListener('pointerleave', () => shown && leave(shown))
  box.addEventListener('toggle', (event) => {
    if (event.newState !== 'closed') return
    shown?.removeAttribute('aria-controls')
    shown = null
    pinned = false
  })
  document.body.append(box)
  return box
}

function part(tag: string, text: string): HTMLElement {
  return Object.assign(document.createElement(tag), { textContent: text })
}

/**
 * Shows what a name means.
 * @param pressed  a press opens it to stay, and closes it where it stays already; pointing opens it for as long as it lasts
 */
export function explain(button: HTMLElement, name: string, pressed: boolean): void {
  clearTimeout(leaving)
  const entry = GLOSSARY.find((one) => one.name === name.toLowerCase())
  if (entry === undefined) return
  const on = theBox()
  if (shown === button) {
    if (pressed && pinned) on.hidePopover()
    pinned = pressed
    return
  }
  if (shown !== null && pinned && !pressed) return
  const unit = unitText(entry.unit)
  const link = Object.assign(document.createElement('a'), {
    href: `${base}/glossary/`,
    textContent: 'All names',
  })
  on.replaceChildren(
    part('strong', `${sentenceCase(entry.name)}${unit === '' ? '' : `, ${unit}`}`),
    part('p', entry.meaning),
    link,
  )
  on.hidePopover()
  on.showPopover()
  shown = button
  pinned = pressed
  button.setAttribute('aria-controls', 'term-box')
  place(on, button.getBoundingClientRect())
}

/** Under the name, or over it where there is no room below; inside the window. */
function place(on: HTMLElement, at: DOMRect): void {
  const { width, height } = on.getBoundingClientRect()
  const left = Math.max(SPACE_px, Math.min(at.left, innerWidth - width - SPACE_px))
  const below = at.bottom + SPACE_px / 2
  const top = below + height > innerHeight ? Math.max(SPACE_px, at.top - height - SPACE_px / 2) : below
  Object.assign(on.style, { left: `${left}px`, top: `${top}px` })
}

/** The pointer has left the name: closes what it opened, with time to get into the box. */
export function leave(button: HTMLElement): void {
  if (pinned || shown !== button) return
  clearTimeout(leaving)
  leaving = setTimeout(() => !pinned && box?.hidePopover(), GRACE_MS)
}
