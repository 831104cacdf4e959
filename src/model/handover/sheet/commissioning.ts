import { GRAVITY_MS2 } from '#model/outdoors/air'
import type { NightTest } from './expected.ts'
import type { Span } from './span.ts'
import { flowFigure, headFigure, SMALLEST_MOVER_W } from './parts.ts'
import { rowsOf, type Plant } from './plant.ts'
import { count, figure, words, type Wording } from '#model/basis/words'

/** A thing to do before the plant is trusted, with what the measurement should show. */
export interface Step {
  readonly what: string
  readonly expect: Wording
}

/** Flow, and pressure and power, may be off by this much (common practice, no source). */
const FLOW_TOLERANCE = '± 10 %'
const PUMP_TOLERANCE = '± 25 %'
/** Leak test over the highest working pressure (common practice, no source). */
const TEST_FACTOR = 1.5

export function commissioningSteps(plant: Plant, night: NightTest): Step[] {
  return [...tightness(plant), ...flows(plant), ...controls(plant), ...nights(plant, night)]
}

function tightness(plant: Plant): Step[] {
  const { answer, fluid, loopSpec } = plant
  if (loopSpec.fluid === 'air')
    return [{ what: 'Seal the ducts', expect: words`no draught at any joint with the fan at full speed` }]
  const working_Pa =
    fluid.density_kgm3 * GRAVITY_MS2 * answer.scenario.panel.height_m + answer.loop.pressureDrop_Pa
  return [
    {
      what: 'Fill slowly from the low point, vent every high point, then leak-test',
      expect: words`${headFigure(plant, TEST_FACTOR * working_Pa)} at the low point for 30 minutes without a fall (1.5 times the highest working pressure; keep within what plate and pipe allow)`,
    },
  ]
}

function flows(plant: Plant): Step[] {
  const { loop } = plant.answer
  const { mover } = plant.names
  const rows = rowsOf(plant)
  const steps: Step[] = [
    { what: 'Total flow', expect: words`${flowFigure(plant)} ${FLOW_TOLERANCE}` },
    {
      what: `Pressure across the ${mover}`,
      expect: words`${headFigure(plant, loop.pressureDrop_Pa)} ${PUMP_TOLERANCE}`,
    },
    { what: `Power of the ${mover}`, expect: powerWords(plant) },
  ]
  if (rows.length > 1)
    steps.splice(1, 0, {
      what: 'Flow of each row, by its valve',
      expect: words`${flowFigure(plant, rows[0]! / plant.layout.modules)} for ${count(rows[0]!)} modules, ${FLOW_TOLERANCE}; others by their number of modules`,
    })
  return steps
}

function powerWords({ answer, names }: Plant): Wording {
  const power = figure(answer.loop.pumpPower_W, 'W', 2)
  if (answer.loop.pumpPower_W >= SMALLEST_MOVER_W) return words`${power} ${PUMP_TOLERANCE}`
  return words`the loop asks for ${power}; a ${names.mover} this small draws what its plate says, at its lowest step`
}

function controls({ answer, names }: Plant): Step[] {
  const { startDifference_K, stopDifference_K } = answer.scenario.plan
  return [
    {
      what: 'Sensors together in a bucket of crushed ice and water',
      expect: words`all read ${figure(0, 'C')} within ${figure(0.3, 'K')}, and each other within ${figure(0.2, 'K')}`,
    },
    {
      what: 'Cool S1, then warm it',
      expect: words`the ${names.mover} starts at ${figure(startDifference_K, 'K')} under S2; running, it stops once S4 is less than ${figure(stopDifference_K, 'K')} under S3`,
    },
  ]
}

function nights(plant: Plant, night: NightTest): Step[] {
  const { answer, names } = plant
  const steps: Step[] = []
  if (night.restingBelowAir_K)
    steps.push({
      what: `A clear night, ${names.mover} off: air minus plate`,
      expect: words`${spanWords(night.restingBelowAir_K, 'K')} (clear night hours of the year)`,
    })
  if (night.drop_K && night.heat_W)
    steps.push({
      what: 'A running night, steady for an hour: supply minus return, and heat given off',
      expect: words`${spanWords(night.drop_K, 'K')}; ${spanWords(night.heat_W, 'W')} (eight running hours in ten)`,
    })
  if (plant.tank !== null)
    steps.push({
      what: 'Tank in the hottest week',
      expect: words`between ${figure(night.store_C.low, 'C')} and ${figure(night.store_C.high, 'C')}`,
    })
  steps.push({
    what: 'Log two weeks, hourly',
    expect: words`outdoors, room, S2, S3, S4, flow and ${names.mover} power: lay them over the prediction for the weather that was; a room more than ${figure(1, 'K')} off for days wants a reason${answer.year.dewHeld_h > 0 ? '; watch the cooled surface for damp' : ''}`,
  })
  return steps
}

function spanWords(span: Span, unit: 'K' | 'W'): Wording {
  return words`${figure(span.low, unit, 2)} to ${figure(span.high, unit, 2)}, middle ${figure(span.middle, unit, 2)}`
}
