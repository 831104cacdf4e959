import { likest, ProblemError, problemSentence } from '#model/basis/words'
import { COMMANDS } from './commands/all.ts'
import type { Command } from './commands/command.ts'
import { commandHelp, helpText } from './commands/help.ts'
import { readOptions } from './options.ts'
import { emit, FORMATS, note, renderResult } from './output.ts'

/** Exit codes: bad input is the user's to mend, a fault is ours. */
const BAD_INPUT = 2
const FAULT = 70

async function main(words: readonly string[]): Promise<number> {
  const [name = 'help', ...rest] = words
  if (name === 'help' || name === '--help' || name === '-h') {
    process.stdout.write(helpText(COMMANDS))
    return 0
  }
  if (!Object.hasOwn(COMMANDS, name)) {
    const near = likest(name, Object.keys(COMMANDS))
    process.stderr.write(
      `There is no subcommand ${name}. ${near === null ? '' : `Did you mean ${near}? `}Use one of ${Object.keys(COMMANDS).join(', ')}, help.\n`,
    )
    return BAD_INPUT
  }
  const command = COMMANDS[name]!
  if (rest.includes('--help') || rest.includes('-h')) {
    process.stdout.write(commandHelp(name, command))
    return 0
  }
  const options = readOptions(
    withWord(rest, command),
    command.options,
    command.html === true ? [...FORMATS, 'html'] : FORMATS,
  )
  const result = await command.run(options)
  emit(renderResult(result, options.format), options.out)
  if (result.invented.length > 0) note(`Invented data, nothing measured: ${result.invented.join('; ')}.`)
  return 0
}

/** A plain first word as the option it means. */
function withWord(words: readonly string[], { word }: Command): readonly string[] {
  const [first, ...rest] = words
  return word === undefined || first === undefined || /^-./.test(first)
    ? words
    : [`--${word}`, first, ...rest]
}

process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  // the reader of a pipe has seen enough: `… | head`
  if (error.code === 'EPIPE') process.exit(0)
  throw error
})

try {
  process.exitCode = await main(process.argv.slice(2))
} catch (error) {
  if (error instanceof ProblemError) {
    for (const problem of error.problems) process.stderr.write(`${problemSentence(problem)}\n`)
    process.exitCode = BAD_INPUT
  } else {
    process.stderr.write(`Duskbank failed: ${(error as Error).stack ?? String(error)}\n`)
    process.exitCode = FAULT
  }
}
