import { describedRoom, FIELDS, fieldAt, SPREADS, type Scenario } from '#model/design/scenario'
import { drawnHow, type UncertaintyResult } from '#model/design/sizing'
import type { Plant } from './plant.ts'
import { fillingWords } from './pump-duty.ts'
import { figure, words, type Wording } from '#model/basis/words'
import { isUnit } from '#model/basis/units'

/** What the numbers lean on: those a builder can check or change first. */
export function assumptionLines(plant: Plant, range: UncertaintyResult | null): Wording[] {
  return [...siteAssumptions(plant), ...rangeAssumptions(plant, range), ...plantAssumptions(plant)]
}

/** Between what the field factor is drawn for the ranges. */
function drawnFactor(): string {
  const between = SPREADS.find(({ field }) => field === 'panel.fieldFactor_frac')?.between
  return between === undefined ? '' : `, drawn from ${between[0]} to ${between[1]} in the ranges`
}

function siteAssumptions({ answer }: Plant): Wording[] {
  const { room, sky, site, panel } = answer.simulated
  const lines: Wording[] = [
    words`Sky: ${FIELDS.sky.model.optionLabels[sky.model]}, correction ${figure(sky.deficitFactor_frac, 'frac')}; horizon ${figure(site.horizon_deg, 'deg')}; ${FIELDS.site.terrain.optionLabels[site.terrain].toLowerCase()}. Field factor, the heat of a built panel over that of an ideal one: ${figure(panel.fieldFactor_frac, 'frac')}${drawnFactor()}; published field tests by themselves give 0.77 to 0.83.`,
    roomAssumption(answer.simulated),
  ]
  if (room.nightVent) lines.push(words`Windows are opened on nights when outdoors is cooler.`)
  return lines
}

/** The room that the numbers are for. */
export function roomAssumption({ room }: Scenario): Wording {
  const described = describedRoom(room)
  return words`Room ${figure(room.length_m, 'span')} × ${figure(room.width_m, 'span')} × ${figure(room.height_m, 'span')}: roof ${figure(described.roofU_Wm2K, 'Wm2K')} and ${figure(described.roofMass_kgm2, 'kgm2')}, walls ${figure(described.wallU_Wm2K, 'Wm2K')} and ${figure(described.wallMass_kgm2, 'kgm2')}, ${figure(room.airChange_1h, 'count')} air changes an hour, ${figure(mean(room.gains_W), 'heat')} inside on average. Measure the room before building; the step “Cooling” says what shade, paint or insulation would bring.`
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length
}

/** How many drivers are named. */
const NAMED = 3

function rangeAssumptions({ answer }: Plant, range: UncertaintyResult | null): Wording[] {
  if (range === null) return []
  const most_m2 = figure(answer.scenario.target.maxArea_m2, 'm2')
  const high = range.high_m2 === null ? words`more than ${most_m2}` : words`${figure(range.high_m2, 'm2', 2)}`
  const area =
    range.low_m2 === null
      ? words`In nine of ten draws (each a year tried with the uncertain inputs at other values between their ends) no area up to ${most_m2} meets the target.`
      : words`In eight of ten draws (each a year tried with the uncertain inputs at other values between their ends) the area that meets the target lies between ${figure(range.low_m2, 'm2', 2)} and ${high}.`
  const drivers = range.drivers
    .slice(0, NAMED)
    .map(
      ({ field, label, low, high }) =>
        words`${label.toLowerCase()} (${valueOf(field, low)} to ${valueOf(field, high)})`,
    )
  const named = drivers.flatMap((driver, i) => (i === 0 ? driver : [', ', ...driver]))
  return [words`${area} ${drawnHow(range)} What moves it most: ${named}.`]
}

function valueOf(path: string, value: number): Wording {
  const field = fieldAt(path)?.field
  const unit = field?.type === 'number' && isUnit(field.unit) ? field.unit : 'count'
  return [figure(value, unit)]
}

function plantAssumptions(plant: Plant): Wording[] {
  const { loopSpec, answer, names } = plant
  const { store } = answer.scenario
  const lines: Wording[] = [
    words`${names.mover === 'pump' ? 'Pump' : 'Fan'} efficiency ${figure(loopSpec.pumpEfficiency_frac, 'frac')}; ${figure(store.delivery_WK, 'WK')} between ${plant.tank === null ? `${loopSpec.fluid === 'air' ? 'air' : 'fluid'} and mass` : words`store and room, ${figure(answer.store.deliveryPower_W, 'W')} for that at full flow, less in proportion below it`}; fittings add 40 % to the pipes’ loss; rows fed at one corner, drained at the opposite one; passages within ± ${figure(100 * answer.loop.flowSpread_frac, 'count', 2)} % of their mean flow.`,
  ]
  lines.push(...fillingWords(plant))
  if (loopSpec.fluid === 'glycol')
    lines.push(words`No heat exchanger between loop and tank is reckoned with: one costs some degrees.`)
  return lines
}
