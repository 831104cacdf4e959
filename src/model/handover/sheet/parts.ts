import { fluidProperties, LOOP_TEMP_C } from '#model/panels/loop'
import { THERMOMETERS } from './controls.ts'
import type { Plant } from './plant.ts'
import type { Quantities } from './quantities.ts'
import { rowsOf } from './plant.ts'
import { startLift_m } from './start-lift.ts'
import { deliveredBy } from './delivered-by.ts'
import { count, figure, short, words, type Figure, type Wording } from '#model/basis/words'

/** One line of the shopping list. Quantities are net: add your own waste. */
export interface Part {
  readonly quantity: Figure
  readonly what: Wording
}

const part = (quantity: Figure, what: Wording): Part => ({ quantity, what })

export function partsList(plant: Plant, amounts: Quantities): Part[] {
  return [
    ...panelParts(plant, amounts),
    ...loopParts(plant, amounts),
    ...storeParts(plant, amounts),
    ...controlParts(plant),
  ].filter(({ quantity }) => quantity.value > 0)
}

function panelParts(plant: Plant, amounts: Quantities): Part[] {
  const { loopSpec, names, passages, layout } = plant
  const { panel, cover } = plant.answer.scenario
  const parts = [
    part(
      count(layout.modules),
      words`panel modules ${figure(panel.moduleLength_m, 'm')} along the ${names.passage}s × ${figure(panel.moduleWidth_m, 'm')}, plate ${short(loopSpec.plateThickness_m)} thick`,
    ),
    part(
      figure(amounts.passage_m, 'm'),
      words`${names.passage} ${short(loopSpec.tubeInnerDiameter_m)} inside, ${short(loopSpec.tubeOuterDiameter_m)} outside: ${count(passages.parallel)} of ${figure(passages.length_m, 'm')} a module`,
    ),
    part(figure(amounts.plate_m2, 'm2'), words`coating on the sky side, and a primer the plate asks for`),
    part(
      figure(amounts.plate_m2, 'm2'),
      words`back insulation, about ${short(backInsulation_m(panel.backLoss_Wm2K), 2)} of foam (${figure(backInsulation_m(panel.backLoss_Wm2K) / FOAM_WmK, 'rValue')})`,
    ),
  ]
  if (cover.kind === 'film')
    parts.push(
      part(
        figure(amounts.plate_m2, 'm2'),
        words`infrared-clear film, with frames that hold it ${short(cover.gap_m)} off the plate`,
      ),
    )
  parts.push(
    part(count(amounts.anchors), words`fixings to the structure, four a module, with brackets and seals`),
  )
  return parts
}

/** What lies behind the plate. */
export const FOAM_TEXT = 'closed-cell foam, weatherproof behind'
/** Conductivity of foam boards, W/mK, and the still air behind them, m²K/W (common practice, no source). */
const FOAM_WmK = 0.035
const BACK_AIR_m2KW = 0.1

/** Foam that gives a back loss, m; 0 where the air alone does. */
export function backInsulation_m(backLoss_Wm2K: number): number {
  if (backLoss_Wm2K <= 0) return Infinity
  return Math.max(0, FOAM_WmK * (1 / backLoss_Wm2K - BACK_AIR_m2KW))
}

function loopParts(plant: Plant, amounts: Quantities): Part[] {
  const { answer, loopSpec, names, fluid } = plant
  const { loop } = answer
  const rows = rowsOf(plant).length
  const wet = loopSpec.fluid !== 'air'
  const parts = [
    part(
      figure(amounts.header_m, 'm'),
      words`header ${names.pipe}, ${wet ? figure(loop.headerInnerDiameter_m, 'pipeBore') : words`${short(loop.headerInnerDiameter_m)} inside or the next wider`}, of anything that suits the ${names.passage}s’ joints`,
    ),
    part(count(amounts.unions), words`unions between headers of neighbouring modules`),
    part(count(amounts.caps), words`header end caps (the corners not fed or drained)`),
    part(
      figure(amounts.pipe_m, 'm'),
      words`${names.pipe} ${wet ? figure(loop.pipeInnerDiameter_m, 'pipeBore') : words`${short(loop.pipeInnerDiameter_m)} inside`}, supply and return together`,
    ),
    part(
      figure(amounts.pipe_m, 'm'),
      words`${names.pipe} insulation ${short(loopSpec.pipeInsulation_m)}, vapour-tight, sun-proof outdoors`,
    ),
    part(count(1), moverWords(plant)),
  ]
  if (!wet) return [...parts, part(count(1), words`filter before the fan, and a drain at the low point`)]
  parts.push(
    part(count(rows), words`shut-off and balancing valve for each row (B)`),
    part(count(rows), words`air vent at the high corner of each row (A)`),
    part(count(2), words`shut-off valves either side of the pump (V1, V2)`),
    part(
      count(1),
      words`set: strainer (ST), flow meter (FM), two pressure gauges (G1, G2), drain valve at the low point (D1), filling hose with an air gap (F1)`,
    ),
  )
  if (plant.tank === null && answer.scenario.plan.freeze === 'drainBack')
    parts.push(
      part(
        count(1),
        words`drain-back vessel below the panels, for ${figure(amounts.loopVolume_m3, 'content', 2)} and more`,
      ),
    )
  if (loopSpec.fluid === 'glycol' && plant.tank === null)
    parts.push(
      part(
        count(1),
        words`expansion vessel (EX) and relief valve (RV) with a can, for ${figure(amounts.loopVolume_m3, 'content', 2)} of mix`,
      ),
    )
  if (loopSpec.fluid === 'glycol')
    parts.push(
      part(
        figure(amounts.loopVolume_m3 * fluid.density_kgm3 * loopSpec.glycol_frac, 'kg'),
        words`inhibited propylene glycol for the loop alone`,
      ),
    )
  return parts
}

/** The smallest pumps and fans that are sold draw about this much, W (common practice, no source). */
export const SMALLEST_MOVER_W = 5

/** Pressure of a metre of water, Pa/m. */
const WATER_Pam = 9790
/** Greatest head of a pump over the lift that it fills panels against, m (common practice, no source). */
const START_SPARE_m = 1

function moverWords(plant: Plant): Wording {
  const { loop } = plant.answer
  const lift_m = startLift_m(plant)
  const duty = words`${plant.names.mover}: ${flowFigure(plant)} against ${headFigure(plant, loop.pressureDrop_Pa)}, about ${figure(loop.pumpPower_W, 'W', 2)}`
  if (lift_m !== null)
    return words`${duty}; it must fill drained panels each time it starts: greatest head (at no flow) of at least ${headFigure(plant, WATER_Pam * (lift_m + START_SPARE_m))}, then throttled to the flow`
  if (loop.pumpPower_W >= SMALLEST_MOVER_W) return duty
  return words`${duty}: the smallest that is sold will do, throttled to the flow; it will draw a few watts`
}

/** The loop's flow in the unit its pump or fan is bought by. */
export function flowFigure({ loopSpec, flow_m3s }: Plant, share = 1): Figure {
  return figure(flow_m3s * share, loopSpec.fluid === 'air' ? 'airFlow' : 'liquidFlow', 2)
}

/** A pressure as pumps and fans state it. */
export function headFigure({ loopSpec }: Plant, pressure_Pa: number): Figure {
  return figure(pressure_Pa, loopSpec.fluid === 'air' ? 'fanPressure' : 'head', 3)
}

function storeParts({ tank, answer, loopSpec }: Plant, amounts: Quantities): Part[] {
  const { store } = answer.scenario
  const cooler = part(
    count(1),
    store.deliveryKind === 'drained'
      ? words`fan coil: ${figure(store.delivery_WK, 'WK')} between store water and room air, with drip tray, float switch and drain`
      : store.deliveryKind === 'surface'
        ? words`fan coil or coil kept dry: ${figure(store.delivery_WK, 'WK')} between store water and room air; under a coil a drip tray and drain`
        : words`${deliveredBy(store)}: ${figure(store.delivery_WK, 'WK')} between store water and ${store.deliveryKind === 'ceiling' ? 'room' : 'layer'}, with a mixing valve held by the dew guard`,
  )
  if (tank === null) {
    return [
      part(count(1), words`${deliveredBy(store)}: ${figure(store.delivery_WK, 'WK')} between fluid and mass`),
    ]
  }
  const water_kg = tank.volume_m3 * fluidProperties('water', 0, LOOP_TEMP_C).density_kgm3
  const parts = [
    part(
      count(1),
      words`tank of ${figure(tank.volume_m3, 'm3')}, about ${figure(tank.diameter_m, 'm')} wide and ${figure(tank.height_m, 'm')} high, with a tight, child-proof lid`,
    ),
    part(
      figure(amounts.tankSkin_m2, 'm2'),
      words`tank insulation ${short(store.insulation_m)} all round (${figure(store.insulation_m / store.insulationConductivity_WmK, 'rValue')}), load-bearing below`,
    ),
    part(count(1), words`tank fittings: four connections, overflow (O1), drain valve (D2), pocket for S2`),
    cooler,
    ...roomSet(store.deliveryKind),
  ]
  if (loopSpec.fluid === 'glycol')
    parts.push(
      part(
        figure(water_kg * loopSpec.glycol_frac, 'kg'),
        words`more glycol if the tank holds the same mix; none with a heat exchanger, which this reckoning does not contain`,
      ),
    )
  return parts
}

/** What moves the water between tank and room. */
function roomSet(delivery: Plant['answer']['scenario']['store']['deliveryKind']): Part[] {
  const pump = part(
    count(1),
    words`pump (P2) and shut-off valve (V3) for the room cooling, sized with the coil that is bought`,
  )
  return delivery === 'drained' ? [pump] : [pump, part(count(1), words`mixing valve (M1) for the dew guard`)]
}

function controlParts({ names, answer }: Plant): Part[] {
  const humidity = answer.scenario.store.dewMargin_K > 0 ? ' and a humidity sensor for the dew guard' : ''
  return [
    part(
      count(1),
      words`controller with difference, low limit and season gate for the ${names.mover}${humidity}`,
    ),
    part(count(THERMOMETERS), words`temperature sensors (S1–S5, S7), good to ${figure(0.2, 'K')}, paired`),
    part(count(1), words`residual-current protected supply with isolator, drip loops, splash-proof boxes`),
  ]
}
