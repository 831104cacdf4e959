/** Small texts kept in the browser between visits. A browser that refuses to keep anything is no error. */
const PREFIX = 'duskbank.'
const ASIDE = '.unread'

/** A kept text that could not be read, by the name it was kept under. */
export interface AsideText {
  readonly name: string
  readonly text: string
}

/** The browser's own key of a name. */
export const keptKey = (name: string): string => PREFIX + name

export function readKept(name: string): string | null {
  try {
    return localStorage.getItem(keptKey(name))
  } catch {
    return null
  }
}

/** False when the browser refused (private window, full): the page then says that nothing is kept. */
export function writeKept(name: string, text: string): boolean {
  try {
    localStorage.setItem(keptKey(name), text)
    return true
  } catch {
    return false
  }
}

/** Sets aside what cannot be read, so that what is kept next does not take its place. */
export function setAside(name: string): void {
  const text = readKept(name)
  if (text !== null) writeKept(name + ASIDE, text)
}

export function asideTexts(): readonly AsideText[] {
  try {
    return Object.keys(localStorage)
      .filter((key) => key.startsWith(PREFIX) && key.endsWith(ASIDE))
      .map((key) => ({
        name: key.slice(PREFIX.length, -ASIDE.length),
        text: localStorage.getItem(key) ?? '',
      }))
  } catch {
    return []
  }
}

export function forgetAside(name: string): void {
  try {
    localStorage.removeItem(keptKey(name + ASIDE))
  } catch {
    // A browser that keeps nothing has nothing to forget.
  }
}
