import { GRAVITY_MS2 } from '#model/outdoors/air'
import { count, figure, words, type Wording } from '#model/basis/words'
import { flowFigure, headFigure, SMALLEST_MOVER_W } from './figures.ts'
import { massLoop } from './mass-loop.ts'
import { plantOf, type Plant, type SheetAnswer } from './plant.ts'
import { startLift_m } from './start-lift.ts'

/** Greatest head of a pump over the lift that it fills panels against, m (common practice, no source). */
export const START_SPARE_m = 1

/** A pump’s head at no flow is at least so much of that at its duty (common practice, no source). */
const NO_FLOW = 1.1

/** What the pump of a loop that drains back has to do before its return runs full. */
export interface StartDuty {
  readonly lift_m: number
  /** Head at the flow while the return does not carry its own weight, Pa. */
  readonly head_Pa: number
  /** Least head at no flow, Pa. */
  readonly greatest_Pa: number
  /** Electric power while the return does not run full, W. */
  readonly power_W: number
  /** Water speed in the return over the least at which a falling pipe fills itself. */
  readonly fills_frac: number
}

/** null where the loop stays full, and for air. */
export function startDuty(plant: Plant): StartDuty | null {
  const lift_m = startLift_m(plant)
  if (lift_m === null) return null
  const { answer, fluid, loopSpec, flow_m3s } = plant
  const { loop } = answer
  const column_Pa = (height_m: number): number => fluid.density_kgm3 * GRAVITY_MS2 * height_m
  const head_Pa = builtDrop_Pa(plant) - loop.liftLoss_Pa + column_Pa(lift_m)
  return {
    lift_m,
    head_Pa,
    greatest_Pa: Math.max(column_Pa(lift_m + START_SPARE_m), NO_FLOW * head_Pa),
    power_W: (flow_m3s * head_Pa) / loopSpec.pumpEfficiency_frac,
    fills_frac: loop.pipeVelocity_ms / fillingSpeed_ms(loop.pipeInnerDiameter_m),
  }
}

/** What the loop loses at its flow with what it runs through in slab or ceiling, which the year is counted without, Pa. */
export function builtDrop_Pa(plant: Plant): number {
  return plant.answer.loop.pressureDrop_Pa + (massLoop(plant)?.loss_Pa ?? 0)
}

/** Electric power of the same, W. */
export function builtPower_W(plant: Plant): number {
  const more_W = (plant.flow_m3s * (massLoop(plant)?.loss_Pa ?? 0)) / plant.loopSpec.pumpEfficiency_frac
  return plant.answer.loop.pumpPower_W + more_W
}

/** Speed at which a pipe that falls runs full by itself: √(g d), Froude number 1, m/s (a rule of gravity drains, from memory). */
export function fillingSpeed_ms(bore_m: number): number {
  return Math.sqrt(GRAVITY_MS2 * bore_m)
}

/** Leak test over the highest working pressure (common practice, no source). */
const TEST_FACTOR = 1.5

/** Pressure of the leak test at the low point, Pa. */
export function testPressure_Pa(plant: Plant): number {
  const { answer, fluid } = plant
  const working_Pa = fluid.density_kgm3 * GRAVITY_MS2 * answer.scenario.panel.height_m + builtDrop_Pa(plant)
  return TEST_FACTOR * working_Pa
}

/** What to buy as pump or fan. */
export function moverWords(plant: Plant): Wording {
  const start = startDuty(plant)
  const power_W = builtPower_W(plant)
  const duty = words`${plant.names.mover} (${plant.names.mover === 'pump' ? 'P1' : 'FN'}): ${flowFigure(plant)} against ${headFigure(plant, builtDrop_Pa(plant))}${inMass(plant)}, about ${figure(power_W, 'W', 2)}${plant.names.mover === 'pump' ? ', with a pair of unions' : ''}`
  if (start !== null)
    return words`pump (P1), centrifugal, for cold water, with a pair of unions: at least ${flowFigure(plant)} against ${headFigure(plant, start.head_Pa)}, as it must while the return does not run full (about ${figure(start.power_W, 'W', 2)}), and ${headFigure(plant, start.greatest_Pa)} at no flow, to fill drained panels each time it starts; V2 throttles it to the flow. Where the return runs full the loop itself asks for only ${headFigure(plant, builtDrop_Pa(plant))}${inMass(plant)}: a pump whose speed is then turned down comes towards ${figure(power_W, 'W', 2)}, one that is only switched does not`
  if (power_W >= SMALLEST_MOVER_W) return duty
  return words`${duty}: the smallest that is sold will do, throttled to the flow; it will draw a few watts`
}

/** How much of it is lost in slab or ceiling. */
function inMass(plant: Plant): Wording {
  const loss_Pa = massLoop(plant)?.loss_Pa ?? 0
  return loss_Pa > 0 ? words` (${headFigure(plant, loss_Pa)} of it in ${massName(plant)})` : words``
}

/** Where the circuits of a loop without a tank are. */
export const massName = ({ answer, names }: Plant): string =>
  `the ${names.pipe}s of the ${answer.scenario.store.kind === 'slab' || answer.scenario.store.deliveryKind === 'floorPipes' ? 'slab' : 'ceiling'}`

/** The same of an answer with panels, for a page that has no sheet. */
export function moverToBuy(answer: SheetAnswer): Wording {
  return moverWords(plantOf(answer))
}

/** Electric power against the lift, W: of a pump that is only switched, all the time. null where the loop stays full, and for air. */
function againstLift_W(plant: Plant): number | null {
  const start = startDuty(plant)
  return start === null ? null : Math.max(start.power_W, builtPower_W(plant))
}

/** The same of an answer with panels, for a page that has no sheet. */
export function liftPower(answer: SheetAnswer): Wording | null {
  const power_W = againstLift_W(plantOf(answer))
  return power_W === null ? null : [figure(power_W, 'W', 2)]
}

/** Electric power of pump or fan as it is bought, for a headline: of one that lifts, what it draws switched on and off. */
export function powerFigures(plant: Plant): Wording {
  const lift_W = againstLift_W(plant)
  const full = figure(plant.answer.loop.pumpPower_W, 'W', 2)
  return lift_W === null
    ? words`${full} at design flow`
    : words`${figure(lift_W, 'W', 2)}, only switched on and off`
}

/** Whether the return fills, and what it costs where it does not; nothing for a loop that stays full. */
export function fillingWords(plant: Plant): Wording[] {
  return [...massWords(plant), ...returnWords(plant)]
}

/** What the year's electricity leaves out in slab or ceiling. */
function massWords(plant: Plant): Wording[] {
  const mass = massLoop(plant)
  if (mass === null) return []
  const more_W = builtPower_W(plant) - plant.answer.loop.pumpPower_W
  const hours_h = plant.answer.months.reduce((sum, month) => sum + month.pumpRun_h, 0)
  return [
    words`${massName(plant).replace('the', 'The')} lose ${headFigure(plant, mass.loss_Pa)} more than the loop is counted with: ${figure(more_W, 'W', 2)}, or ${figure(more_W * hours_h * 3600, 'J', 2)} a year. What is to be bought has it in it.`,
  ]
}

function returnWords(plant: Plant): Wording[] {
  const start = startDuty(plant)
  if (start === null) return []
  const { loop, months } = plant.answer
  const hours_h = months.reduce((sum, month) => sum + month.pumpRun_h, 0)
  const more_J = Math.max(0, start.power_W - loop.pumpPower_W) * hours_h * 3600
  if (loop.liftLoss_Pa > 0)
    return [words`The pump is reckoned to hold the lift of ${figure(start.lift_m, 'm')} all the time.`]
  return [
    words`The pump is reckoned with a return that runs full and so carries its own weight. A falling pipe of this bore does so from about ${figure(fillingSpeed_ms(loop.pipeInnerDiameter_m), 'flowSpeed', 2)} (√(g d)); here the water runs at ${figure(loop.pipeVelocity_ms, 'flowSpeed', 2)}${start.fills_frac < 1 ? ', so expect that it does not' : ''}. If it does not, or the pump is only switched and throttled by V2, it draws ${figure(start.power_W, 'W', 2)} all the time in place of the ${figure(loop.pumpPower_W, 'W', 2)} that the year’s electricity is counted with: ${figure(more_J, 'J', 2)} more in the ${count(Math.round(hours_h))} h of the year. Cooling is the same.`,
  ]
}
