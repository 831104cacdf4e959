import { CheckStatus } from '@stryker-mutator/api/check'
import { declareClassPlugin, PluginKind } from '@stryker-mutator/api/plugin'

/** Drawn anew only when this changes: the same sample of the same code on every machine. */
const SEED = 20261125

/** A number 0…1 from a text, the same each time: FNV-1a (Fowler, Noll & Vo), 32 bits, with a last stir. @param {string} text */
function draw(text) {
  let hash = 2166136261 ^ SEED
  for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), 16777619)
  hash = Math.imul(hash ^ (hash >>> 15), 2246822507)
  return ((hash ^ (hash >>> 13)) >>> 0) / 4294967296
}

/** Lets through a share of all mutants (`MUTATION_SAMPLE`, 0…1), drawn by place and change; run.ts says how many were left undrawn. */
class Sample {
  static inject = /** @type {[]} */ ([])

  async init() {}

  /**
   * @param {import('@stryker-mutator/api/core').Mutant[]} mutants
   * @returns {Promise<Record<string, import('@stryker-mutator/api/check').CheckResult>>}
   */
  async check(mutants) {
    const share = Number(process.env.MUTATION_SAMPLE)
    return Object.fromEntries(
      mutants.map(({ id, fileName, location: { start }, mutatorName, replacement }) => {
        const file = fileName.replace(/.*src[\\/]model[\\/]/, '')
        const drawn = draw(`${file}:${start.line}:${start.column}:${mutatorName}:${replacement}`) < share
        return [
          id,
          drawn ? { status: CheckStatus.Passed } : { status: CheckStatus.CompileError, reason: 'not drawn' },
        ]
      }),
    )
  }
}

export const strykerPlugins = [declareClassPlugin(PluginKind.Checker, 'sample', Sample)]
