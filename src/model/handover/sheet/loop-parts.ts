import { AIR_HOLE_m, airHoleHeight_m, crankOf, drainsBack, liftOf_m } from '#model/handover/drawing'
import { count, figure, short, words, type Wording } from '#model/basis/words'
import { MODULE_GAP_m } from '#model/panels/loop'
import { loopSealing } from './fixings.ts'
import { factsOf } from './facts-of.ts'
import { CLIPS_m, flowFigure, headFigure, METER_RANGE } from './figures.ts'
import { fluidParts } from './fluid-parts.ts'
import { builtDrop_Pa, moverWords, startDuty, testPressure_Pa } from './pump-duty.ts'
import { partOf, type Part } from './part.ts'
import { rowsOf, type Plant } from './plant.ts'
import { roomTest_Pa } from './room-circuit.ts'
import type { Quantities } from './quantities.ts'

const part = partOf('Panel loop')

/** Elbows of the way that is drawn, and more for each further row (counted in the drawing). */
const ELBOWS = 10
const ELBOWS_ROW = 2

/** Headers, pipes, pump, and what sits in them. */
export function loopParts(plant: Plant, amounts: Quantities): Part[] {
  const { answer, loopSpec, names, layout, passages } = plant
  const { loop } = answer
  const rows = rowsOf(plant).length
  const wet = loopSpec.fluid !== 'air'
  const bore = (inner_m: number) =>
    wet ? words`${figure(inner_m, 'pipeBore')}` : words`${figure(inner_m, 'duct')} inside`
  const parts = [
    part(
      figure(amounts.header_m, 'm'),
      words`header ${names.pipe}, ${bore(loop.headerInnerDiameter_m)}: two to a module, each ${figure(loopSpec.moduleWidth_m + MODULE_GAP_m, 'span')}, ${short(MODULE_GAP_m / 2)} past the module at each side${wet ? ' with the collar of its union, cap or reducer' : ''}${wet ? words`; metal tube of that bore where ${names.passage}s are brazed in` : words``}`,
    ),
    part(
      count(2 * layout.modules * passages.parallel),
      words`joints of ${names.passage}s (${figure(loopSpec.tubeOuterDiameter_m, 'tubeOuter')} outside) to headers${crankOf(factsOf(plant)) === null ? '' : `, each ${names.passage} cranked as drawn`}`,
    ),
    part(
      count(amounts.unions),
      wet
        ? words`flat-faced unions between headers of neighbouring modules, with gaskets for ${loopSpec.fluid === 'glycol' ? 'glycol mixes' : 'cold water'}: tails brazed on at the bench, their sockets inside the edge profile (of a 42 mm (1 5/8 in) tube 27 mm (1 1/16 in) deep) where no ${names.passage} joins, collar and nut in the gap of ${short(MODULE_GAP_m)}, done up from above with a hook wrench; flat faces let a module be lowered between two others. Try one pair on the bench first`
        : words`sleeves inside the headers of neighbouring modules, slid back into one header while the module is lowered, then half way into the other across the gap of ${short(MODULE_GAP_m)}, screwed and sealed there`,
    ),
    part(
      count(amounts.caps),
      words`header end caps (the corners not fed or drained)${wet ? ', put on at the bench' : ''}`,
    ),
    part(
      count(2 * rows),
      words`reducers from header to ${names.pipe}, at the fed and the drained corner of each row`,
    ),
    part(count(2 * (rows - 1)), words`tees where rows branch off supply and return`),
    part(
      figure(amounts.pipe_m, 'm'),
      words`${names.pipe} ${bore(loop.pipeInnerDiameter_m)}, supply and return together`,
    ),
    part(
      count(Math.ceil(amounts.pipe_m / CLIPS_m)),
      words`clips for it, one every ${figure(CLIPS_m, 'rough')}, over the insulation, with a shell under it`,
    ),
    part(
      count(2),
      words`sleeves where supply and return pass ${sleeveWords(plant)}, wide enough for ${names.pipe} and insulation, sealed against rain and draught`,
    ),
    part(
      count(ELBOWS + ELBOWS_ROW * (rows - 1)),
      words`elbows of that size for the way drawn (section and loop); yours may need more: 40 % of the ${names.pipe}s’ loss is allowed for all fittings`,
    ),
    part(
      figure(amounts.pipe_m, 'm'),
      words`${names.pipe} insulation ${short(loopSpec.pipeInsulation_m)}, vapour-tight, sun-proof outdoors`,
    ),
    ...loopSealing(plant, 2 * layout.modules * passages.parallel, amounts.pipe_m),
    part(count(1), moverWords(plant)),
  ]
  return wet
    ? [...parts, ...valves(plant, rows), ...fluidParts(plant, amounts)]
    : [...parts, ...airParts(plant, rows)]
}

/** Supply and return each pass it once. */
function sleeveWords({ answer, tank }: Plant): string {
  const { panel, room, store } = answer.scenario
  if (panel.height_m < room.height_m) return 'the wall'
  return tank !== null && store.place === 'outside'
    ? 'the roof, and two more through the wall to the tank'
    : 'the roof, with a collar each'
}

/** Difference gauges are sold to so much; one reads to at least 1.25 times what it sees, Pa (common practice, no source). */
const GAUGES_Pa = [
  2500, 4000, 6000, 10_000, 16_000, 25_000, 40_000, 60_000, 100_000, 160_000, 250_000,
] as const
const GAUGE_SPARE = 1.25

/** Most that a row’s valve loses wide open, Pa (common practice, no source; the loop allows 40 % of its pipes’ loss for all fittings). */
const ROW_VALVE_Pa = 1000

/** Scale of a row’s valve: about the flow of a row, the smallest and the largest. */
function scaleOf(plant: Plant): Wording {
  const rows = rowsOf(plant)
  const share = (modules: number): number => modules / plant.layout.modules
  return words`${flowFigure(plant, METER_RANGE[0] * share(Math.min(...rows)))} to ${flowFigure(plant, METER_RANGE[1] * share(Math.max(...rows)))}`
}

/** The next range that is sold and reads so much with some to spare. */
const gaugeFor_Pa = (most_Pa: number): number =>
  GAUGES_Pa.find((range_Pa) => range_Pa >= GAUGE_SPARE * most_Pa) ?? GAUGE_SPARE * most_Pa

/** Fittings with a thread at both ends beside the pump: V1, V2, ST and FM, and B of each row. */
const THREADED = 4
/** Tees of the loop beside those of the rows: D1, G1 and G2. */
const TEES = 3

function valves(plant: Plant, rows: number): Part[] {
  const { loop } = plant.answer
  const facts = factsOf(plant)
  const size = figure(loop.pipeInnerDiameter_m, 'valveSize')
  const gauge_Pa = gaugeFor_Pa(Math.max(startDuty(plant)?.head_Pa ?? 0, builtDrop_Pa(plant)))
  const range = METER_RANGE.map((share) => figure(share * plant.flow_m3s, 'liquidFlow', 2))
  const drains = drainsBack(facts)
  return [
    part(
      count(2),
      words`ball valves ${size}, full bore, either side of the pump (V1, V2); V2 one that can be set`,
    ),
    part(
      count(rows),
      rows === 1
        ? words`shut-off valve ${size} of the row (B)`
        : words`shut-off and balancing valve ${size}, one a row (B), with a flow scale of its own (sight glass) that reads ${scaleOf(plant)}, wide open losing at most ${headFigure(plant, ROW_VALVE_Pa)} at its row’s flow: FM reads all rows together and cannot tell them apart`,
    ),
    ...atHighCorners(plant, rows),
    part(count(1), words`strainer ${size}, mesh about ${short(0.0005, 1)} (ST)`),
    part(count(1), words`flow meter that reads ${range[0]!} to ${range[1]!} (FM), in the main after V2`),
    part(
      count(1),
      words`difference gauge (or a U-tube with water, where it is not too long) 0 to ${figure(gauge_Pa, 'gauge')}, made for the test pressure, with a cock before P1 and one after V2 (G1, G2)`,
    ),
    ...fittings(plant, rows),
    part(count(1), words`drain valve ${figure(0.015, 'valveSize')} with hose end at the lowest point (D1)`),
    part(count(1), fillingWords(plant)),
    part(
      count(1),
      words`test pump by hand with hose for D1${plant.tank === null ? '' : ' and D3'} and a gauge 0 to ${figure(gaugeFor_Pa(Math.max(testPressure_Pa(plant), plant.tank === null ? 0 : roomTest_Pa(plant))), 'gauge')}, for a test at ${figure(testPressure_Pa(plant), 'gauge')}: fills and presses from an open can; taken away afterwards (hire it)`,
    ),
    ...(plant.tank !== null && !drains
      ? [
          part(
            count(1),
            words`filling pump with hose for D1, by hand or electric, that takes water from an open can and reaches ${figure(Math.max(1, liftOf_m(facts) ?? 0) + SPARE_m, 'm')} of lift; taken away afterwards`,
          ),
        ]
      : []),
  ]
}

/** Plugs and the air hole of a loop that drains back, vents of one that stays full. */
function atHighCorners(plant: Plant, rows: number): Part[] {
  const facts = factsOf(plant)
  return drainsBack(facts)
    ? [
        part(
          count(rows),
          words`plugs ${figure(0.01, 'valveSize')} in a tee at the high corner of each row (PL), opened for the leak test alone`,
        ),
        ...(plant.tank === null
          ? []
          : [
              part(
                count(1),
                words`air hole (AH) of ${short(AIR_HOLE_m)}, drilled in the return where it goes down inside the tank, ${figure(airHoleHeight_m(facts.tank!), 'span')} above the tank’s bottom: half way between water line and rim, over the overflow O1, on the side of the pipe that looks to the middle of the tank, so that what spurts out falls into it; keep ${short(0.05)} free before it`,
              ),
            ]),
      ]
    : [
        part(
          count(rows),
          plant.tank === null
            ? words`automatic air vent ${figure(0.01, 'valveSize')} at the high corner of each row (A)`
            : words`air vent ${figure(0.01, 'valveSize')}, opened by hand, at the high corner of each row (A)`,
        ),
      ]
}

/** What joins valves and instruments to the pipe. */
function fittings(plant: Plant, rows: number): Part[] {
  const size = figure(plant.answer.loop.pipeInnerDiameter_m, 'valveSize')
  const drains = drainsBack(factsOf(plant))
  return [
    part(
      count(2 * (THREADED + rows)),
      words`adapters, that pipe to the male thread ${size} of V1, V2, ST, FM and B: compression or solder on copper, press or compression with insert on plastic`,
    ),
    part(
      count(TEES + rows),
      words`tees of that pipe with a female thread: ${figure(0.015, 'valveSize')} for D1, ${figure(0.01, 'valveSize')} for G1, G2 and ${drains ? 'PL' : 'A'}`,
    ),
  ]
}

/** Lift of a filling pump over the tank's water, beyond the highest panel: to the pump's foot, and some to spare, m (common practice, no source). */
const SPARE_m = 2

/** How water or mix gets in. */
function fillingWords(plant: Plant): Wording {
  if (plant.tank !== null) return words`filling hose that ends over the rim, with an air gap (FH)`
  return drainsBack(factsOf(plant))
    ? words`filling hose that ends over the rim of the vessel DV, with an air gap`
    : words`hand pump and hose: ${plant.loopSpec.fluid === 'glycol' ? 'the mix' : 'water from an open can'} is pumped in at D1 until no more air comes out at the vents`
}

function airParts(plant: Plant, rows: number): Part[] {
  const bore = figure(plant.answer.loop.pipeInnerDiameter_m, 'duct')
  return [
    part(count(1), words`filter (FI) before the fan, ${bore}, and a drain at the low point of the duct`),
    part(
      count(1),
      words`place to measure the air flow (FM): a straight piece of ten widths with a hole for a probe`,
    ),
    ...(rows > 1 ? [part(count(rows), words`damper ${bore}, one a row (B)`)] : []),
    part(
      count(2),
      words`dampers ${bore} that shut while the fan is off, so that no warm air drifts in by day (V1, V2)`,
    ),
  ]
}
