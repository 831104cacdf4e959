import { drainsBack } from '#model/handover/drawing'
import { factsOf } from './facts-of.ts'
import type { Plant } from './plant.ts'
import { figure, words, type Wording } from '#model/basis/words'

/** What keeps the plant at its numbers. Intervals without a figure of the scenario: common practice, no source. */
export function maintenanceLines(plant: Plant): Wording[] {
  const { coating, cover, plan } = plant.answer.scenario
  const { loopSpec, tank } = plant
  const drains = drainsBack(factsOf(plant))
  const lines: Wording[] = [
    coating.age_y > 0
      ? words`Wash the coating with soft water and a soft brush at the latest every ${figure(12 * coating.age_y, 'months')}: the sizing counts on it (solar reflectance falls ${figure(coating.soiling_1y, 'frac')} a year).`
      : words`The sizing is for a freshly washed coating: wash it each spring and after dust; every 0.01 of solar reflectance lost is about ${figure(9, 'Wm2')} at noon.`,
  ]
  if (cover.kind === 'film')
    lines.push(
      words`Change the film after ${figure(cover.life_months, 'months')} or as soon as it is cloudy, slack or torn.`,
    )
  if (loopSpec.fluid !== 'air')
    lines.push(
      words`Spring: clean the strainer, ${drains ? (tank === null ? 'see that the filter of DV is open' : 'see that AH is open') : 'let air out at the vents A'}, compare flow and pump power with the figures above.`,
    )
  if (loopSpec.fluid === 'glycol')
    lines.push(
      words`Every autumn: test frost point and inhibitor of the mix; change it when either is spent.`,
    )
  else if (loopSpec.fluid === 'water' && plan.freeze === 'drainBack')
    lines.push(words`Every autumn: stop the pump and see that the panel runs empty within minutes.`)
  else if (loopSpec.fluid === 'water')
    lines.push(
      words`Before the first frost: stop the pump, shut V1 and V2, open the vents A and D1, drain panel and outdoor pipes; leave A and D1 open.`,
    )
  lines.push(words`Every year and after each storm: anchors, brackets, roof seals, pipe insulation, leaks.`)
  lines.push(...roomFrost(plant))
  if (tank !== null)
    lines.push(
      words`Every month: the water line at rest, by its mark; top up by FH. Every year: look into the tank for slime and rust; drain it if it is idle.`,
    )
  const coil = factsOf(plant).roomUnit === 'fanCoil'
  lines.push(
    words`${coil ? 'Filter of the coil each month of use, drip tray and condensate pipe each spring; residual-current' : 'Residual-current'} device by its test button twice a year; sensors in ice water every second year (S1 by its hatch).`,
  )
  return lines
}

/** Rooms that come this near to freezing have their pipes drained, °C (common practice, no source). */
const ROOM_FROST_C = 3

/** Whether the unheated room may freeze what is in it. */
function roomFrost({ answer, tank, loopSpec }: Plant): Wording[] {
  if (tank === null || loopSpec.fluid === 'glycol') return []
  const coldest = figure(
    answer.year.air_C.reduce((least, air_C) => Math.min(least, air_C), Infinity),
    'C',
  )
  return coldest.value < ROOM_FROST_C
    ? [
        words`Before frost (the room, unheated, was down to ${coldest} in the simulated year): HS and H2 off, V3 and V4 shut, open AV and D3, blow out the unit; drain P1 by D1, and the tank by D2 unless it is kept from freezing. Refill as in “Start it up”.`,
      ]
    : [
        words`The room, unheated, was never under ${coldest} in the simulated year; where it may be under ${figure(ROOM_FROST_C, 'C')}, drain its circuit by D3 with V3 and V4 shut and AV open.`,
      ]
}
