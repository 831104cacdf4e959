import type { Departure } from './departure.ts'
import { HOUR_ERRORS, nightOf } from './errors.ts'
import type { AsBuiltInputs } from './inputs-type.ts'
import { runningHours } from './log.ts'
import { loopDuty } from '#model/panels/loop'

/** A row that is not a temperature of the panel: its reading and what a departure predicts for it. */
export interface OtherRow {
  readonly kind: 'inlet' | 'tank' | 'flow' | 'unsteady'
  readonly hour: number
  readonly night: number
  readonly noise: number
  readonly measured: number
  readonly predict: (departure: Departure) => number
}

/** Shortest dark stretch over which the tank is judged, h. */
const SHORTEST_NIGHT_H = 4
/** W/m² on the plane under which no load is taken to cool a room: dark. */
const DARK_WM2 = 5
/** Error of a night's heat, as a share of what it does to the tank. Common practice, no source. */
const HEAT_ERROR = 0.05
/** One error of single temperatures, K. */
const SENSOR_K = HOUR_ERRORS.sensors_K / Math.SQRT2
/** A steady pump's metered flow scatters by about this from hour to hour; twice or half is usual. Common practice, no source. */
const STEADY_FLOW = 0.02
const STEADY_LOG_SD = 0.6
/** Share of the airy area by which its flow scatters. Common practice, no source. */
const AIR_FLICKER = 0.3
const LEAST_TANK_FRAC = 0.05

/** Inlet over the tank in running hours: warm water drawn with the cold shows as a share of room over tank. */
export function inletRows({ log, weather }: AsBuiltInputs): OtherRow[] {
  const { store_C, room_C, panelIn_C } = log
  if (store_C === null) return []
  return runningHours(log).flatMap((hour) => {
    const store = store_C[hour]!
    const warm = room_C !== null && Number.isFinite(room_C[hour]) ? room_C[hour]! : weather.airTemp_C[hour]!
    if (!Number.isFinite(store)) return []
    return [
      {
        kind: 'inlet' as const,
        hour,
        night: nightOf(hour),
        noise: HOUR_ERRORS.sensors_K,
        measured: panelIn_C[hour]! - store,
        predict: ({ inletOverTank_K, mixing_frac }: Departure) =>
          inletOverTank_K + mixing_frac * (warm - store),
      },
    ]
  })
}

interface Night {
  readonly hour: number
  readonly hours_h: number
  readonly heat_J: number
  readonly change_K: number
}

/** The tank's change over each dark stretch with the pump running, against the heat that the panel took from it. */
export function nightRows(inputs: AsBuiltInputs): OtherRow[] {
  const nights = nightsOf(inputs)
  const heat_J = nights.reduce((sum, night) => sum + night.heat_J, 0)
  const fall_K = -nights.reduce((sum, night) => sum + night.change_K, 0)
  if (nights.length < 3 || heat_J <= 0 || fall_K <= 0) return []
  const capacity_JK = heat_J / fall_K
  return nights.map(({ hour, hours_h, heat_J, change_K }) => ({
    kind: 'tank' as const,
    hour: -1,
    night: nightOf(hour),
    noise: Math.hypot(SENSOR_K * Math.SQRT2, (HEAT_ERROR * heat_J) / capacity_JK),
    measured: change_K,
    predict: ({ tankLog, leak_1d, tankWarming_Kh }: Departure) => {
      const left = Math.max(LEAST_TANK_FRAC, 1 - (leak_1d * hour) / 24)
      return -heat_J / (capacity_JK * Math.exp(tankLog) * left) + tankWarming_Kh * hours_h
    },
  }))
}

function nightsOf({ log, plane, loop, area_m2 }: AsBuiltInputs): Night[] {
  const { store_C, panelIn_C, panelOut_C, flow_kgs } = log
  if (store_C === null) return []
  const designed = loopDuty(loop, area_m2)
  const perFlow = designed.capacityRate_WK / designed.flow_kgs
  const rate_WK = (hour: number) => (flow_kgs === null ? designed.capacityRate_WK : flow_kgs[hour]! * perFlow)
  const dark = runningHours(log).filter(
    (hour) => plane.total_Wm2[hour]! < DARK_WM2 && Number.isFinite(store_C[hour]),
  )
  const nights: Night[] = []
  for (let from = 0; from < dark.length;) {
    let to = from
    while (to + 1 < dark.length && dark[to + 1] === dark[to]! + 1) to += 1
    const [first, last] = [dark[from]!, dark[to]!]
    from = to + 1
    if (last - first < SHORTEST_NIGHT_H) continue
    let heat_J = 0
    for (let hour = first; hour <= last; hour++) {
      const weight = hour === first || hour === last ? 0.5 : 1
      heat_J += weight * 3600 * rate_WK(hour) * (panelIn_C[hour]! - panelOut_C[hour]!)
    }
    const change_K = store_C[last]! - store_C[first]!
    nights.push({ hour: (first + last) / 2, hours_h: last - first, heat_J, change_K })
  }
  return nights
}

/** What a meter says: the flow kept, and how steady it is. */
export function flowRows({ log, loop, area_m2 }: AsBuiltInputs): OtherRow[] {
  const { flow_kgs } = log
  if (flow_kgs === null) return []
  const design_kgs = loopDuty(loop, area_m2).flow_kgs
  const logs = runningHours(log)
    .map((hour) => Math.log(flow_kgs[hour]! / design_kgs))
    .sort((a, b) => a - b)
  const middle = logs[Math.floor(logs.length / 2)]!
  // Half the distance between the sixth parts: the scatter without the odd reading.
  const scatter = (logs[Math.floor((5 * logs.length) / 6)]! - logs[Math.floor(logs.length / 6)]!) / 2
  const whole = { hour: -1, night: -1 }
  return [
    { ...whole, kind: 'flow', noise: 0.01, measured: middle, predict: ({ meterLog }) => meterLog },
    {
      ...whole,
      kind: 'unsteady',
      noise: STEADY_LOG_SD,
      measured: Math.log(Math.hypot(STEADY_FLOW / 2, scatter)),
      predict: ({ airy_frac }) => Math.log(Math.hypot(STEADY_FLOW, AIR_FLICKER * airy_frac)),
    },
  ]
}
