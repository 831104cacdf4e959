import type { Stages } from './stages.ts'
import { FIELDS, type Scenario, withPanelsInWay } from '#model/design/scenario'
import { mapTaskOf } from '#model/design/assembly'
import {
  designMap,
  type DesignMap,
  mapAxes,
  type MapAxes,
  type MapKind,
  type Candidate,
} from '#model/design/sizing'
import type { Asked, Study } from './study.ts'
import { LEAST_MAP_AREA_m2, LEAST_MAP_STORE_m3 } from './usual.ts'

export interface Mapped extends Asked {
  readonly kind: MapKind
  /** The design the map is drawn around; what the map does not vary is held as it is here. */
  readonly around: Candidate
  /** Areas and stores or flows to try; worked out around the design when left out. */
  readonly axes?: MapAxes
}

/** Hours above the limit over area and store, or area and flow: coarse first, then finer. */
export function* map(stages: Stages, q: Mapped): Study<DesignMap, DesignMap> {
  const { scenario, weather, around } = q
  const task = mapTaskOf(stages.prepare(withPanelsInWay(scenario), weather), around)
  const drawing = designMap(task, q.axes ?? axesAround(q.kind, around, scenario))
  for (;;) {
    const next = drawing.next()
    if (next.done === true) return { result: next.value, remarks: [] }
    const { share, map: soFar } = next.value
    yield soFar === null ? { share } : { share, soFar }
  }
}

function axesAround(
  kind: MapKind,
  { area_m2, storeVolume_m3, flow_kgsm2 }: Candidate,
  scenario: Scenario,
): MapAxes {
  const field = kind === 'store' ? FIELDS.store.volume_m3 : FIELDS.loop.flow_kgsm2
  const other = kind === 'store' ? Math.max(storeVolume_m3, LEAST_MAP_STORE_m3) : flow_kgsm2
  const most_m2 = scenario.target.maxArea_m2
  const middle_m2 = Math.min(Math.max(area_m2, LEAST_MAP_AREA_m2), most_m2)
  return mapAxes(kind, middle_m2, other, { most_m2, least: field.min, most: field.max })
}
