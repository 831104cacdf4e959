import { roomExposure } from '#model/building/room'
import { roomSpecOf } from '#model/design/assembly'
import { withWay } from '#model/design/measures'
import { drawnScenarios, spreadOfAreas, type Scenario } from '#model/design/scenario'
import { drawsToSimulate, type SizingResult, type UncertaintyResult } from '#model/design/sizing'
import type { WeatherRecord } from '#model/outdoors/weather'
import { DrawnYear } from './drawn-year.ts'
import type { Stages } from './stages.ts'

/**
 * The area over the uncertain inputs of the design that the way taken makes, one draw at a time, so that a caller can show progress or stop: an iterator
 * of draws simulated, as many as a fit of the others needs, whose return value is the spread. Tank ratio, flow and area of `sizing` are the starting point.
 */
export function* uncertainty(
  stages: Stages,
  given: Scenario,
  record: WeatherRecord,
  sizing: SizingResult,
  draws: number,
): Generator<number, UncertaintyResult> {
  const scenario = withWay(given, record)
  const drawn = drawnScenarios(scenario, record, draws)
  const around = drawnYear(stages, scenario, record, sizing)
  const areas_m2: (number | null)[] = []
  for (;;) {
    const to = drawsToSimulate(areas_m2.length, draws)
    while (areas_m2.length < to) {
      areas_m2.push(drawnArea_m2(stages, drawn[areas_m2.length]!, record, sizing, around))
      yield areas_m2.length
    }
    const found = spreadOfAreas(scenario, record, draws, areas_m2)
    if (found !== null) return found
  }
}

/** The areas of draws `from` to `to` (not included), m²: stages share draws out, `spreadOfAreas` joins them. */
export function* drawnAreas_m2(
  stages: Stages,
  given: Scenario,
  record: WeatherRecord,
  sizing: SizingResult,
  draws: number,
  from: number,
  to: number,
): Generator<number, (number | null)[]> {
  const scenario = withWay(given, record)
  const around = drawnYear(stages, scenario, record, sizing)
  const areas_m2: (number | null)[] = []
  for (const drawn of drawnScenarios(scenario, record, draws).slice(from, to)) {
    areas_m2.push(drawnArea_m2(stages, drawn, record, sizing, around))
    yield areas_m2.length
  }
  return areas_m2
}

/** The hours in which draws around an answer are run; null where it has no panels that are just enough. */
function drawnYear(
  stages: Stages,
  scenario: Scenario,
  record: WeatherRecord,
  sizing: SizingResult,
): DrawnYear | null {
  const { memory } = stages
  const { kind, area_m2, storeVolume_m3 } = sizing
  if (kind !== 'met') return null
  return memory.recall('drawn year', [record, scenario, area_m2, storeVolume_m3], () => {
    const base = stages.prepare(scenario, record, true)
    const { weather, sun, sky } = base
    const exposed = roomExposure(weather, sun, sky, roomSpecOf(scenario), memory.recall)
    return DrawnYear.around(base, exposed, { area_m2, storeVolume_m3 })
  })
}

function drawnArea_m2(
  stages: Stages,
  drawn: Scenario,
  record: WeatherRecord,
  sizing: SizingResult,
  around: DrawnYear | null,
): number | null {
  const area_m2 = around?.area_m2(drawn, record) ?? null
  if (area_m2 !== null) return area_m2 > drawn.target.maxArea_m2 ? null : area_m2
  const found = stages.about(drawn, record, sizing)
  return found.kind === 'floor' ? null : found.area_m2
}
