import { AS_DESIGNED } from './departure.ts'
import type { AsBuiltInputs } from './inputs-type.ts'
import { runningHours } from './log.ts'
import { predictedFall_K } from './plant.ts'
import { stop } from '#model/basis/words'

/** At night, W/m² on the plane. */
const DARK_WM2 = 5
/** Fewest dark hours the question may rest on. */
const FEWEST_HOURS = 8
/** The columns exchanged must leave less than this share of what they leave as they are: common practice, no source. */
const CLEARLY = 0.5

/**
 * Refuses a log whose inlet and outlet are exchanged: at night, with fluid warmer than the plate at rest, the outlet
 * is the cooler of the two whatever ails the panel.
 * @throws ProblemError
 */
export function refuseSwapped(inputs: AsBuiltInputs): void {
  const hours = runningHours(inputs.log)
  const measured = hours.map((hour) => inputs.log.panelIn_C[hour]! - inputs.log.panelOut_C[hour]!)
  const predicted = predictedFall_K(inputs, AS_DESIGNED)
  const dark = hours.flatMap((hour, row) => (inputs.plane.total_Wm2[hour]! < DARK_WM2 ? [row] : []))
  if (dark.length < FEWEST_HOURS) return
  const squares = (sign: number) =>
    dark.reduce((sum, i) => sum + (sign * measured[i]! - predicted[i]!) ** 2, 0)
  if (Math.sqrt(squares(-1)) > CLEARLY * Math.sqrt(squares(1))) return
  const mean = (of: ArrayLike<number>) => dark.reduce((sum, i) => sum + of[i]!, 0) / dark.length
  throw stop(
    'as-built-swapped',
    `In and out seem exchanged: at night the outlet is ${(-mean(measured)).toFixed(1)} K warmer than the inlet, where ${mean(predicted).toFixed(1)} K cooler was predicted.`,
    'Exchange the headings of the two panel columns, or the sensors if they sit on the wrong pipes, and open the file again.',
  )
}
