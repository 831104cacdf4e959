let names: Intl.DisplayNames | null = null

/** A country's English name from its code of two letters. */
export function countryName(code: string): string {
  names ??= new Intl.DisplayNames('en', { type: 'region' })
  return names.of(code) ?? code
}
