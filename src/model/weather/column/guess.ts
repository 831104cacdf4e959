import type { TableMapping } from '#model/weather/mapping.ts'
import type { OpenOptions } from '#model/weather/options.ts'
import type { ProblemList } from '#model/weather/problems.ts'
import type { RawTable } from '#model/weather/table/raw.ts'
import type { FoundTable } from '#model/weather/table/shape.ts'

/** Mapping of a table whose layout is not known. */
export function guessMapping(
  raw: RawTable,
  found: FoundTable,
  lines: readonly string[],
  options: OpenOptions,
  problems: ProblemList,
): TableMapping {
  void [lines, options, problems]
  return {
    version: 1,
    layout: null,
    table: found.shape,
    columns: raw.columns.map(({ index, header }) => ({
      ...{ index, header: header || `column ${index + 1}`, quantity: 'ignore', unit: '', confidence: 0 },
      ...{ basis: 'none', alternatives: [] },
    })),
    missing: [],
    time: { clockOffset_h: null, stamp: 'ending', radiationOffset_h: null, shift_h: 0 },
    site: {},
  }
}
