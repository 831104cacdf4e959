import { targetWords } from '#model/design/target'
import { count, figure, line, saysInvented, words, type SheetLine, type Wording } from '#model/basis/words'
import type { WayFacts } from '#model/handover/drawing'
import { onceEach, type Caution } from '../cautions.ts'
import { partsOfWorks, type GroupedPart } from '../part.ts'
import { moneyLines } from '../money.ts'
import { roomAssumption } from '../assumptions.ts'
import type { Range } from '../ranges.ts'
import { siteLinesOf, titleOf } from '../site-lines.ts'
import type { WayAsked } from './way-asked.ts'
import { wayFactsOf } from './way-facts-of.ts'
import type { Work } from './work.ts'
import { worksOf } from './works.ts'

/** The sheet of a way without panels, unrounded and in SI. */
export interface WaySheet {
  readonly title: string
  readonly note: string
  readonly headline: Wording
  readonly sure: Wording | null
  readonly invented: Wording | null
  readonly outOfReach: Wording | null
  /** What it reaches. */
  readonly job: readonly SheetLine[]
  readonly site: readonly SheetLine[]
  /** What is drawn by `wayDrawings`: pictures are made where they are shown. */
  readonly facts: WayFacts
  /** All that is to be bought, work by work. */
  readonly parts: readonly GroupedPart[]
  readonly works: readonly Work[]
  /** Of all works, each once. */
  readonly cautions: readonly Caution[]
  readonly assumptions: readonly Wording[]
}

/** The sheet of measures and machine: what to buy and do, what it reaches, how sure, and what to mind. */
export function waySheet(asked: WayAsked): WaySheet {
  const { scenario, weather, found } = asked
  const { job } = scenario
  const works = worksOf(asked)
  return {
    title: titleOf(scenario, weather),
    note: job.note,
    headline: words`${asked.way}: ${count(Math.round(found.with.hours_h))} h a year above the limit, hottest hour ${figure(found.with.peak_C, 'C')}`,
    sure:
      found.ranges === null
        ? null
        : words`How sure, eight cases in ten: ${rangeWords(found.ranges.hours_h)} h above the limit, hottest hour ${figure(found.ranges.peak_C.low, 'C')} to ${figure(found.ranges.peak_C.high, 'C')}.`,
    invented: saysInvented(weather.basis)
      ? words`The climate of ${weather.site.name} is invented: nobody measured it. Choose your own place before you build from this sheet.`
      : null,
    outOfReach: found.with.meets ? null : words`This way does not reach the target.`,
    job: jobLines(asked),
    site: siteLinesOf(scenario, weather),
    facts: wayFactsOf(asked),
    parts: partsOfWorks(works),
    works,
    cautions: onceEach(works.flatMap(({ cautions }) => cautions)),
    assumptions: assumptionsOf(asked),
  }
}

const rangeWords = ({ low, high }: Range): Wording =>
  words`${count(Math.round(low))} to ${count(Math.round(high))}`

function jobLines({ scenario, found, way }: WayAsked): SheetLine[] {
  const { target } = scenario
  const { with: after, before, winter } = found
  const change = winter.heatingChange_J
  return [
    line('Way taken', way),
    line('Target', targetWords(target)),
    line(
      'Hours above the limit',
      words`${count(Math.round(after.hours_h))}; ${count(Math.round(before.hours_h))} before`,
    ),
    line('Hottest hour', words`${figure(after.peak_C, 'C')}; ${figure(before.peak_C, 'C')} before`),
    ...(after.electric_J > 0 ? [line('Electricity', words`${figure(after.electric_J, 'J', 2)} a year`)] : []),
    ...(after.water_m3 > 0 ? [line('Water', words`${figure(after.water_m3, 'm3', 2)} a year`)] : []),
    line(
      'Heating in winter',
      words`${figure(Math.abs(change), 'J', 2)} a year ${change >= 0 ? 'more' : 'less'} than before, to keep ${figure(target.heatedTo_C, 'C')} (${figure(winter.heating_J, 'J', 2)} in all); ${count(winter.mouldMonths)} months of mould weather at the coldest corner, ${count(winter.mouldMonthsBefore)} before`,
    ),
    ...moneyLines(found.bill),
  ]
}

function assumptionsOf({ scenario, found }: WayAsked): Wording[] {
  const lines: Wording[] = [roomAssumption(scenario)]
  if (found.ranges !== null)
    lines.push(
      words`The range is that of ${count(found.ranges.draws)} years with the uncertain inputs drawn between their ends (page “Range”); what is bought stays as it is here.`,
    )
  lines.push(words`Windows, blinds, fans and machine are used as described every hour of the year.`)
  return lines
}
