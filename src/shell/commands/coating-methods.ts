import { pairedReflectance, warmPlateEmittance, type Measured } from '#model/panels/readings'
import { stop } from '#model/basis/words'
import type { Options } from '../options.ts'
import { note, type Table } from '../output.ts'
import { numberOption, numbersOption } from '../number-option.ts'

/** Emittance by tape on a warm plate; what dominates the doubt and what to do next go to standard error. */
export function warmPlateTable(options: Options): Table {
  const result = warmPlateEmittance({
    tape_C: numbersOption(options, 'plate-tape'),
    sample_C: numbersOption(options, 'plate-sample'),
    foil_C: numbersOption(options, 'plate-foil'),
    tapeEmittance_frac: numberOption(options, 'tape-known', [0.5, 1], 0.95),
    tapeSd_frac: numberOption(options, 'tape-known-sd', [0, 0.1], 0.01),
  })
  return measuredTable('emittance_frac', result)
}

/** Solar reflectance from a black and a white board beside the sample, in the sun. */
export function pairedTable(options: Options): Table {
  const [black, white, sample] = ['boards-black', 'boards-white', 'boards-sample'].map((name) =>
    numbersOption(options, name),
  ) as [number[], number[], number[]]
  if (new Set([black.length, white.length, sample.length]).size > 1)
    throw stop(
      'paired-boards-gap',
      `The boards have ${black.length} (black), ${white.length} (white) and ${sample.length} (sample) readings.`,
      'Give one of each for every moment.',
    )
  const result = pairedReflectance(
    black.map((black_C, i) => ({ black_C, white_C: white[i]!, sample_C: sample[i]! })),
    {
      blackAbsorptance_frac: numberOption(options, 'black-known', [0, 1], 0.95),
      blackSd_frac: numberOption(options, 'black-known-sd', [0, 0.1], 0.01),
      whiteAbsorptance_frac: numberOption(options, 'white-known', [0, 1]),
      whiteSd_frac: numberOption(options, 'white-known-sd', [0, 0.1], 0.01),
    },
  )
  return measuredTable('solarReflectance_frac', result)
}

function measuredTable(quantity: string, { value, low, high, doubts }: Measured): Table {
  for (const { of, sd } of doubts) note(`± ${(1.645 * sd).toFixed(3)}: ${of}`)
  note(`next: ${doubts[0]!.next}`)
  return { quantity: [quantity], value: [value], low90: [low], high90: [high] }
}
