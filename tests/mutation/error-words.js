import { declareValuePlugin, PluginKind } from '@stryker-mutator/api/plugin'

/**
 * The one rule by which mutants are left out: the words of a RangeError. It speaks to a programmer, and no test should fix
 * its wording. That it is thrown, and when, stays under mutation. (JavaScript, as plain Node loads it.)
 */
export const strykerPlugins = [
  declareValuePlugin(PluginKind.Ignore, 'error-words', {
    shouldIgnore(path) {
      const { listKey, parent } =
        /** @type {{ listKey?: string, parent?: { type: string, callee?: { name?: string } } }} */ (path)
      const isArgument = listKey === 'arguments' && parent?.type === 'NewExpression'
      return isArgument && parent?.callee?.name === 'RangeError' ? 'words of an error' : undefined
    },
  }),
]
