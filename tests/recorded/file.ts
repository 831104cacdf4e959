import { readFileSync, writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import type { Digest } from './digest.ts'

const FILE = fileURLToPath(new URL('answers.json', import.meta.url))

/** Machine and program the checksums are exact on. */
export const MADE_BY = `${process.version} ${process.arch}`

export interface Recorded {
  readonly madeBy: string
  readonly answers: ReadonlyMap<string, Digest>
}

interface Written {
  readonly madeBy: string
  /** Lists of paths that answers share. */
  readonly shapes: readonly (readonly string[])[]
  /** By name: which shape, then its values. */
  readonly answers: Readonly<Record<string, readonly [number, ...Digest[string][]]>>
}

export function readRecorded(): Recorded {
  const { madeBy, shapes, answers } = JSON.parse(readFileSync(FILE, 'utf8')) as Written
  const named = Object.entries(answers).map(([name, [shape, ...values]]): [string, Digest] => [
    name,
    Object.fromEntries(shapes[shape]!.map((path, i) => [path, values[i]!])),
  ])
  return { madeBy, answers: new Map(named) }
}

export function writeRecorded(answers: ReadonlyMap<string, Digest>): void {
  const shapes: string[] = []
  const lines = [...answers].map(([name, found]) => {
    const shape = JSON.stringify(Object.keys(found))
    if (!shapes.includes(shape)) shapes.push(shape)
    return `${JSON.stringify(name)}:${JSON.stringify([shapes.indexOf(shape), ...Object.values(found)])}`
  })
  writeFileSync(
    FILE,
    `{"madeBy":${JSON.stringify(MADE_BY)},\n"shapes":[\n${shapes.join(',\n')}\n],\n"answers":{\n${lines.join(',\n')}\n}}\n`,
  )
}
