import type { Workbench } from '#live/workbench.svelte.ts'

/** What a browser sends once it would install the app. */
interface InstallOffer extends Event {
  readonly prompt: () => Promise<unknown>
}

/** Takes up the browser's offer to install the app, so that the page can have a button for it; what it returns ends that. */
export function listenForInstall(bench: Workbench): () => void {
  const offered = (event: Event) => {
    event.preventDefault()
    bench.install = () => {
      bench.install = null
      void (event as InstallOffer).prompt()
    }
  }
  const done = () => (bench.install = null)
  addEventListener('beforeinstallprompt', offered)
  addEventListener('appinstalled', done)
  return () => {
    removeEventListener('beforeinstallprompt', offered)
    removeEventListener('appinstalled', done)
  }
}
