import { isData, isMissing } from './cell.ts'

/** Share of the cells that say something which say a number or a stamp. */
export function dataShare(cells: readonly string[], decimal: '.' | ','): number {
  let data = 0
  let said = 0
  for (const cell of cells) {
    if (isMissing(cell)) continue
    said += 1
    if (isData(cell, decimal)) data += 1
  }
  return said === 0 ? 0 : data / said
}
