import type { LiveAnswer } from '#live/messages.ts'
import { count, figure, words, type Wording } from '#model/basis/words'
import { FIELDS } from '#model/design/scenario'
import { freeArea_m2 } from '#model/design/assembly'
import { drawsMet, type UncertaintyResult } from '#model/design/sizing'

/** One thing that could make the plant wrong: its name, what is so, and whether it needs a look. */
export interface PlantCheck {
  readonly name: string
  readonly line: Wording
  readonly look: boolean
}

/** So large a share of the years tried has to be met for an area to pass without a remark. */
const SURE_FRAC = 0.75

/** The most that published field tests by themselves give. */
const TESTED_frac = 0.83

/** What to look at before going on from the panel step, in the order of what it costs to be wrong. */
export function plantChecks(answer: LiveAnswer, range: UncertaintyResult | null): readonly PlantCheck[] {
  return [
    ...sure(answer, range),
    roof(answer),
    paint(answer),
    field(answer),
    ...frost(answer),
    ...dew(answer),
  ]
}

function sure({ area_m2 }: LiveAnswer, range: UncertaintyResult | null): PlantCheck[] {
  if (range === null) return []
  const met = drawsMet(range, area_m2)
  return [
    {
      name: 'Is it enough?',
      line: words`In ${count(met)} of ${count(range.draws)} possible years, with what is uncertain set otherwise in each. The next step shows them; for more certainty build more area or allow more hours.`,
      look: met < SURE_FRAC * range.draws,
    },
  ]
}

function roof({ scenario, area_m2 }: LiveAnswer): PlantCheck {
  const free_m2 = freeArea_m2(scenario)
  const given = scenario.panel.freeArea_m2 > 0
  return {
    name: 'Roof',
    line: given
      ? words`${figure(area_m2, 'm2')} of the ${figure(free_m2, 'm2')} that you say are free.`
      : words`Nobody has said what is free: the whole roof of the room, ${figure(free_m2, 'm2')}, is taken to be, under an open sky. Give what is left without edges, chimneys, shade and ways to walk, and the horizon under “Place”.`,
    look: !given || area_m2 > free_m2 + 1e-9,
  }
}

function paint({ scenario: { coating } }: LiveAnswer): PlantCheck {
  const { solarReflectance_frac, windowEmittance_frac } = FIELDS.coating
  const usual =
    coating.solarReflectance_frac === solarReflectance_frac.default &&
    coating.windowEmittance_frac === windowEmittance_frac.default
  const numbers = words`${figure(coating.solarReflectance_frac, 'frac', 2)} of the sun sent back, emittance ${figure(coating.windowEmittance_frac, 'frac', 2)}`
  return {
    name: 'Paint',
    line: usual
      ? words`${numbers}: the numbers this page begins with, not those of your paint. Common white paint sends back less, which asks for more area: measure yours on the bench and put it in below.`
      : words`${numbers}, as you say. It counts as fresh; years without washing are in the range.`,
    look: usual,
  }
}

function field({ scenario: { panel } }: LiveAnswer): PlantCheck {
  const usual = panel.fieldFactor_frac
  return {
    name: 'Field factor',
    line: words`A built panel is taken to give off ${figure(usual, 'frac', 2)} of what an ideal one does. Published field tests by themselves give 0.77 to 0.83: with 0.8 it takes about ${count(Math.max(0, Math.round(100 * (usual / 0.8 - 1))))} % more area.`,
    look: usual > TESTED_frac,
  }
}

function frost({ scenario: { loop, plan }, year }: LiveAnswer): PlantCheck[] {
  if (loop.fluid === 'air' || !(year.freezeRisk_h > 0)) return []
  return [
    {
      name: 'Frost',
      line: words`The plate is below its frost limit of ${figure(plan.freezeLimit_C, 'C')} for ${count(Math.round(year.freezeRisk_h))} ${Math.round(year.freezeRisk_h) === 1 ? 'hour' : 'hours'} of the year: ${loop.fluid === 'glycol' ? 'the antifreeze' : 'draining'} has to work every time, and a pipe that sags holds water.`,
      look: loop.fluid !== 'glycol',
    },
  ]
}

function dew({ year }: LiveAnswer): PlantCheck[] {
  return [
    year.dewHeld_h > 0
      ? {
          name: 'Dew indoors',
          line: words`For ${count(Math.round(year.dewHeld_h))} ${Math.round(year.dewHeld_h) === 1 ? 'hour' : 'hours'} cooling is held back so that nothing drips: without a working humidity sensor there is water on pipes and ceiling.`,
          look: true,
        }
      : {
          name: 'Dew indoors',
          line: words`In no hour of this year does cooling have to be held back for it.`,
          look: false,
        },
  ]
}
