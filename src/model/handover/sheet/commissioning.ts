import { tankLevels } from './tank-levels.ts'
import type { NightTest } from './expected.ts'
import type { Span } from './span.ts'
import { flowFigure, headFigure, SMALLEST_MOVER_W } from './figures.ts'
import { builtDrop_Pa, builtPower_W, startDuty, testPressure_Pa } from './pump-duty.ts'
import { rowsOf, type Plant } from './plant.ts'
import { quantitiesOf, vesselOf } from './quantities.ts'
import { REST_min } from './rest.ts'
import type { Step } from './step.ts'
import { roomSteps } from './room-steps.ts'
import { count, figure, words, type Wording } from '#model/basis/words'

/** Flow, and pressure and power, may be off by this much (common practice, no source). */
const FLOW_TOLERANCE = '± 10 %'
const PUMP_TOLERANCE = '± 25 %'

export function commissioningSteps(plant: Plant, night: NightTest): Step[] {
  return [
    ...tightness(plant),
    ...byHand(plant),
    ...waterSteps(plant),
    ...flows(plant),
    ...roomSteps(plant),
    ...controls(plant),
    ...nights(plant, night),
  ]
}

/** By day, or out of season, the table of states keeps pump or fan off. */
function byHand({ answer, names, loopSpec }: Plant): Step[] {
  const frost =
    names.mover === 'fan' || loopSpec.fluid === 'glycol'
      ? words``
      : words`; not while S1 is under ${figure(answer.scenario.plan.freezeLimit_C, 'C')}`
  return [
    {
      what: `For all steps up to “Power of the ${names.mover}”: the hand switch HS on hand where the ${names.mover} is to run, else on off`,
      expect: words`the ${names.mover} does as HS says, whatever the table of states says; stay beside it${frost}`,
    },
  ]
}

function tightness(plant: Plant): Step[] {
  const { loopSpec } = plant
  if (loopSpec.fluid === 'air')
    return [
      {
        what: 'Seal the ducts',
        expect: words`no draught at any joint with the fan at full speed (HS on hand)`,
      },
    ]
  return [
    {
      what:
        startDuty(plant) === null
          ? 'Plug the loop, fill it slowly at D1 with the test pump, from an open can, with the vents A open; shut them, then leak-test'
          : `Shut V1, open V2, B and the plugs PL, plug the lower end of the return${plant.tank === null ? '' : ' and AH'}, fill the loop slowly at D1 with the test pump, from an open can, until water without air comes out of every PL; shut them, leak-test; open PL and the return’s end, let the water out at D1, shut D1 and PL, open V1${plant.tank === null ? '' : ' and AH'}`,
      expect: words`${figure(testPressure_Pa(plant), 'gauge')} at the low point for 30 minutes without a fall (1.5 times the highest working pressure; keep within what plate and pipe allow)`,
    },
  ]
}

/** Filling for good, and for a loop that drains back the proof that it does. */
function waterSteps(plant: Plant): Step[] {
  const { tank } = plant
  const levels = tank === null ? null : tankLevels(plant, tank)
  const drains = startDuty(plant) !== null
  if (levels !== null && !drains) return fullLoopSteps(levels.water_m)
  const fill: Step[] =
    levels === null
      ? vesselStep(plant)
      : [
          {
            what: 'Fill the tank by FH, panels empty',
            expect: words`water line ${figure(levels.water_m, 'span')} above the bottom; with the pump running it falls to ${figure(levels.running_m, 'span')}, and stays over the outlet at ${figure(levels.outlet_m, 'span')}`,
          },
        ]
  return drains
    ? [
        ...fill,
        {
          what: 'Let the pump run ten minutes, then stop it',
          expect: words`the panels run empty within minutes, air is heard at ${tank === null ? 'the vessel DV' : 'the air hole AH'}, the level comes back to where it was, and opening D1 after that brings no water from above`,
        },
      ]
    : fill
}

/** The vessel that panels run empty into. */
function vesselStep(plant: Plant): Step[] {
  const { content_m3, filled_m3, left_m3 } = vesselOf(quantitiesOf(plant))
  return [
    {
      what: 'Fill by DV with the pump off and the panels empty, and let the pipes below it fill',
      expect: words`${figure(filled_m3, 'content', 2)} of the ${figure(content_m3, 'content', 2)} in DV: mark that line; with the pump running ${figure(left_m3, 'content', 2)} are left in it`,
    },
  ]
}

/** A loop over an open tank that stays full: water is pumped in from below, as P1 need not reach the panels. */
function fullLoopSteps(water_m: number): Step[] {
  return [
    { what: 'Fill the tank by FH', expect: words`water line ${figure(water_m, 'span')} above the bottom` },
    {
      what: 'Shut V1 and V2, open the vents A, and fill the loop at D1 with the filling pump; shut A and D1, then open V1 and V2',
      expect: words`water without air at every vent and out of the return, and the tank’s water line where it was once O1 has run off what came over; with P1 running and at rest no air is heard and the line does not move. Air at the top: shut V1 and V2 and fill again`,
    },
  ]
}

function flows(plant: Plant): Step[] {
  const { mover } = plant.names
  const rows = rowsOf(plant)
  const steps: Step[] = [
    { what: 'Total flow', expect: words`${flowFigure(plant)} ${FLOW_TOLERANCE}` },
    {
      what: mover === 'fan' ? 'Pressure across the fan' : 'Pressure round the loop, G2 less G1',
      expect: acrossMover(plant),
    },
    { what: `Power of the ${mover}`, expect: powerWords(plant) },
  ]
  if (rows.length > 1)
    steps.splice(1, 0, {
      what: `Flow of each row. Begin with all valves B wide open and V2 set so that FM reads the total. Read the ${mover === 'fan' ? 'probe at each row' : 'scale of each B'}; leave the B of the row that is shortest of its share wide open and close the others until each has its own; set the total again ${mover === 'fan' ? 'at FM' : 'by V2'}, and go round until nothing moves`,
      expect: words`${rowFlows(plant, rows)}, ${FLOW_TOLERANCE}; together what FM reads. Mark the places of B`,
    })
  return steps
}

/** The flow of a row by its number of modules. */
function rowFlows(plant: Plant, rows: readonly number[]): Wording {
  return [...new Set(rows)].flatMap(
    (modules, i) =>
      words`${i === 0 ? '' : ', '}${flowFigure(plant, modules / plant.layout.modules)} for a row of ${count(modules)} ${modules === 1 ? 'module' : 'modules'}`,
  )
}

/** Where panels drain: high until the return runs full. */
function acrossMover(plant: Plant): Wording {
  const { loop } = plant.answer
  const settled = words`${headFigure(plant, builtDrop_Pa(plant))} ${PUMP_TOLERANCE}`
  const start = startDuty(plant)
  if (start === null || loop.liftLoss_Pa > 0) return settled
  const filled = words`${settled} once the return runs full; near ${headFigure(plant, start.head_Pa)} as long as it does not`
  return start.fills_frac < 1
    ? words`${headFigure(plant, start.head_Pa)} ${PUMP_TOLERANCE}, as the return is not expected to run full; ${settled} if it does`
    : words`${filled}. The cooling is the same`
}

function powerWords(plant: Plant): Wording {
  const { answer, names } = plant
  const start = startDuty(plant)
  if (start !== null && answer.loop.liftLoss_Pa === 0)
    return words`about ${figure(start.power_W, 'W', 2)} or what its plate says, if that is more: V2 throttles, which saves nothing. Only a pump turned down after the return has filled comes towards the ${figure(builtPower_W(plant), 'W', 2)} that the loop then asks for`
  const power = figure(builtPower_W(plant), 'W', 2)
  if (builtPower_W(plant) >= SMALLEST_MOVER_W) return words`${power} ${PUMP_TOLERANCE}`
  return words`the loop asks for ${power}; a ${names.mover} this small draws what its plate says, at its lowest step`
}

function controls({ answer, names }: Plant): Step[] {
  const { startDifference_K, stopDifference_K } = answer.scenario.plan
  return [
    {
      what: 'HS back to auto, and locked',
      expect: words`the ${names.mover} does what the table of states says: by day, or out of season, it stays off`,
    },
    {
      what: 'At an hour and in a season in which it may run: cool S1, then warm it',
      expect: words`the ${names.mover} starts at ${figure(startDifference_K, 'K')} under S2, no sooner than ${count(REST_min)} min after it stopped; running, it stops once S4 is less than ${figure(stopDifference_K, 'K')} under S3`,
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
      expect: words`${spanWords(night.drop_K, 'K')}; ${spanWords(night.heat_W, 'heat')} (eight running hours in ten)`,
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

function spanWords(span: Span, unit: 'K' | 'heat'): Wording {
  return words`${figure(span.low, unit, 2)} to ${figure(span.high, unit, 2)}, middle ${figure(span.middle, unit, 2)}`
}
