import { readFile } from 'node:fs/promises'
import { fileURLToPath } from 'node:url'
import ts from 'typescript'

const compilerOptions = {
  module: ts.ModuleKind.ESNext,
  target: ts.ScriptTarget.ES2022,
  verbatimModuleSyntax: true,
}

/**
 * TypeScript without its types.
 * @param {string} text
 */
export const plain = (text) => ts.transpileModule(text, { compilerOptions }).outputText

/**
 * Of node’s loader: a TypeScript file without its types.
 * @param {string} url
 * @param {unknown} context
 * @param {(url: string, context: unknown) => unknown} next
 */
export async function load(url, context, next) {
  if (!url.endsWith('.ts')) return next(url, context)
  return { format: 'module', shortCircuit: true, source: plain(await readFile(fileURLToPath(url), 'utf8')) }
}
