import { agedCoating } from '#model/panels/coating'
import { describedRoom, FIELDS, MEASURE_NAMES, MEASURE_SIZES, type Scenario } from '#model/design/scenario'
import { floor_m2, walls_m2, windows_m2 } from './geometry.ts'
import type { Measure } from './measure.ts'

/** Better insulated than this, W/m²K, more of it is not looked at. */
const GOOD_U_Wm2K = 0.3
const withRoom = (scenario: Scenario, room: Partial<Scenario['room']>): Scenario => ({
  ...scenario,
  room: { ...scenario.room, ...room },
})
const toward = (from: number, to: number, amount: number): number => from + amount * (to - from)
const insulated_Wm2K = (U_Wm2K: number, amount: number): number =>
  1 / (1 / U_Wm2K + (amount * MEASURE_SIZES.insulation_m) / MEASURE_SIZES.insulation_WmK)
const coatingOf = ({ coating }: Scenario) => agedCoating(coating, coating.soiling_1y, coating.age_y)
const none = () => 0

/** A measure that leaves the description itself where there is none of it. */
const measure = (rest: Measure): Measure => ({
  ...rest,
  apply: (scenario, amount, weather) => (amount === 0 ? scenario : rest.apply(scenario, amount, weather)),
})

/** Insulation put on what that U-value is of. */
const insulation = (
  at: 'roofU_Wm2K' | 'wallU_Wm2K',
  rest: Omit<Measure, 'fits' | 'apply' | 'power_W'>,
): Measure =>
  measure({
    ...rest,
    fits: (s) => describedRoom(s.room)[at] > GOOD_U_Wm2K,
    apply: (s, amount) => {
      const room = describedRoom(s.room)
      return withRoom(s, { ...room, [at]: insulated_Wm2K(room[at], amount) })
    },
    power_W: none,
  })

export const BUILDING_MEASURES: readonly Measure[] = [
  measure({
    id: 'paintRoof',
    name: MEASURE_NAMES.paintRoof,
    onRoof: true,
    fits: (s) => coatingOf(s).solarReflectance_frac > s.room.roofReflectance_frac + 0.05,
    apply: (s, amount) => {
      const coating = coatingOf(s)
      return withRoom(s, {
        roofReflectance_frac: toward(s.room.roofReflectance_frac, coating.solarReflectance_frac, amount),
        roofEmittance_frac: toward(s.room.roofEmittance_frac, coating.windowEmittance_frac, amount),
      })
    },
    price: (s) => s.prices.roofPaint_perm2 * floor_m2(s),
    power_W: none,
    sideEffect: 'The roof takes up less sun in winter too, so heating rises. It gets dirty: wash it.',
  }),
  insulation('roofU_Wm2K', {
    id: 'insulateRoof',
    name: MEASURE_NAMES.insulateRoof,
    onRoof: true,
    price: (s) => s.prices.roofInsulation_perm2 * floor_m2(s),
    sideEffect: 'Saves heating. Inside insulation needs a vapour barrier on its warm side.',
  }),
  insulation('wallU_Wm2K', {
    id: 'insulateWalls',
    name: MEASURE_NAMES.insulateWalls,
    onRoof: false,
    price: (s) => s.prices.wallInsulation_perm2 * (walls_m2(s) - windows_m2(s)),
    sideEffect: 'Saves heating. Without night opening it also keeps inner gains in.',
  }),
  measure({
    id: 'shade',
    name: MEASURE_NAMES.shade,
    onRoof: false,
    fits: (s) => windows_m2(s) > 0 && s.room.shading_frac > 0,
    apply: (s, amount) =>
      withRoom(s, { shading_frac: s.room.shading_frac * toward(1, MEASURE_SIZES.blind_frac, amount) }),
    price: (s) => s.prices.shade_perm2 * windows_m2(s),
    power_W: none,
    sideEffect: 'Takes winter sun unless it is drawn up; less daylight.',
  }),
  measure({
    id: 'glazing',
    name: MEASURE_NAMES.glazing,
    onRoof: false,
    fits: (s) => windows_m2(s) > 0 && s.room.windowU_Wm2K > 2,
    apply: (s, amount) =>
      withRoom(s, {
        windowGain_frac: s.room.windowGain_frac * toward(1, MEASURE_SIZES.film_frac, amount),
        windowU_Wm2K: 1 / (1 / s.room.windowU_Wm2K + amount * MEASURE_SIZES.secondPane_m2KW),
      }),
    price: (s) => s.prices.glazing_perm2 * windows_m2(s),
    power_W: none,
    sideEffect: 'Less winter sun; film on the inside of double panes can crack them: ask the maker.',
  }),
  measure({
    id: 'mass',
    name: MEASURE_NAMES.mass,
    onRoof: false,
    fits: (s) => s.room.contents_Jm2K + MEASURE_SIZES.jars_Jm2K <= FIELDS.room.contents_Jm2K.max,
    apply: (s, amount) =>
      withRoom(s, { contents_Jm2K: s.room.contents_Jm2K + amount * MEASURE_SIZES.jars_Jm2K }),
    price: (s) => s.prices.mass_perm2 * floor_m2(s),
    power_W: none,
    sideEffect: 'About 50 kg for each m² of floor: ask whether the floor carries it.',
  }),
  measure({
    id: 'fewerGains',
    name: MEASURE_NAMES.fewerGains,
    onRoof: false,
    fits: (s) => s.room.gains_W.some((gain) => gain > 0),
    apply: (s, amount) =>
      withRoom(s, {
        gains_W: s.room.gains_W.map((gain) => gain * toward(1, 1 - MEASURE_SIZES.gainsAway_frac, amount)),
      }),
    price: (s) => s.prices.lessHeat_each,
    power_W: none,
    sideEffect: 'Lights, machines or hot work moved or changed; a little more heating in winter.',
  }),
  measure({
    id: 'airtight',
    name: MEASURE_NAMES.airtight,
    onRoof: false,
    fits: (s) => s.room.airChange_1h > 0.5,
    apply: (s, amount) => {
      const left = toward(1, 1 - MEASURE_SIZES.leaksAway_frac, amount)
      return withRoom(s, {
        airChange_1h: s.room.airChange_1h * left,
        airChangeWind_1hms: s.room.airChangeWind_1hms * left,
      })
    },
    price: (s) => s.prices.sealing_perm2 * walls_m2(s),
    power_W: none,
    sideEffect:
      'Saves heating; damper air inside: watch for mould, and never seal a room with an open flame.',
  }),
]
