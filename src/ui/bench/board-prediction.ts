import type { SampleEstimate } from '#model/bench/estimate.ts'
import { USUAL_BOARD, type BenchBoard, type Cover, type Light } from '#model/bench/reading.ts'
import {
  HOME_HALF_WIDTH,
  predictBoard,
  type BoardCoating,
  type BoardHour,
  type BoardPrediction,
} from '#model/bench/test-board.ts'
import { agedFilm } from '#model/coating/ageing.ts'
import { KNOWN_COATINGS } from '#model/coating/library.ts'
import type { Scenario } from '#model/scenario/fields.ts'

/** One line of the board: a coating under a cover, with what it would read in each light. */
export interface BoardLine {
  readonly coating: string
  readonly cover: Cover
  readonly by: Readonly<Partial<Record<Light, BoardPrediction>>>
}

/** The board at the design's site: bare and under the design's film when new. */
function boardOf({ cover, panel, site }: Scenario): BenchBoard {
  return {
    ...USUAL_BOARD,
    horizon_deg: site.horizon_deg,
    windModel: panel.windModel,
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

/**
 * What the design's coating, the estimated ones and those of the literature would read.
 * @throws ProblemError for a film that passes and reflects more than all
 */
export function boardLines(
  scenario: Scenario,
  estimated: readonly SampleEstimate[],
  hour: BoardHour,
): BoardLine[] {
  const coatings = [
    { name: 'The design’s coating', optics: scenario.coating, ...HOME_HALF_WIDTH },
    ...estimated.map(measured),
    ...KNOWN_COATINGS.map((known) => ({ name: known.name, optics: known, ...HOME_HALF_WIDTH })),
  ]
  const lines = new Map<string, BoardLine>()
  for (const prediction of predictBoard(boardOf(scenario), coatings, hour)) {
    const { coating, cover, light } = prediction
    const key = `${coating} ${cover}`
    lines.set(key, { coating, cover, by: { ...lines.get(key)?.by, [light]: prediction } })
  }
  return [...lines.values()]
}
