/**
 * Data that nobody measured says so in the first word of its `basis`: sample climates, the example recipe, the
 * example readings, practice logs. Page, shell and sheet ask here whether to print the mark.
 */
export function saysInvented(basis: string): boolean {
  return /^invented\b/i.test(basis)
}
