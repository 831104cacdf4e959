import type { Stages } from './stages.ts'
import {
  type SampleEstimate,
  USUAL_BOARD,
  type BenchBoard,
  HOME_HALF_WIDTH,
  predictBoard,
  type BoardCoating,
  type BoardHour,
  type BoardPrediction,
} from '#model/panels/readings'
import { agedFilm, KNOWN_COATINGS } from '#model/panels/coating'
import type { Scenario } from '#model/design/scenario'
import type { Study } from './study.ts'

interface Board {
  readonly scenario: Scenario
  readonly hour: BoardHour
  /** Coatings estimated from field readings, to be beside the design's. */
  readonly estimated?: readonly SampleEstimate[]
}

/**
 * What a test board would read: the design's coating, the estimated ones and those of the literature, bare and under the
 * design's film when new, in each light. @throws ProblemError for a film that passes and reflects more than all
 */
export function boardPredictions({ scenario, hour, estimated = [] }: Board): readonly BoardPrediction[] {
  const coatings = [
    { name: 'The design’s coating', optics: scenario.coating, ...HOME_HALF_WIDTH },
    ...estimated.map(measured),
    ...KNOWN_COATINGS.map((known) => ({ name: known.name, optics: known, ...HOME_HALF_WIDTH })),
  ]
  return predictBoard(boardOf(scenario), coatings, hour)
}

/** The same as a study. */
export function* board(_stages: Stages, q: Board): Study<readonly BoardPrediction[]> {
  return { result: boardPredictions(q), remarks: [] }
}

function boardOf({ cover, site }: Scenario): BenchBoard {
  return {
    ...USUAL_BOARD,
    horizon_deg: site.horizon_deg,
    film: agedFilm(cover, 0),
  }
}

function measured({ name, solarReflectance: r, emittance: e }: SampleEstimate): BoardCoating {
  return {
    name: `${name}, as estimated`,
    optics: {
      solarReflectance_frac: r.value,
      windowEmittance_frac: e.value,
      offWindowEmittance_frac: e.value,
    },
    reflectanceHalfWidth_frac: (r.high - r.low) / 2,
    emittanceHalfWidth_frac: (e.high - e.low) / 2,
  }
}
