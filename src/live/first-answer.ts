import found from 'virtual:first-answer'
import { placedText, type PlacedDesign } from '#live/design-link.ts'
import { workedExample } from '#live/worked-example.ts'

const EXAMPLE = workedExample()

/** Of the worked example, what a verdict is made of, and the name of its place: there when the page is first painted. */
export const FIRST_ANSWER = { ...found, scenario: EXAMPLE.scenario }

/** True for the worked example as it is opened. */
export function isWorkedExample(placed: PlacedDesign): boolean {
  return placedText(placed) === placedText(EXAMPLE)
}
