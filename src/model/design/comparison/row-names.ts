import { KNOWN_COATINGS } from '#model/panels/coating'
import { AS_DESCRIBED, type ComparisonRow } from './cases.ts'
import { FIELDS } from '#model/design/scenario'

export const planName = (id: string): string => FIELDS.plan.kind.optionLabels[id as never] ?? id
export const coverName = (id: string): string => FIELDS.cover.kind.optionLabels[id as never] ?? id
export const coatingName = (id: string): string =>
  KNOWN_COATINGS.find((coating) => coating.id === id)?.name ?? 'Your coating'

/** A column of words: one part of what is compared. */
export interface WordColumn {
  readonly id: 'climate' | 'plan' | 'coating' | 'cover' | 'building'
  readonly title: string
  readonly text: (row: ComparisonRow) => string
}

const WORD_COLUMNS: readonly WordColumn[] = [
  { id: 'climate', title: 'Climate', text: (row) => row.climate },
  { id: 'plan', title: 'Running plan', text: (row) => planName(row.plan) },
  { id: 'coating', title: 'Coating', text: (row) => coatingName(row.coating) },
  { id: 'cover', title: 'Cover', text: (row) => coverName(row.cover) },
  {
    id: 'building',
    title: 'Building',
    text: (row) => (row.building === AS_DESCRIBED ? 'As described' : row.building),
  },
]

/** The parts in which the rows differ; the climate when they differ in none. */
export function wordColumns(rows: readonly ComparisonRow[]): readonly WordColumn[] {
  const differing = WORD_COLUMNS.filter(({ id }) => new Set(rows.map((row) => row[id])).size > 1)
  return differing.length > 0 ? differing : WORD_COLUMNS.slice(0, 1)
}

export function rowName(row: ComparisonRow, columns: readonly WordColumn[]): string {
  return columns.map((column) => column.text(row)).join(', ')
}
