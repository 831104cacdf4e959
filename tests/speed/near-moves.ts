import { seededUniform } from '#model/basis/numbers'
import { defaultScenario, withField, type Scenario } from '#model/design/scenario'

/*
 * Moves of one slider from an answer near by: four climates with a target each that takes panels, six sliders each, drawn by a seed.
 * Chosen before any of them was run; none is left out.
 */
const SEED = 24
const MOVES_EACH = 6
const bare = withField(defaultScenario(), 'cover.kind', 'bare')

/** Climate and limit, °C. */
const CASES: readonly (readonly [string, number])[] = [
  ['continental', 27],
  ['semi-arid-south', 33],
  ['high-dry-plateau', 24],
  ['hot-desert', 33],
]
/** A slider and where it may be moved to, −1…1. */
const SLIDERS: readonly (readonly [string, (scenario: Scenario, by: number) => number])[] = [
  ['room.roofU_Wm2K', ({ room }, by) => room.roofU_Wm2K * (1 + 0.15 * by)],
  ['room.wallU_Wm2K', ({ room }, by) => room.wallU_Wm2K * (1 + 0.15 * by)],
  ['room.airChange_1h', ({ room }, by) => room.airChange_1h * (1 + 0.3 * by)],
  ['room.roofReflectance_frac', ({ room }, by) => room.roofReflectance_frac + 0.1 * by],
  ['room.shading_frac', ({ room }, by) => room.shading_frac + 0.2 * by],
  ['room.length_m', ({ room }, by) => room.length_m * (1 + 0.1 * by)],
  ['target.limit_C', ({ target }, by) => target.limit_C + 0.5 * by],
  ['panel.fieldFactor_frac', ({ panel }, by) => panel.fieldFactor_frac * (1 + 0.1 * by)],
  ['panel.backLoss_Wm2K', ({ panel }, by) => panel.backLoss_Wm2K * (1 + 0.5 * by)],
  ['coating.windowEmittance_frac', ({ coating }, by) => coating.windowEmittance_frac + 0.03 * by],
  ['store.delivery_WK', ({ store }, by) => store.delivery_WK * (1 + 0.2 * by)],
  ['plan.setpoint_C', ({ plan }, by) => plan.setpoint_C + 0.5 * by],
]

/** One slider of a scenario in a climate, moved. */
export interface Move {
  readonly climate: string
  readonly scenario: Scenario
  readonly field: string
  readonly value: number
}

/** The moves, the same in every run. */
export function nearMoves(): Move[] {
  const uniform = seededUniform(SEED)
  return CASES.flatMap(([climate, limit_C]) => {
    const scenario = withField(bare, 'target.limit_C', String(limit_C))
    const sliders = SLIDERS.map((slider) => ({ slider, order: uniform() })).toSorted(
      (a, b) => a.order - b.order,
    )
    return sliders.slice(0, MOVES_EACH).map(({ slider: [field, valueOf] }) => ({
      climate,
      scenario,
      field,
      value: valueOf(scenario, 2 * uniform() - 1),
    }))
  })
}

/** Its scenario. */
export const moved = ({ scenario, field, value }: Move): Scenario => withField(scenario, field, String(value))
