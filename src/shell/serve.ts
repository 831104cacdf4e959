/** `npm start`: serves the built app on this machine, with the worked example open; built anew where a source is younger. */
import { existsSync, readdirSync, statSync } from 'node:fs'
import { join } from 'node:path'
import { build, preview, type Plugin } from 'vite'

const PORT = 5187
const BUILT = 'build/index.html'
/** What the built app is made of. */
const SOURCES = [
  'src',
  'static',
  'climate-samples',
  'package-lock.json',
  'svelte.config.js',
  'vite.config.ts',
]

/** When the youngest file under a path was changed, ms. */
function changed_ms(path: string): number {
  const { mtimeMs } = statSync(path)
  if (!statSync(path).isDirectory()) return mtimeMs
  return Math.max(mtimeMs, ...readdirSync(path).map((name) => changed_ms(join(path, name))))
}

const isBuilt = (): boolean =>
  existsSync(BUILT) && statSync(BUILT).mtimeMs > Math.max(...SOURCES.map((path) => changed_ms(path)))

/** A page asked for without its last slash is sent on to it. */
const slashes: Plugin = {
  name: 'slashes',
  configurePreviewServer({ middlewares }) {
    middlewares.use((request, response, next) => {
      const [path = '', query] = (request.url ?? '').split('?')
      if (path.endsWith('/') || !/^(\/[a-z-]+)+$/.test(path) || !existsSync(`build${path}/index.html`))
        return next()
      response.writeHead(301, { location: `${path}/${query === undefined ? '' : `?${query}`}` }).end()
    })
  },
}

if (isBuilt()) console.log('Built already; nothing has changed since.')
else {
  console.log('Building …')
  await build({ logLevel: 'error' })
}

// A busy port is no reason to fail: the next free one is taken and printed.
const server = await preview({
  configFile: false,
  appType: 'mpa',
  build: { outDir: 'build' },
  logLevel: 'warn',
  plugins: [slashes],
  preview: { host: '127.0.0.1', port: PORT, strictPort: false },
})
const address = server.resolvedUrls?.local[0] ?? `http://127.0.0.1:${PORT}/`
console.log(`Duskbank is at ${address}\nStop it with Ctrl C.`)
