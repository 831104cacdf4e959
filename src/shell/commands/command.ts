import type { Options, OptionSpec } from '../options.ts'

/** One subcommand: what it says of itself, its own options, and what it does. */
export interface Command {
  readonly summary: string
  readonly options: Readonly<Record<string, OptionSpec>>
  readonly run: (options: Options) => void
}
