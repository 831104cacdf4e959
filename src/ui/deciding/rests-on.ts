import { count, figure, words, type Wording } from '#model/basis/words'
import { wayPrices } from '#model/design/cost'
import { MEASURE_SIZES, FIELDS, type Scenario } from '#model/design/scenario'
import { fanOffset_K } from '#model/design/target'
import { airConditionerOf, coolerOf } from '#studies/decide-machines.ts'
import type { Decision } from '#studies/decide.ts'
import { turnOver } from '#studies/decide-turn.ts'
import { listed, targetLine } from '#ui/deciding/way-words.ts'

/** What the order of the ways rests on: a name and what is taken for granted under it, with what would change it. */
export interface RestsOn {
  readonly name: string
  readonly line: Wording
}

export function restsOn(decision: Decision, scenario: Scenario, weatherBasis: string): readonly RestsOn[] {
  const { ways, combinations } = decision
  const kinds = new Set(combinations.map(({ plant }) => plant))
  const fan = combinations.some(({ measures }) => measures.includes('ceilingFan'))
  const machines = kinds.has('direct') || kinds.has('indirect') || kinds.has('airConditioner')
  return [
    ...orderLine(decision, scenario),
    { name: 'Prices', line: priceLine(scenario, decision.years_y) },
    { name: 'Hours counted', line: targetLine(scenario.target) },
    ...(fan ? [{ name: 'Ceiling or wall fan', line: fanLine() }] : []),
    ...(machines ? [{ name: 'Machines', line: machineLine(scenario) }] : []),
    {
      name: 'Weather',
      line: words`One year: ${weatherBasis} Hotter and milder years are in how sure each way is, not in its order.`,
    },
    {
      name: 'Not counted',
      line: words`Interest, subsidies, permits, noise, and work that you do yourself. ${ways.some(({ combination }) => combination.onRoof) ? 'Work on the roof is in the price only as far as you put it there.' : ''}`,
    },
  ]
}

/** How far the first way's lead reaches. */
function orderLine(decision: Decision, { prices }: Scenario): readonly RestsOn[] {
  const first = decision.ways[0]?.combination
  const turn = turnOver(decision.combinations, first, prices)
  if (turn === null || first === undefined) return []
  const rival = listed(turn.rival.names) || 'Nothing at all'
  const energy =
    turn.energy_perkWh === null
      ? ''
      : words` With electricity at ${figure(turn.energy_perkWh, 'count', 2)} per kWh both cost the same.`
  return [
    {
      name: 'The order',
      line: words`Of the ways simulated to the end that meet the target, the next is: ${rival}, for ${count(Math.round(turn.gap))} more over the years counted (${count(Math.round(100 * turn.gap_frac))} %). Ways that could not come first were not simulated to the end, so one of those may be closer still.${energy}`,
    },
  ]
}

function priceLine({ prices }: Scenario, years_y: number): Wording {
  const names = Object.keys(FIELDS.prices) as (keyof typeof FIELDS.prices)[]
  const own = names.filter((name) => prices[name] !== FIELDS.prices[name].default).length
  const { panel_perm2, store_perm3, energy_perkWh, upkeep_frac } = wayPrices(prices)
  const whose =
    own === 0 ? 'None is yours: all are invented' : `${own} of ${names.length} are yours, the others invented`
  return words`${whose}. Panels ${figure(panel_perm2, 'count')} per m², tank ${figure(store_perm3, 'count')} per m³, electricity ${figure(energy_perkWh, 'count')} per kWh, upkeep of what runs ${figure(100 * upkeep_frac, 'count', 2)} % of its price a year, over ${count(years_y)} years. Put in yours above and look again: they decide the order.`
}

function fanLine(): Wording {
  const speed_ms = MEASURE_SIZES.ceilingFan_ms
  return words`Cools nothing. Air of ${figure(speed_ms, 'ms', 2)} at people lets the limit be ${figure(fanOffset_K(speed_ms), 'K', 2)} higher, above 25 °C and fading to nothing near 35 °C; counted in every hour that counts. For goods, for an empty room or away from under the fan it is worth nothing.`
}

function machineLine(scenario: Scenario): Wording {
  const direct = coolerOf(scenario, 'direct')
  const cool = airConditionerOf(scenario)
  return words`Sized by rule of thumb (common practice, no source): evaporative coolers ${figure(direct.flow_m3h / 3600, 'airFlow')} of air, ${figure(100 * direct.effectiveness_frac, 'count', 2)} % effective direct and ${figure(100 * coolerOf(scenario, 'indirect').effectiveness_frac, 'count', 2)} % indirect; air conditioner ${figure(cool.rated_W, 'W', 2)} of sensible cooling (sold as about ${figure(cool.rated_W / cool.sensible_frac, 'W', 2)} in all; priced here by the sensible) with ${figure(cool.ratedCop_frac, 'count', 2)} W of cooling for each W of electricity. A smaller one costs less and may miss the target.`
}
