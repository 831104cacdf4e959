import { type Field, fieldsOf, GROUPS } from '#model/design/scenario'
import { GLOSSARY, wordingText } from '#model/basis/words'
import { COMMON_OPTIONS, type OptionSpec } from '../options.ts'
import { sampleNames } from '../samples.ts'
import type { Command } from './command.ts'

function optionLines(specs: Readonly<Record<string, OptionSpec>>): string[] {
  return Object.entries(specs).map(([name, { type, help }]) => {
    const shape = type === 'boolean' ? `--${name}` : `--${name} …`
    return `    ${shape.padEnd(24)} ${help}`
  })
}

function rangeOf(field: Field): string {
  switch (field.type) {
    case 'number':
      return `${field.min}…${field.max} ${field.unit}, default ${field.default}`
    case 'choice':
      return `one of ${field.options.join(', ')}; default ${field.default}`
    case 'switch':
      return `true or false, default ${field.default}`
    case 'text':
      return `text up to ${field.maxLength} characters`
    case 'several':
      return `some of ${field.options.join(', ')}, with commas; default none`
    case 'dayProfile':
      return `24 numbers with commas, each ${field.min}…${field.max} ${field.unit}; default ${field.default.join(',')}`
  }
}

function fieldLines(): string[] {
  return GROUPS.flatMap((group) => [
    '',
    `  ${group}`,
    ...Object.entries(fieldsOf(group)).flatMap(([name, field]) => [
      `    ${group}.${name}`,
      `        ${field.label}: ${wordingText(field.help, 'si')} ${wordingText(field.why, 'si')}`.trimEnd(),
      `        ${rangeOf(field)}`,
    ]),
  ])
}

/** What one subcommand does and takes. */
export function commandHelp(name: string, command: Command): string {
  return [
    `${name}: ${command.summary}`,
    '',
    `Usage: npm run -s duskbank -- ${name}${command.word === undefined ? '' : ` ${command.word.toUpperCase()}`} [options]`,
    '',
    ...(Object.keys(command.options).length === 0
      ? []
      : [`Options of ${name}`, ...optionLines(command.options), '']),
    'Options of every subcommand',
    ...optionLines(COMMON_OPTIONS),
    '',
    'Every field of --set and of scenario files: npm run -s duskbank -- help',
    '',
  ].join('\n')
}

/** The whole help text: subcommands, options, fields, units. */
export function helpText(commands: Readonly<Record<string, Command>>): string {
  return [
    'Duskbank sizes sky-cooled panels and their store for a small building.',
    '',
    'Usage: npm run -s duskbank -- <subcommand> [options]',
    '',
    'Subcommands',
    ...Object.entries(commands).flatMap(([name, command]) => [
      `  ${name.padEnd(10)} ${command.summary}`,
      ...optionLines(command.options),
    ]),
    '  help       this text',
    '',
    'Options of every subcommand',
    ...optionLines(COMMON_OPTIONS),
    '',
    'Quantities (one name each; the whole glossary is src/model/GLOSSARY.md)',
    ...GLOSSARY.filter(({ columns }) => columns !== undefined).map(
      ({ name, columns }) => `    ${name.padEnd(26)} ${columns!.join(', ')}`,
    ),
    '',
    `Sample climates (invented): ${sampleNames().join(', ')}`,
    '',
    'Names of columns and fields end in their unit: _C °C, _K kelvin of difference, _Wm2 W/m², _frac a share 0…1.',
    'Progress and warnings go to standard error. Bad input: one sentence, exit code 2.',
    'What rests on invented data says so on standard error and in the fields invented and inventedData.',
    '',
    'Scenario fields (for --set and scenario files)',
    ...fieldLines(),
    '',
  ].join('\n')
}
