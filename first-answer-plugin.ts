import { tsImport } from 'tsx/esm/api'
import type { Plugin } from 'vite'
import type * as Opening from './src/live/worked-example.ts'
import type * as Answering from './src/shell/first-answer.ts'

const NAME = 'virtual:first-answer'
const LOADED = `\0${NAME}`

let made: Promise<string> | undefined

/** The worked example's answer, from the studies themselves: once for the page as it is written out and the page as it wakes. */
async function module(): Promise<string> {
  const load = <T>(file: string): Promise<T> => tsImport(file, import.meta.url) as Promise<T>
  const { workedExample } = await load<typeof Opening>('./src/live/worked-example.ts')
  const { firstAnswer } = await load<typeof Answering>('./src/shell/first-answer.ts')
  const { scenario, climate } = workedExample()
  return `export default ${JSON.stringify(firstAnswer(scenario, climate))}`
}

/** Hands pages the worked example's answer, so that the first of them is painted with it. */
export function firstAnswerPlugin(): Plugin {
  return {
    name: 'first-answer',
    resolveId: (id) => (id === NAME ? LOADED : undefined),
    load: (id) => (id === LOADED ? (made ??= module()) : undefined),
  }
}
