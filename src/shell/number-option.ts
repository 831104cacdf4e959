import { stop } from '#model/basis/words'
import type { Options } from './options.ts'

/**
 * A numeric option inside its range, or its usual value when it was not given.
 * @throws ProblemError in one sentence
 */
export function numberOption(
  options: Options,
  name: string,
  range: readonly [min: number, max: number],
  usual?: number,
): number {
  const given = options.values[name]
  if (given === undefined && usual !== undefined) return usual
  const value = typeof given === 'string' && given.trim() !== '' ? Number(given) : NaN
  if (value >= range[0] && value <= range[1]) return value
  throw stop(
    'bad-number',
    given === undefined ? `--${name} is missing.` : `--${name} ${String(given)} is not in range.`,
    `Give a number from ${range[0]} to ${range[1]}.`,
  )
}

/** The same, or undefined when it was not given. */
export function optionalNumber(
  options: Options,
  name: string,
  range: readonly [min: number, max: number],
): number | undefined {
  return options.values[name] === undefined ? undefined : numberOption(options, name, range)
}

/** Numbers with commas between them; empty when the option was not given. */
export function numbersOption(options: Options, name: string): number[] {
  const given = options.values[name]
  if (typeof given !== 'string') return []
  return given.split(',').map((word) => {
    const value = word.trim() === '' ? NaN : Number(word)
    if (Number.isFinite(value)) return value
    throw stop('bad-number', `--${name} has “${word}” in it.`, 'Give numbers with commas between them.')
  })
}
