import { AIR_WORK } from './air-work.ts'
import { BUILDING_WORK } from './building-work.ts'
import { machineWork } from './machine-work.ts'
import { paintWork } from './paint-work.ts'
import type { WayBuilt } from './way-asked.ts'
import type { Work } from './work.ts'

/** Measures first, then the machine. */
export function worksOf(built: WayBuilt): Work[] {
  const { scenario, measures, machine } = built
  return [
    ...measures.map((id): Work => {
      if (id === 'paintRoof') return paintWork(built)
      if (id === 'nightOpening' || id === 'nightFan' || id === 'ceilingFan') return AIR_WORK[id](scenario)
      return BUILDING_WORK[id](scenario)
    }),
    ...(machine === null ? [] : [machineWork(machine)]),
  ]
}
