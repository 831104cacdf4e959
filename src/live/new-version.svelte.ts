/**
 * A newer version of the app, stored whole beside this one. It waits: a page whose scripts are of one version and
 * whose later parts are of another would be half old. On the user's word it takes over and every tab opens anew.
 */
export class NewVersion {
  waiting = $state(false)
  #registration: ServiceWorkerRegistration | null = null

  /** Begins to look out for one; call once in the browser. */
  watch(): void {
    if (!('serviceWorker' in navigator)) return
    let served = navigator.serviceWorker.controller !== null
    navigator.serviceWorker.addEventListener('controllerchange', () => {
      if (served) location.reload()
      served = true
    })
    void navigator.serviceWorker.ready.then((registration) => this.#follow(registration))
  }

  takeOver(): void {
    this.#registration?.waiting?.postMessage('take over')
  }

  #follow(registration: ServiceWorkerRegistration): void {
    this.#registration = registration
    const look = () => (this.waiting = registration.waiting !== null)
    look()
    const follow = () => registration.installing?.addEventListener('statechange', look)
    follow()
    registration.addEventListener('updatefound', follow)
  }
}
