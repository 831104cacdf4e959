import { ROW_GAP_m } from '#model/panels/loop'
import { figure, words } from '#model/basis/words'
import { FIXING_INSET_frac, planOf, type PlantFacts } from './facts.ts'
import type { At, Levels } from './levels.ts'
import { label, outline, path, type Shape } from './shapes.ts'

/** A row at least so wide on paper has its name over it, mm. */
const NAMED = 10
/** Panels are drawn so thick, mm. */
const THICK = 1.6

/** Each row on its posts, from the low edge up; rows are numbered from the high edge, as in the plan. */
export function panelsOf(facts: PlantFacts, levels: Levels, at: At): Shape[] {
  const { moduleLength_m, moduleWidth_m, rows } = facts
  const slope_rad = (facts.tilt_deg * Math.PI) / 180
  const foot_m = levels.onRoof ? facts.roomHeight_m : 0
  const inset_m = FIXING_INSET_frac * Math.min(moduleLength_m, moduleWidth_m)
  const x_m = (along_m: number): number => levels.panel_m + along_m * Math.cos(slope_rad)
  const z_m = (along_m: number): number => levels.low_m + along_m * Math.sin(slope_rad)
  const low = at(levels.panel_m, levels.low_m)
  const high = at(levels.panel_m + planOf(facts).down_m, levels.high_m)
  const many = rows.length > 1
  return [
    ...rows.flatMap((_, row): Shape[] => {
      const from_m = row * (moduleLength_m + ROW_GAP_m)
      const to_m = from_m + moduleLength_m
      const [first, last] = [at(x_m(from_m), z_m(from_m)), at(x_m(to_m), z_m(to_m))]
      const middle = (first[0] + last[0]) / 2
      return [
        ...[from_m + inset_m, to_m - inset_m].map((along_m) =>
          path([at(x_m(along_m), z_m(along_m)), at(x_m(along_m), foot_m)]),
        ),
        outline([first, last, [last[0], last[1] - THICK], [first[0], first[1] - THICK]], 'line', 'grey'),
        ...(many && last[0] - first[0] >= NAMED
          ? [label([middle, (first[1] + last[1]) / 2 - THICK - 1.4], `row ${rows.length - row}`)]
          : []),
      ]
    }),
    label(
      [(low[0] + high[0]) / 2, Math.min(low[1], high[1]) - (many ? 5.2 : 4)],
      words`panels, ${figure(facts.tilt_deg, 'deg')}`,
    ),
  ]
}
