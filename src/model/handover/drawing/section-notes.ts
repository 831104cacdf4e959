import { figure, short, words, type Text } from '#model/basis/words'
import { drainsBack, liftOf_m, type PlantFacts } from './facts.ts'
import type { Levels } from './levels.ts'

/** What is said under the section. */
export function sectionNotes(facts: PlantFacts, levels: Levels): Text[] {
  const { tank } = facts
  const notes: Text[] = [
    'Low and high edge of the panels: the underside of the modules, which is the top of the rails.',
    words`${facts.ducting === 'pipe' ? 'Pipe' : 'Duct'} there and back together ${figure(facts.pipeRun_m, 'm')}, ${facts.pipe}. ${fallWords(facts)}`,
  ]
  if (!levels.onRoof)
    notes.push('The panels are lower than the ceiling, so they are drawn on the ground beside the room.')
  else notes.push(roofWords(facts))
  if (facts.liquid && tank !== null)
    notes.push(
      words`Tank ${figure(tank.volume_m3, 'm3')}, ⌀ ${figure(tank.diameter_m, 'span')}, ${figure(tank.height_m, 'span')} high. P1 is beside it and lower than its outlet, always full of water (such pumps do not suck), D1 at the lowest point. The return goes over the rim and ends ${figure(tank.end_m, 'span', 2)} above the bottom. The tank rests on ${figure(tank.foot_m, 'board')} of insulation: levels of the section are above the floor, those of the lists above the tank’s bottom.`,
    )
  if (drainsBack(facts))
    notes.push(
      tank === null
        ? 'Drain-back: no trap, no check valve and no level stretch between panels and DV, or water stays and freezes.'
        : 'Drain-back: no trap, no check valve and no level stretch above the water line, or water stays and freezes. Air gets in by the hole AH of the return, above the water line: nothing else may be open at the top; the plugs PL stay shut.',
    )
  if (drainsBack(facts) && (liftOf_m(facts) ?? 1) < facts.roomHeight_m && tank?.place === 'outside')
    notes.push(
      'Outdoors the pump and what is under the water line stay full: insulate them, and drain them for the winter by D1 and D2.',
    )
  if (tank !== null && tank.height_m > facts.roomHeight_m && tank.place === 'room')
    notes.push('The tank is higher than the room.')
  return notes
}

/** What lies between the ceiling and the feet. */
function roofWords({ roofThickness_m, panelHeight_m, roomHeight_m }: PlantFacts): Text {
  if (roofThickness_m === null)
    return 'The roof is described by its U-value, which does not say how thick it is: it is not drawn, and the feet of the panels are counted from the ceiling.'
  const above_m = panelHeight_m - roomHeight_m - roofThickness_m
  return words`The roof as described is ${short(roofThickness_m)} thick; the feet of the panels are counted from the ceiling, through it.${above_m < 0 ? words` The low edge of the panels would lie in it: raise them by ${short(-above_m)} at least.` : words``}`
}

/** A fall drawn to scale is thinner than a line. */
const LEVEL = 'To scale so small a fall looks level: set it with a spirit level.'

function fallWords(facts: PlantFacts): Text {
  if (!facts.liquid) return `Ducts fall to the drain at the low point, 1 : 50. ${LEVEL}`
  return drainsBack(facts)
    ? words`Every run falls 1 : 50 (20 mm in 1 m, 1/4 in in 1 ft) towards the store. ${LEVEL}`
    : words`Every run falls 1 : 50 (20 mm in 1 m, 1/4 in in 1 ft) to the drain D1, and rises to the vents. ${LEVEL}`
}
