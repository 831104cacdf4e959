/// <reference no-default-lib="true"/>
/// <reference lib="esnext" />
/// <reference lib="webworker" />
/// <reference types="@sveltejs/kit" />
import { build, files, prerendered, version } from '$service-worker'

const worker = self as unknown as ServiceWorkerGlobalScope
const store = `duskbank-${version}`
const root = new URL('./', worker.location.href)

/** Everything the app is made of: script, styles, sample climates, icons and the pages themselves. */
const everything = [...build, ...files, ...prerendered]

worker.addEventListener('install', (event) => {
  event.waitUntil(
    caches
      .open(store)
      .then((cache) => cache.addAll(everything))
      .then(() => worker.skipWaiting()),
  )
})

worker.addEventListener('activate', (event) => {
  event.waitUntil(
    caches
      .keys()
      .then((names) => Promise.all(names.filter((name) => name !== store).map((name) => caches.delete(name))))
      .then(() => worker.clients.claim()),
  )
})

worker.addEventListener('fetch', (event) => {
  const url = new URL(event.request.url)
  if (event.request.method !== 'GET' || !url.href.startsWith(root.href)) return
  event.respondWith(fromStoreOrNet(event.request))
})

/** What was stored at install wins (its name changes with every version); the net only for what was not. */
async function fromStoreOrNet(request: Request): Promise<Response> {
  const cache = await caches.open(store)
  const kept = await cache.match(request, { ignoreVary: true, ignoreSearch: request.mode === 'navigate' })
  return kept ?? fetch(request)
}
