import { describedRoom } from './described-room.ts'
import { FIELDS, type Scenario } from './fields.ts'
import { MEASURE_SIZES } from './measure-sizes.ts'
import type { MeasureId } from './way-field.ts'

/**
 * The description as it was before measures at their full amount, from what each of them does. A painted roof, a night opening
 * and a ceiling fan have taken the place of what was there: for those the starting value is taken.
 * @param ids  measures that the description has
 */
export function beforeMeasures(scenario: Scenario, ids: readonly MeasureId[]): Scenario {
  return ids.reduce((s, id) => BEFORE[id](s), scenario)
}

const withRoom = (scenario: Scenario, room: Partial<Scenario['room']>): Scenario => ({
  ...scenario,
  room: { ...scenario.room, ...room },
})

function bare(scenario: Scenario, at: 'roofU_Wm2K' | 'wallU_Wm2K'): Scenario {
  const room = describedRoom(scenario.room)
  const { insulation_m, insulation_WmK } = MEASURE_SIZES
  return withRoom(scenario, { ...room, [at]: without(room[at], insulation_m / insulation_WmK, at) })
}

/** A U-value without a resistance, W/m²K; the most its field takes where nothing would be left. */
function without(
  U_Wm2K: number,
  taken_m2KW: number,
  at: 'roofU_Wm2K' | 'wallU_Wm2K' | 'windowU_Wm2K',
): number {
  const left_m2KW = 1 / U_Wm2K - taken_m2KW
  const most_Wm2K = FIELDS.room[at].max
  return left_m2KW > 1 / most_Wm2K ? 1 / left_m2KW : most_Wm2K
}

const BEFORE: Readonly<Record<MeasureId, (scenario: Scenario) => Scenario>> = {
  paintRoof: (s) =>
    withRoom(s, {
      roofReflectance_frac: FIELDS.room.roofReflectance_frac.default,
      roofEmittance_frac: FIELDS.room.roofEmittance_frac.default,
    }),
  insulateRoof: (s) => bare(s, 'roofU_Wm2K'),
  insulateWalls: (s) => bare(s, 'wallU_Wm2K'),
  shade: (s) => withRoom(s, { shading_frac: Math.min(1, s.room.shading_frac / MEASURE_SIZES.blind_frac) }),
  glazing: (s) =>
    withRoom(s, {
      windowGain_frac: Math.min(1, s.room.windowGain_frac / MEASURE_SIZES.film_frac),
      windowU_Wm2K: without(s.room.windowU_Wm2K, MEASURE_SIZES.secondPane_m2KW, 'windowU_Wm2K'),
    }),
  mass: (s) =>
    withRoom(s, {
      contents_Jm2K: Math.max(FIELDS.room.contents_Jm2K.min, s.room.contents_Jm2K - MEASURE_SIZES.jars_Jm2K),
    }),
  fewerGains: (s) =>
    withRoom(s, { gains_W: s.room.gains_W.map((gain) => gain / (1 - MEASURE_SIZES.gainsAway_frac)) }),
  airtight: (s) => {
    const left = 1 - MEASURE_SIZES.leaksAway_frac
    return withRoom(s, {
      airChange_1h: s.room.airChange_1h / left,
      airChangeWind_1hms: s.room.airChangeWind_1hms / left,
    })
  },
  nightOpening: (s) => withRoom(s, { nightVent: false }),
  nightFan: (s) => withRoom(s, { nightVent: false }),
  ceilingFan: (s) => ({
    ...s,
    target: { ...s.target, airSpeed_ms: FIELDS.target.airSpeed_ms.default },
  }),
}
