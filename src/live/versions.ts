import type { KeptDesign } from '#live/kept-designs.svelte.ts'

/** A name with the versions that were kept under it before, newest first. */
export interface Family {
  readonly latest: KeptDesign
  readonly before: readonly KeptDesign[]
}

const VERSION = /^(.*) \(of \d{4}-\d\d-\d\d \d\d:\d\d:\d\d\)$/s

/** Kept designs by name: the one kept last, and those it took the place of. A version whose successor is gone goes by itself. */
export function versionsOf(list: readonly KeptDesign[]): readonly Family[] {
  const names = new Set(list.map(({ name }) => name))
  const nameOf = (kept: KeptDesign): string => {
    const name = VERSION.exec(kept.name)?.[1]
    return name !== undefined && names.has(name) ? name : kept.name
  }
  return list
    .filter((kept) => nameOf(kept) === kept.name)
    .map((latest) => ({
      latest,
      before: list.filter((kept) => kept !== latest && nameOf(kept) === latest.name),
    }))
}
