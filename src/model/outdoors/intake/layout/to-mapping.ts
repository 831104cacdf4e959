import type { LayoutMatch } from './layout.ts'
import type { TableMapping } from '../mapping.ts'

/** The mapping of a file whose layout was recognised: every column certain. */
export function mappingOfLayout(match: LayoutMatch & { readonly id: string }): TableMapping {
  return {
    version: 1,
    layout: match.id,
    table: match.table.shape,
    columns: match.table.headers.map((header, index) => {
      const known = match.columns.get(index)
      return {
        index,
        header: header || `column ${index + 1}`,
        quantity: known?.quantity ?? 'ignore',
        unit: known?.unit ?? '',
        confidence: 1,
        basis: 'layout',
        alternatives: [],
      }
    }),
    missing: match.missing,
    time: match.time,
    site: match.site,
  }
}
