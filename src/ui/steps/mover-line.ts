import { words, type Figure, type Wording } from '#model/basis/words'

/** What a pump or fan is bought by, in the order it is said: flow, head, power. */
const BOUGHT_BY: readonly (readonly Figure['unit'][])[] = [
  ['liquidFlow', 'airFlow'],
  ['head', 'fanPressure'],
  ['W'],
]

/** One plain line of a pump or fan to buy, made of the very figures that its full words begin with. */
export function moverLine(full: Wording, fluid: string): Wording {
  const [flow, head, power] = BOUGHT_BY.map((units) => figureIn(full, units))
  if (!flow || !head || !power) return full
  const fan = fluid === 'air'
  return words`a ${fan ? 'fan' : 'pump'} that moves at least ${flow} against ${fan ? 'a pressure' : 'a head'} of ${head}; it draws about ${power}.`
}

const figureIn = (full: Wording, units: readonly Figure['unit'][]): Figure | undefined =>
  full.find((part): part is Figure => typeof part !== 'string' && units.includes(part.unit))
