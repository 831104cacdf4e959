import { tsImport } from 'tsx/esm/api'
import type { Plugin } from 'vite'
import type { Scenario } from '#model/design/scenario'
import type * as Answering from './first-answer.ts'

const NAME = 'virtual:first-answer'
const LOADED = `\0${NAME}`

/** What the page opens with. */
interface Opening {
  workedExample(): { readonly scenario: Scenario; readonly climate: string }
}

/**
 * Hands pages the worked example's answer, so that the first of them is painted with it: from the studies themselves, once
 * for the page as it is written out and the page as it wakes.
 * @param opening  URL of the file that knows the example
 */
export function firstAnswerPlugin(opening: URL): Plugin {
  const load = <T>(file: string): Promise<T> => tsImport(file, import.meta.url) as Promise<T>
  const module = async (): Promise<string> => {
    const { workedExample } = await load<Opening>(opening.href)
    const { firstAnswer } = await load<typeof Answering>('./first-answer.ts')
    const { scenario, climate } = workedExample()
    return `export default ${JSON.stringify(firstAnswer(scenario, climate))}`
  }
  let made: Promise<string> | undefined
  return {
    name: 'first-answer',
    resolveId: (id) => (id === NAME ? LOADED : undefined),
    load: (id) => (id === LOADED ? (made ??= module()) : undefined),
  }
}
