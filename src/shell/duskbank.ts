import { ProblemError, problemSentence } from '#model/basis/words'
import { COMMANDS } from './commands/all.ts'
import type { Command } from './commands/command.ts'
import { helpText } from './commands/help.ts'
import { readOptions } from './options.ts'
import { emit, note, renderResult } from './output.ts'

/** Exit codes: bad input is the user's to mend, a fault is ours. */
const BAD_INPUT = 2
const FAULT = 70

function main(words: readonly string[]): number {
  const [name = 'help', ...rest] = words
  if (name === 'help' || name === '--help' || name === '-h') {
    process.stdout.write(helpText(COMMANDS))
    return 0
  }
  if (!Object.hasOwn(COMMANDS, name)) {
    process.stderr.write(
      `There is no subcommand ${name}. Use one of ${Object.keys(COMMANDS).join(', ')}, help.\n`,
    )
    return BAD_INPUT
  }
  const command = COMMANDS[name]!
  const options = readOptions(withWord(rest, command), command.options)
  const result = command.run(options)
  emit(renderResult(result, options.format), options.out)
  if (result.invented.length > 0) note(`Invented data, nothing measured: ${result.invented.join('; ')}.`)
  return 0
}

/** A plain first word as the option it stands for. */
function withWord(words: readonly string[], { word }: Command): readonly string[] {
  const [first, ...rest] = words
  return word === undefined || first === undefined || first.startsWith('-')
    ? words
    : [`--${word}`, first, ...rest]
}

try {
  process.exitCode = main(process.argv.slice(2))
} catch (error) {
  if (error instanceof ProblemError) {
    for (const problem of error.problems) process.stderr.write(`${problemSentence(problem)}\n`)
    process.exitCode = BAD_INPUT
  } else {
    process.stderr.write(`Duskbank failed: ${(error as Error).stack ?? String(error)}\n`)
    process.exitCode = FAULT
  }
}
