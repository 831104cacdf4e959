import ts from 'typescript'
import { commentOf, type Code, type Declared } from './code.ts'

/** One function, method or constant that an equation points to. */
export interface Pointed {
  /** From src/model. */
  readonly file: string
  /** `name` or `Class.method`. */
  readonly name: string
  readonly line: number
  /** Its own text, without the rest of its class. */
  readonly node: ts.Node
  readonly comment: string
  readonly declared: Declared
}

/**
 * Reads `file.ts#name #other file2.ts#Class.method | source`.
 * @throws Error naming what is not there
 */
export function pointedAt(code: Code, text: string): { at: Pointed[]; source: string | null } {
  const [places, source] = text.split('|').map((one) => one.trim())
  let file = ''
  const at = places!.split(/\s+/).map((place) => {
    const [path, name] = place.split('#')
    if (path !== '') file = path!
    return pointed(code, file, name!)
  })
  return { at, source: source ?? null }
}

function pointed(code: Code, file: string, name: string): Pointed {
  const [top, method] = name.split('.')
  const declared = code.declared.get(`src/model/${file}#${top!}`)
  if (!declared) throw new Error(`tests/equations/places.ts: src/model/${file} declares no ${name}`)
  const node = method === undefined ? declared.node : methodOf(declared.node, method)
  if (!node) throw new Error(`tests/equations/places.ts: ${top!} in src/model/${file} has no ${method!}`)
  const { line } = node.getSourceFile().getLineAndCharacterOfPosition(node.getStart())
  return { file, name, line: line + 1, node, comment: commentOf(node), declared }
}

function methodOf(node: ts.Node, name: string): ts.Node | undefined {
  return ts.isClassDeclaration(node) ? node.members.find((one) => one.name?.getText() === name) : undefined
}
