/** The little of papaparse the reader uses; its own types would bring the DOM and Node into the model. */
declare module 'papaparse/papaparse.js' {
  interface ParseConfig {
    readonly delimiter: string
    readonly newline?: string
    readonly skipEmptyLines?: boolean
  }
  const Papa: {
    parse(text: string, config: ParseConfig): { data: string[][] }
    unparse(rows: readonly (readonly (string | number)[])[], config: { readonly newline: string }): string
  }
  export default Papa
}
