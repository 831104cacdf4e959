import { spawn, type ChildProcess } from 'node:child_process'
import { cpSync, existsSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { createServer } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
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
 * Serves a copy of `build/` on a free port: the copy so that a build meanwhile cannot pull files from under the
 * page. Vite is started directly: stopping an npx wrapper would orphan it.
 * @throws Error when there is no build or it cannot be served
 */
export async function serveBuild(): Promise<ServedBuild> {
  if (!existsSync(`${ROOT}build/index.html`))
    throw new Error('There is no build/: run `npx vite build` first.')
  const copy = mkdtempSync(join(tmpdir(), 'duskbank-build-'))
  cpSync(`${ROOT}build`, copy, { recursive: true })
  writeFileSync(join(copy, 'vite.config.js'), "export default { appType: 'mpa', build: { outDir: '.' } }\n")
  const port = await freePort()
  const vite = [
    `${ROOT}node_modules/vite/bin/vite.js`,
    'preview',
    copy,
    '--strictPort',
    '--host',
    '127.0.0.1',
  ]
  const server = spawn(process.execPath, [...vite, '--port', String(port)], {
    cwd: ROOT,
    stdio: ['ignore', 'ignore', 'pipe'],
  })
  const errors: string[] = []
  server.stderr.on('data', (chunk: Buffer) => errors.push(chunk.toString()))
  const url = `http://127.0.0.1:${port}/`
  await answering(url, server, errors)
  return {
    url,
    stop: async () => {
      await ended(server)
      rmSync(copy, { recursive: true, force: true })
    },
  }
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
