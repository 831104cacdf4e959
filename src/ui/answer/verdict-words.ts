import type { UnitSystem } from '#model/basis/units'
import type { LiveAnswer } from '#live/messages.ts'
import { wordingText } from '#model/basis/words'
import { machineOf } from '#model/design/scenario'
import { fitLines, machineWords, whatIsSized } from '#ui/answer/answer-words.ts'
import { limitText } from '#ui/answer/limit-text.ts'
import { isUnsure, metIn, type Met } from '#ui/answer/sureness.ts'
import { shownQuantity } from '#ui/words/quantity.ts'

/** Whether to build a panel, in a few words, and why in a sentence or two. */
export interface Verdict {
  readonly big: string
  readonly why: readonly string[]
}

/** What of an answer the verdict is made of. */
type Judged = Pick<LiveAnswer, 'scenario' | 'area_m2' | 'fit' | 'way'> & {
  readonly sizing: Pick<LiveAnswer['sizing'], 'kind' | 'withPanels' | 'doNothing' | 'limit'>
}

/** The verdict on the design as it is; the numbers are those of the answer itself, and in how many years it holds where known. */
export function verdictOf(answer: Judged, system: UnitSystem, sure: Met | null = null): Verdict {
  const verdict = plainVerdict(answer, system)
  const holds = answer.way?.meets ?? answer.sizing.withPanels.measure <= 0
  if (!holds || !isUnsure(sure)) return verdict
  return { big: `${verdict.big.replace(/\.$/, '')}; the target is met ${metIn(sure)}.`, why: verdict.why }
}

function plainVerdict(answer: Judged, system: UnitSystem): Verdict {
  const { sizing, scenario } = answer
  const { withPanels, doNothing } = sizing
  const limit = limitText(scenario.target, system)
  const area = shownQuantity('m2', system).text(answer.area_m2)
  const hours = (value_h: number) => `${value_h.toFixed(0)} h`
  const { way } = answer
  const before = way === null ? '' : ` The room as it is: ${hours(way.asItIs.hours_h)}.`
  const change = `${hours(withPanels.hours_h)} a year above ${limit} with them, ${hours(doNothing.hours_h)} without.${before}`
  const misfits = fitLines(answer, system)
  if (way !== null && answer.area_m2 === 0) {
    const machine = machineOf(scenario)
    const without = machine === 'none' ? '' : ` and ${hours(doNothing.hours_h)} without the machine`
    return {
      big:
        machine === 'none'
          ? `The way you took is ${way.meets ? 'enough: no panels' : 'not enough'}.`
          : `${machineWords(machine, scenario)} in place of panels.`,
      why: [
        `You took: ${way.names.join(' + ')}. The room is then above ${limit} for ${hours(withPanels.hours_h)} a year; ${hours(way.asItIs.hours_h)} as it is${without}.`,
      ],
    }
  }
  switch (sizing.kind) {
    case 'notNeeded':
      return {
        big: 'No panels needed here.',
        why: [
          `The room is above ${limit} for ${hours(doNothing.hours_h)} a year by itself, which is within its target.`,
        ],
      }
    case 'floor':
      return {
        big: `${whatIsSized(scenario)}, are not enough here.`.replace('alone, are', 'alone are'),
        why: [
          `Even ${area} leave ${change}`,
          ...misfits,
          ...(sizing.limit === null ? [] : [wordingText(sizing.limit.sentence, system)]),
        ],
      }
    case 'own':
      return {
        big: withPanels.measure > 0 ? 'Your area is not enough.' : 'Your area is enough.',
        why: [`${area} of panel: ${change}`, ...misfits],
      }
    case 'met':
      return misfits.length > 0
        ? { big: 'It would work, but it does not fit.', why: misfits }
        : {
            big: `${whatIsSized(scenario)} could reach it.`,
            why: [`${area} of panel: ${change}`],
          }
  }
}
