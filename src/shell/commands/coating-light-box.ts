import { wordingText } from '#model/basis/words'
import { lightBoxResult } from '#model/panels/readings'
import type { Options } from '../options.ts'
import { note, type Table } from '../output.ts'
import { numberOption, numbersOption } from '../number-option.ts'

/** A light-box comparison as a table; what it may and may not decide goes to standard error. */
export function lightBoxTable(options: Options): Table {
  const result = lightBoxResult(
    {
      wallReflectance_frac: numberOption(options, 'box-wall', [0.1, 0.999], 0.95),
      samplePort_frac: numberOption(options, 'box-port', [0, 0.3], 0.01),
      otherPorts_frac: numberOption(options, 'box-holes', [0, 0.3], 0.03),
    },
    {
      sample: numbersOption(options, 'box-sample'),
      reference: numbersOption(options, 'box-reference'),
      dark: numberOption(options, 'box-dark', [0, 1e9], 0),
      referenceReflectance_frac: numberOption(options, 'box-known', [0.05, 1], 0.98),
      referenceUncertainty_frac: numberOption(options, 'box-known-sd', [0, 0.1], 0.01),
    },
  )
  for (const sentence of result.mayDecide) note(`may decide: ${sentence}`)
  for (const sentence of result.mayNotDecide) note(`may not decide: ${wordingText(sentence, 'si')}`)
  const numbers = Object.entries(result).filter(
    (entry): entry is [string, number] => typeof entry[1] === 'number',
  )
  return { quantity: numbers.map(([name]) => name), value: numbers.map(([, value]) => value) }
}
