import type { Options, OptionSpec } from '../options.ts'
import type { Result } from '../output.ts'

/** One subcommand: what it says of itself, its own options, and what it finds. `duskbank.ts` prints the result. */
export interface Command {
  readonly summary: string
  /** The option that a plain first word fills: `place Kraków`. */
  readonly word?: string
  /** True where `--format html` makes a page to print. */
  readonly html?: true
  readonly options: Readonly<Record<string, OptionSpec>>
  readonly run: (options: Options) => Result | Promise<Result>
}
