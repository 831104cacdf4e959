/// <reference no-default-lib="true"/>
/// <reference lib="esnext" />
/// <reference lib="webworker" />
/// <reference types="@sveltejs/kit" />
import { build, files, prerendered, version } from '$service-worker'

const worker = self as unknown as ServiceWorkerGlobalScope
const store = `duskbank-${version}`
const root = new URL('./', worker.location.href)

/** The towns and their climates are large: stored when first used, for use without a net from then on. */
function whenUsed(path: string): boolean {
  return /\/places\/[^/]+\.bin$/.test(path)
}

/** Everything the app is made of: script, styles, sample climates, icons and the pages themselves. */
const everything = [...build, ...files, ...prerendered].filter((path) => !whenUsed(path))

worker.addEventListener('install', (event) => {
  event.waitUntil(
    caches
      .open(store)
      .then(async (cache) => cache.addAll([...everything, ...(await chunksOfWorkers())].map(fresh))),
  )
})

/** Past the browser's own cache: a page of an older version must not get among the newer ones. */
const fresh = (path: string) => new Request(path, { cache: 'reload' })

/** A newer version waits until every tab of the older is closed, or until the user has it take over. */
worker.addEventListener('message', ({ data }) => {
  if (data === 'take over') void worker.skipWaiting()
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

/** A script's mention of another beside it, e.g. `"./chunks/x.js"`. */
const MENTION = /["'`](\.\.?\/[\w./-]+\.js)["'`]/g

/**
 * Scripts that workers load in turn: SvelteKit's list names the workers but not these, so they are followed
 * from script to script.
 */
async function chunksOfWorkers(): Promise<string[]> {
  const workers = build.filter((path) => path.includes('/workers/'))
  const seen = new Set(workers.map((path) => new URL(path, worker.location.href).href))
  const queue = [...seen]
  for (let script = queue.pop(); script !== undefined; script = queue.pop()) {
    const text = await (await fetch(script)).text()
    for (const [, mention] of text.matchAll(MENTION)) {
      const { href } = new URL(mention!, script)
      if (!href.includes('/workers/') || seen.has(href)) continue
      seen.add(href)
      queue.push(href)
    }
  }
  return [...seen].slice(workers.length)
}

/** What was stored at install wins (its name changes with every version); the net only for what was not. */
async function fromStoreOrNet(request: Request): Promise<Response> {
  const cache = await caches.open(store)
  const kept = await cache.match(request, { ignoreVary: true, ignoreSearch: request.mode === 'navigate' })
  if (kept) return kept
  const open = new URL(request.url)
  if (request.mode === 'navigate' && !open.pathname.endsWith('/')) {
    open.pathname += '/'
    if (await cache.match(open.href, { ignoreSearch: true, ignoreVary: true }))
      return Response.redirect(open.href)
  }
  const fetched = await fetch(request)
  if (fetched.ok && whenUsed(new URL(request.url).pathname)) await cache.put(request, fetched.clone())
  return fetched
}
