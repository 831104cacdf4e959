/** `npm start`: builds the app and serves it on this machine, with the worked example open. */
import { build, preview } from 'vite'

const PORT = 5187

console.log('Building …')
await build({ logLevel: 'error' })

// A busy port is no reason to fail: the next free one is taken and printed.
const server = await preview({
  configFile: false,
  appType: 'mpa',
  build: { outDir: 'build' },
  logLevel: 'warn',
  preview: { host: '127.0.0.1', port: PORT, strictPort: false },
})
const address = server.resolvedUrls?.local[0] ?? `http://127.0.0.1:${PORT}/`
console.log(`Duskbank is at ${address}\nStop it with Ctrl C.`)
