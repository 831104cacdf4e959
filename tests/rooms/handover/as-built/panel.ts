/** A panel, its design and fourteen days of an invented climate, for the as-built tests. */
import { inventClimate } from '#model/outdoors/climate'
import { placeById } from '#inside/model/outdoors/climate/places.ts'
import { seededRandom } from '#model/basis/numbers'
import { asBuiltInputs, type Departure } from '#model/handover/as-built'
import { emptyLog } from '#inside/model/handover/as-built/inputs.ts'
import type { AsBuiltInputs } from '#inside/model/handover/as-built/inputs-type.ts'
import { rehearsalLog } from '#inside/model/handover/as-built/rehearsal.ts'
import { defaultScenario } from '#model/design/scenario'
import type { WeatherRecord } from '#model/outdoors/weather'
import { normals } from '../../panels/readings/field-notes.ts'

const years = new Map<string, WeatherRecord>()

/** Days of an invented year as a record of their own. */
export function fewDays(placeId: string, firstDay: number, days: number): WeatherRecord {
  const year = years.get(placeId) ?? inventClimate(placeById(placeId))
  years.set(placeId, year)
  const [from, to] = [24 * firstDay, 24 * (firstDay + days)]
  const cut = Object.fromEntries(
    Object.entries(year).map(([name, value]) => [
      name,
      value instanceof Float64Array ? value.slice(from, to) : value,
    ]),
  ) as unknown as WeatherRecord
  return { ...cut, hours: to - from, start_utcMs: year.start_utcMs + from * 3_600_000 }
}

export interface Case {
  readonly place: string
  readonly firstDay: number
  readonly days: number
  readonly fault: Partial<Departure>
  readonly seed: number
  readonly allDay: boolean
  readonly flowMeter?: boolean
  readonly film?: boolean
}

/**
 * A built panel of 12 m² with a planted fault, and the log it would have left.
 * @param alive_frac  share of its area that works, at the whole panel's flow
 */
export function builtPanel(c: Case, alive_frac = 1): AsBuiltInputs {
  const weather = fewDays(c.place, c.firstDay, c.days)
  const base = defaultScenario()
  const scenario = { ...base, cover: { ...base.cover, kind: c.film ? ('film' as const) : ('bare' as const) } }
  const inputs = asBuiltInputs(scenario, weather, emptyLog(weather.hours), 12)
  const mean_C = weather.airTemp_C.reduce((sum, t) => sum + t, 0) / weather.hours
  const flow_kgsm2 = inputs.loop.flow_kgsm2 / alive_frac
  const working = { ...inputs, area_m2: inputs.area_m2 * alive_frac, loop: { ...inputs.loop, flow_kgsm2 } }
  const log = rehearsalLog(working, {
    fault: c.fault,
    normal: normals(seededRandom(c.seed)),
    runs: c.allDay ? 'always' : 'nights',
    flowMeter: c.flowMeter ?? false,
    plateSensor: false,
    inlet: { mean_C, swing_K: 4 },
  })
  return { ...inputs, log }
}
