import { figure, short, words, type Text } from '#model/basis/words'
import { EDGE_m, MODULE_GAP_m, ROW_GAP_m } from '#model/panels/loop'
import { asideOf_m, FALL, drainsBack, fieldOf, THROUGH_m, type PlantFacts } from './facts.ts'

/** Size of roof or field on the plan, m. */
export interface Sizes {
  readonly across_m: number
  readonly down_m: number
}

/** Marks of the roof plan. */
export function keyOf(facts: PlantFacts): { mark: string; what: Text }[] {
  return [
    {
      mark: '━━━ U',
      what: words`supply: ${onRoof(facts) ? 'up through the roof' : 'from the store'} at U, ${short(THROUGH_m)} below the low edge and ${short(asideOf_m(facts), 2)} left of the field, to the lower left corner of each row by its valve B`,
    },
    {
      mark: '╍╍╍ D',
      what: words`return: from the upper right corner of each row, ${onRoof(facts) ? 'down through the roof' : 'to the store'} at D, ${short(THROUGH_m)} above the high edge and ${short(asideOf_m(facts), 2)} right of the field`,
    },
    {
      mark: '○',
      what: !facts.liquid
        ? 'high corner'
        : drainsBack(facts)
          ? 'high corner of the row: plug PL'
          : 'high corner: air vent',
    },
    { mark: '●', what: 'clamp on the edge profile, at each rail: four a module' },
    {
      mark: '╌□╌',
      what: words`rail on feet, two a row, ${short(facts.railPast_m)} past the modules at each end; feet: ${feetWords(facts)}`,
    },
  ]
}

const onRoof = ({ panelHeight_m, roomHeight_m }: PlantFacts): boolean => panelHeight_m >= roomHeight_m

function feetWords({ feetPerRail }: PlantFacts): Text {
  const kinds = [...new Set(feetPerRail)]
  return `${kinds.join(' or ')} a rail, the end ones near the ends`
}

/** What is said beside the roof plan. */
export function notesOf(facts: PlantFacts, roof: Sizes, field: Sizes): Text[] {
  const rise_m = facts.moduleLength_m * Math.sin((facts.tilt_deg * Math.PI) / 180)
  const notes: Text[] = [
    ...(Math.max(...facts.rows) > 1
      ? [
          words`Modules lie ${short(MODULE_GAP_m)} apart, where their headers meet in ${facts.liquid ? 'flat-faced unions, done up from above' : 'sleeves inside them'}.`,
        ]
      : []),
    words`High edge at the top; panels face ${figure(facts.azimuth_deg, 'deg')} clockwise from north (${compass(facts.azimuth_deg)}).${rise_m > 0 ? words` A module of ${figure(facts.moduleLength_m, 'span')} rises ${short(rise_m)} from its low to its high end.` : words``}`,
  ]
  if (facts.rows.length > 1)
    notes.push(
      words`${figure(ROW_GAP_m, 'span')} stay free between rows, for hands and unions. Rows are piped so that the first fed is the last drained: all ways are equally long.`,
    )
  if (facts.liquid)
    notes.push(
      words`Hang each row lower at its fed corner, so that its headers drain: ${short(FALL * fieldOf(facts).across_m, 2)} over ${figure(fieldOf(facts).across_m, 'span')} (1 : 50).`,
    )
  if (facts.roof === null)
    notes.push(
      words`Only the free area is given, not its shape: dashed is what the field needs with ${figure(EDGE_m, 'span')} free all round.`,
    )
  else if (isTight(roof, field))
    notes.push(
      words`Less than ${figure(EDGE_m, 'span')} stay free at an edge, where wind pulls hardest: fewer modules, or a frame checked for it.`,
    )
  return notes
}

const COMPASS = ['north', 'north-east', 'east', 'south-east', 'south', 'south-west', 'west', 'north-west']
const compass = (azimuth_deg: number): string => COMPASS[Math.round(azimuth_deg / 45) % 8]!

const isTight = (roof: Sizes, field: Sizes): boolean =>
  Math.min(roof.across_m - field.across_m, roof.down_m - field.down_m) / 2 < EDGE_m
