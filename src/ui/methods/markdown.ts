/** Blocks of the methods text: only what src/model/README.md uses. */
export type Block =
  | { readonly kind: 'heading'; readonly level: number; readonly text: string }
  | { readonly kind: 'paragraph'; readonly text: string }
  | { readonly kind: 'list'; readonly items: readonly string[] }
  | { readonly kind: 'equations'; readonly text: string }
  | {
      readonly kind: 'table'
      readonly head: readonly string[]
      readonly rows: readonly (readonly string[])[]
    }

/** A piece of a line: plain, code or emphasised. */
export interface Span {
  readonly kind: 'text' | 'code' | 'strong'
  readonly text: string
}

/** Cuts the text at blank lines (fences keep theirs) and says what each block is. */
export function blocksOf(markdown: string): Block[] {
  const parts = markdown.split(/(```text\n[\s\S]*?```)/)
  return parts.flatMap((part) =>
    part.startsWith('```')
      ? [{ kind: 'equations', text: part.replace(/^```text\n|\n?```$/g, '') } satisfies Block]
      : part
          .split(/\n\s*\n/)
          .map((text) => text.trim())
          .filter((text) => text !== '')
          .map(blockOf),
  )
}

function blockOf(text: string): Block {
  const heading = /^(#+) (.*)$/.exec(text)
  if (heading) return { kind: 'heading', level: heading[1]!.length, text: heading[2]! }
  if (text.startsWith('|')) {
    const [head, , ...rows] = text.split('\n').map(cellsOf)
    return { kind: 'table', head: head!, rows }
  }
  if (text.startsWith('- '))
    return { kind: 'list', items: text.split(/\n- |^- /).filter((item) => item !== '') }
  return { kind: 'paragraph', text: text.replace(/\n/g, ' ') }
}

function cellsOf(line: string): string[] {
  return line
    .replace(/^\||\|$/g, '')
    .split('|')
    .map((cell) => cell.trim())
}

/** Code in backticks and emphasis in asterisks or underscores taken apart from the plain text. */
export function spansOf(text: string): Span[] {
  return text
    .split(/(`[^`]+`|\*[^*]+\*|(?<![\w])_[^_]+_(?![\w]))/)
    .filter((piece) => piece !== '')
    .map((piece): Span => {
      if (piece.startsWith('`')) return { kind: 'code', text: piece.slice(1, -1) }
      return /^[*_].+[*_]$/.test(piece) && piece.length > 2
        ? { kind: 'strong', text: piece.slice(1, -1) }
        : { kind: 'text', text: piece }
    })
}
