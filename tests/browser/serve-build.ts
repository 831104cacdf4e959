import { spawn, type ChildProcess } from 'node:child_process'
import { existsSync } from 'node:fs'
import { createServer } from 'node:net'
import { fileURLToPath } from 'node:url'

const ROOT = fileURLToPath(new URL('../../', import.meta.url))
const START_MS = 30_000

export interface ServedBuild {
  readonly url: string
  readonly stop: () => Promise<void>
}

/** A port nobody listens on just now. */
async function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const probe = createServer()
    probe.once('error', reject)
    probe.listen(0, '127.0.0.1', () => {
      const address = probe.address()
      probe.close(() =>
        address && typeof address === 'object' ? resolve(address.port) : reject(new Error('no port')),
      )
    })
  })
}

/**
 * Serves `build/` on a free port. Vite is started directly: stopping an npx wrapper would orphan it.
 * @throws Error when there is no build or it cannot be served
 */
export async function serveBuild(): Promise<ServedBuild> {
  if (!existsSync(`${ROOT}build/index.html`))
    throw new Error('There is no build/: run `npx vite build` first.')
  const port = await freePort()
  const arguments_ = [
    'node_modules/vite/bin/vite.js',
    'preview',
    '--strictPort',
    '--host',
    '127.0.0.1',
    '--port',
    String(port),
  ]
  const server = spawn(process.execPath, arguments_, { cwd: ROOT, stdio: ['ignore', 'ignore', 'pipe'] })
  const errors: string[] = []
  server.stderr.on('data', (chunk: Buffer) => errors.push(chunk.toString()))
  const url = `http://127.0.0.1:${port}/`
  await answering(url, server, errors)
  return { url, stop: () => ended(server) }
}

async function answering(url: string, server: ChildProcess, errors: string[]): Promise<void> {
  const until = Date.now() + START_MS
  while (Date.now() < until) {
    if (server.exitCode !== null) throw new Error(`The preview server ended at once: ${errors.join('')}`)
    const response = await fetch(url).catch(() => null)
    if (response?.ok) return
    await new Promise((resolve) => setTimeout(resolve, 100))
  }
  server.kill()
  throw new Error(`The preview server did not answer in ${START_MS / 1000} s: ${errors.join('')}`)
}

function ended(server: ChildProcess): Promise<void> {
  return new Promise((resolve) => {
    if (server.exitCode !== null) return resolve()
    server.once('exit', () => resolve())
    server.kill()
  })
}
