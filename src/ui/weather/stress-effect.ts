import { hottestWeekStart_h } from '#model/design/assembly'
import type { UnitSystem } from '#model/basis/units'
import type { ClimateSeries } from '#studies/climate-series.ts'
import { shownQuantity } from '#ui/words/quantity.ts'

/** One figure of a climate, as it is and under the stress of the design. */
export interface EffectRow {
  readonly label: string
  readonly asIs: string
  readonly harder: string
}

const WEEK_H = 168

interface Figures {
  readonly hottest_C: number
  readonly week_C: number
  readonly dew_C: number
  readonly nightWind_ms: number
  readonly nightLoss_Wm2: number
}

function meanOf(values: Float64Array, from = 0, to = values.length, night?: Uint8Array): number {
  let sum = 0
  let count = 0
  for (let i = from; i < to; i += 1) {
    if (night?.[i] === 0) continue
    sum += values[i]!
    count += 1
  }
  return sum / count
}

/** Figures of the week that is hottest in the climate as it is, so that both columns speak of the same days. */
function figures({ weather, black_Wm2, night }: ClimateSeries, start_h: number): Figures {
  const end_h = Math.min(start_h + WEEK_H, weather.hours)
  return {
    hottest_C: weather.airTemp_C.reduce((top, air) => Math.max(top, air), -Infinity),
    week_C: meanOf(weather.airTemp_C, start_h, end_h),
    dew_C: meanOf(weather.dewPoint_C, start_h, end_h),
    nightWind_ms: meanOf(weather.wind_ms, start_h, end_h, night),
    nightLoss_Wm2: meanOf(black_Wm2, start_h, end_h, night),
  }
}

/** What the stress does to the climate: the hottest hour of the year, and the hottest week. */
export function stressEffect(
  series: ClimateSeries,
  harder: ClimateSeries | null,
  system: UnitSystem,
): readonly EffectRow[] {
  const start_h = hottestWeekStart_h(series.weather)
  const before = figures(series, start_h)
  const after = harder === null ? before : figures(harder, start_h)
  const row = (label: string, unit: string, of: (f: Figures) => number): EffectRow => {
    const { text } = shownQuantity(unit, system)
    return { label, asIs: text(of(before)), harder: text(of(after)) }
  }
  return [
    row('Hottest hour', 'C', (f) => f.hottest_C),
    row('Hottest week: mean of the air', 'C', (f) => f.week_C),
    row('Hottest week: mean dew point', 'C', (f) => f.dew_C),
    row('Hottest week: wind at night', 'ms', (f) => f.nightWind_ms),
    row('Hottest week: a black plate at air temperature loses at night', 'Wm2', (f) => f.nightLoss_Wm2),
  ]
}
