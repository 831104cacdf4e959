import { asideTexts, forgetAside, keptKey, setAside, type AsideText } from '#live/kept-text.ts'

/** What is between the open work and the next visit: another tab at the same work, a kept text nobody can read. */
export class Keeping {
  /** True once another tab has kept something since this one did. */
  elsewhere = $state(false)
  /** Kept texts this page could not read; they wait here until the user saves or drops them. */
  aside = $state.raw<readonly AsideText[]>([])

  /** Listens to other tabs; what it returns ends that. Call in the browser. */
  listen(): () => void {
    this.aside = asideTexts()
    const hear = ({ key, newValue }: StorageEvent) => {
      if (newValue !== null && key !== keptKey('units') && key?.startsWith(keptKey(''))) this.elsewhere = true
    }
    addEventListener('storage', hear)
    return () => removeEventListener('storage', hear)
  }

  /** Puts a kept text out of the way of the next autosave, for the user to save. */
  setAside(name: string): void {
    setAside(name)
    this.aside = asideTexts()
  }

  forgetAside({ name }: AsideText): void {
    forgetAside(name)
    this.aside = asideTexts()
  }
}
