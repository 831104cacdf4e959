import type { Workbench } from '#live/workbench.svelte.ts'
import { isTaken } from '#model/design/scenario'
import { firstLook, ofDesign, type Sure } from '#ui/deciding/sure-words.ts'

/** How sure the way of that place is: a first look, and once it is the design, what all pages say of that. */
export function sureOfWay(bench: Workbench, place: number): Sure | null {
  const way = bench.deciding.decision?.ways[place]?.combination
  if (way === undefined) return null
  const { answer } = bench.run
  const own =
    answer && isTaken(way, bench.design.scenario.job.way) && !bench.busy ? bench.hours.of(answer) : null
  if (answer && own) {
    const range = bench.range.isFor(answer) ? bench.range.run.result : null
    return ofDesign(own, range, answer.area_m2)
  }
  const hours = bench.deciding.sureOf(place)
  return hours && firstLook(hours, way.panelArea_m2 > 0)
}
