import { FIELDS, MEASURE_NAMES, MEASURE_SIZES, type Scenario } from '#model/design/scenario'
import { feelsAir } from '#model/design/target'
import type { Measure } from './measure.ts'
import { meanOpeningFlow_m3h } from './night-flow.ts'
import { floor_m2, volume_m3, windows_m2 } from './geometry.ts'

/** Power of a night fan for each m³/h, W (500 W per m³/s; common practice, no source). */
const FAN_Wm3h = 500 / 3600
/** Power of one ceiling fan, W (common practice, no source). */
const CEILING_FAN_W = 30

function opened(scenario: Scenario, changes_1h: number): Scenario {
  const { nightVent, nightAirChange_1h } = scenario.room
  const before = nightVent ? nightAirChange_1h : 0
  const nightAirChange = Math.min(FIELDS.room.nightAirChange_1h.max, Math.max(before, changes_1h))
  return { ...scenario, room: { ...scenario.room, nightVent: true, nightAirChange_1h: nightAirChange } }
}

const ceilingFans = (scenario: Scenario): number =>
  Math.max(1, Math.round(floor_m2(scenario) / MEASURE_SIZES.ceilingFan_m2))

export const AIR_MEASURES: readonly Measure[] = [
  {
    id: 'nightOpening',
    name: MEASURE_NAMES.nightOpening,
    onRoof: false,
    fits: (s) => !s.room.nightVent,
    apply: (s, amount, weather) => {
      if (amount === 0) return s
      const area_m2 = amount * MEASURE_SIZES.opening_m2m2 * floor_m2(s)
      const flow_m3h =
        MEASURE_SIZES.mesh_frac * meanOpeningFlow_m3h(area_m2, MEASURE_SIZES.openingHeight_m, weather)
      return opened(s, flow_m3h / volume_m3(s))
    },
    price: (s) => {
      const needed_m2 = MEASURE_SIZES.opening_m2m2 * floor_m2(s)
      const vents_m2 = windows_m2(s) > needed_m2 ? 0 : needed_m2
      return s.prices.openingFittings_each + s.prices.opening_perm2 * vents_m2
    },
    power_W: () => 0,
    sideEffect: 'Counts only nights on which they stay open: think of rain, burglars and insects.',
  },
  {
    id: 'nightFan',
    name: MEASURE_NAMES.nightFan,
    onRoof: false,
    fits: () => true,
    apply: (s, amount) => (amount === 0 ? s : opened(s, amount * MEASURE_SIZES.fanChanges_1h)),
    price: (s) =>
      s.prices.nightFan_each *
      Math.ceil((MEASURE_SIZES.fanChanges_1h * volume_m3(s)) / MEASURE_SIZES.oneFan_m3h),
    power_W: (s) => MEASURE_SIZES.fanChanges_1h * volume_m3(s) * FAN_Wm3h,
    sideEffect: 'Noise at night, and humid air on humid nights.',
  },
  {
    id: 'ceilingFan',
    name: MEASURE_NAMES.ceilingFan,
    onRoof: false,
    fits: ({ target }) => feelsAir(target.keptFor) && target.airSpeed_ms < MEASURE_SIZES.ceilingFan_ms,
    apply: (s, amount) => {
      const before_ms = s.target.airSpeed_ms
      const airSpeed_ms = before_ms + amount * Math.max(0, MEASURE_SIZES.ceilingFan_ms - before_ms)
      return amount === 0 ? s : { ...s, target: { ...s.target, airSpeed_ms } }
    },
    price: (s) => s.prices.ceilingFan_each * ceilingFans(s),
    power_W: (s) => CEILING_FAN_W * ceilingFans(s),
    sideEffect: 'Moves the limit of comfort and cools nothing: switch it off when nobody is there.',
  },
]
