import { drainsBack, FALL, fieldOf } from '#model/handover/drawing'
import { figure, short, words, type Wording } from '#model/basis/words'
import { factsOf } from './facts-of.ts'
import type { Plant } from './plant.ts'
import { testPressure_Pa } from './pump-duty.ts'

/** From the bench to the wiring, in order; what is bought and drawn is not said again. */
export function buildSteps(plant: Plant): Wording[] {
  const { names, tank, loopSpec, answer } = plant
  const facts = factsOf(plant)
  const wet = loopSpec.fluid !== 'air'
  const onRoof = answer.scenario.panel.height_m >= answer.scenario.room.height_m
  const hung = wet
    ? words`, each row ${short(FALL * fieldOf(facts).across_m, 2)} lower at its fed corner`
    : words``
  return [
    wet
      ? words`Bench: braze ${names.passage}s, tails, caps and reducers to the headers; press-test each panel with water, ${figure(testPressure_Pa(plant), 'gauge')} for 30 minutes, before anything closes it.`
      : words`Bench: join ${names.passage}s and headers; try each panel with smoke or soap before anything closes it.`,
    words`${loopSpec.layout === 'wetted' ? words`Fit the plate` : words`Press the ${names.passage}s into the plate’s grooves, with paste`}; edge profile round, notched and riveted; primer and coats on plate and upper flange.`,
    words`Controller and all sensors on the bench, in crushed ice and water: all read ${figure(0, 'C')} within ${figure(0.3, 'K')}, and each other within ${figure(0.2, 'K')}. Only then fit them.`,
    words`S1; foam; back sheet in a bead of sealant, riveted, with the hatch of S1.`,
    words`Engineer’s check in hand: ${onRoof ? 'holes and sleeves U and D; ' : ''}feet${onRoof ? ', boots' : ''}, braces, rails${hung}.`,
    words`Panels on the rails from the lowest row up, clamps loose; ${wet ? 'unions with their gaskets; then tighten clamps and unions' : 'sleeves over, sealed; then tighten'}.`,
    words`${names.pipe === 'pipe' ? 'Pipes' : 'Ducts'} from the panels to the store, fall by spirit level. Insulate joints after the leak test.`,
    ...(tank === null
      ? []
      : [
          words`Tank on its insulation: connectors, O1, D2, LS, return${drainsBack(facts) ? ' with AH' : ''}; ${names.mover === 'pump' ? 'P1 with its valves and gauges. ' : ''}Room unit with its pipes, P2 and valves${facts.roomUnit === 'fanCoil' ? ', CD with its trap' : ''}.`,
        ]),
    words`Wiring by whoever may: HS${tank === null ? '' : ' and H2'} locked on off until ${wet ? 'the pumps stand in water' : 'the ducts are closed'}.`,
  ]
}
