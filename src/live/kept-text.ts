/** Small texts kept in the browser between visits. A browser that refuses to keep anything is no error. */
const PREFIX = 'duskbank.'

export function readKept(name: string): string | null {
  try {
    return localStorage.getItem(PREFIX + name)
  } catch {
    return null
  }
}

/** False when the browser refused (private window, full): the page then says that nothing is kept. */
export function writeKept(name: string, text: string): boolean {
  try {
    localStorage.setItem(PREFIX + name, text)
    return true
  } catch {
    return false
  }
}
