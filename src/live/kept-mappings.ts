import { readMapping, layoutSignature, type TableMapping } from '#model/outdoors/intake'
import { readKept, writeKept } from '#live/kept-text.ts'

const NAME = 'weather-mappings'
/** Layouts remembered at most; the oldest is forgotten first. */
const MOST = 30

/** Texts of mapping files by the signature of the layout they belong to, oldest first. */
function readAll(): Record<string, string> {
  try {
    const kept: unknown = JSON.parse(readKept(NAME) ?? '{}')
    if (kept === null || typeof kept !== 'object') return {}
    return Object.fromEntries(Object.entries(kept).filter(([, text]) => typeof text === 'string'))
  } catch {
    return {}
  }
}

/** The mapping corrected earlier for files laid out like this one, or null. */
export function rememberedMapping(own: TableMapping): TableMapping | null {
  const text = readAll()[layoutSignature(own)]
  return text === undefined ? null : readMapping(text, 'the remembered mapping').mapping
}

/** Remembers columns, units and the meaning of the stamps for this layout; not the place, which is the file's own. */
export function rememberMapping(mapping: TableMapping): void {
  const signature = layoutSignature(mapping)
  const rest = Object.entries(readAll()).filter(([known]) => known !== signature)
  const text = JSON.stringify({ ...mapping, site: {} })
  writeKept(NAME, JSON.stringify(Object.fromEntries([...rest, [signature, text]].slice(-MOST))))
}

export function forgetMapping(mapping: TableMapping): void {
  const signature = layoutSignature(mapping)
  const rest = Object.entries(readAll()).filter(([known]) => known !== signature)
  writeKept(NAME, JSON.stringify(Object.fromEntries(rest)))
}
