import { Worker } from 'node:worker_threads'

/** A worker at a module in TypeScript. It does not inherit the loader of TypeScript: it registers its own. */
export function typescriptWorker(module: URL, workerData: unknown): Worker {
  const start = `import('tsx/esm/api').then(({ register }) => {
    register()
    return import(${JSON.stringify(module.href)})
  })`
  return new Worker(start, { eval: true, workerData })
}
