import type { Figure, Wording } from './wording.ts'

/** A labelled line. */
export interface SheetLine {
  readonly label: string
  readonly value: Wording
}

/** A labelled line, written short. */
export function line(label: string, value: Wording | Figure | string): SheetLine {
  return { label, value: Array.isArray(value) ? (value as Wording) : [value as Figure | string] }
}
