import { designOf, type Prepared } from '#model/design/assembly'
import { type Exceedance, exceedance } from '#model/design/target'
import type { Scenario } from '#model/design/scenario'
import { simulateYear, type YearInputs, type YearResult } from '#model/building/year'
import { YearKernel } from '#inside/model/building/year/kernel.ts'
import type { WeatherRecord } from '#model/outdoors/weather'
import type { Stages } from '#studies/stages.ts'
import { type Comparisons, worse } from './compared.ts'
import { hottest } from './hottest.ts'
import type { OwnBuilt } from './light.ts'

/**
 * Thicker insulation keeps a thing from following what lies about it. Whether the room gains by that depends on which of
 * the two is colder: a tank warmer than the night air is cooled by a thin skin, one in the cooled room cools it through its
 * skin, a plate warmer than the air sheds heat through its back. So “never a hotter room” is asked where it is true by
 * physics, and in every scenario:
 *
 * - the back of the panel: in every hour of the year the resting plate is at least as far from the air, on the same side;
 * - a tank, in the place it has: ten kelvin colder than all about it and shut off, it warms no faster;
 * - a tank with its plant, in a place never colder than it, all year: the room is no hotter. The place is one that a tank
 *   could have, warmer than room, outdoors and tank were, not than a roof in the sun: far warmer, what a layered tank keeps on
 *   top is hot, and cold that a thinner skin left to the panel until later is used later.
 */
const THICKER = 1.5

/** The plate at rest is found to a thousandth of a kelvin or so, K. */
const REST_K = 0.01
/** How much colder than all about it a tank that is shut off begins, K, and how long it is held, h. */
const COLDER_K = 10
const HELD_h = 10
/** What may differ by rounding alone, K. */
const ROUNDING_K = 1e-9

/** A warm place is this much warmer than all that the tank and its room have been, K: it warms both a little itself. */
const WARMER_K = 20
/** Tries of a place that the tank in it never is warmer than. */
const PLACES = 3

const STEP_S = 900

export function insulationComplaints(
  stages: Stages,
  scenario: Scenario,
  before: OwnBuilt & { readonly year: YearResult },
  weather: WeatherRecord,
  comparisons: Comparisons,
): string[] {
  const { design, prepared } = before
  const thicker = { ...scenario.store, insulation_m: scenario.store.insulation_m * THICKER }
  const { candidate, inputs } = design
  const after = designOf(
    { ...prepared, scenario: { ...scenario, store: thicker } },
    candidate,
    'built',
  ).inputs
  comparisons.made++
  const back = backComplaints(stages, scenario, prepared, weather)
  if (inputs.plant === null || inputs.plant.store.layerCapacity_JK.length === 0) return back
  comparisons.made += 2
  const held = [inputs, after].map((each) => heldTank_C(each, prepared)) as [number, number]
  const warmer = held[1] > held[0] + ROUNDING_K
  const judged = inWarmPlaces(before, after)
  if (judged === null) return [...back, `a tank warmer than any place`]
  return [
    ...back,
    ...(warmer ? [`a thicker tank, shut off: ${held[0].toFixed(4)} → ${held[1].toFixed(4)} °C`] : []),
    ...worse(...judged).map((what) => `a thicker tank, in a warm place: ${what}`),
  ]
}

/** Hours in which the plate at rest is nearer the air, or on its other side, though its back is kept better. */
function backComplaints(
  stages: Stages,
  scenario: Scenario,
  { panel: before }: Prepared,
  weather: WeatherRecord,
): string[] {
  const backLoss_Wm2K = scenario.panel.backLoss_Wm2K / THICKER
  const changed = { ...scenario, panel: { ...scenario.panel, backLoss_Wm2K } }
  const { panel: after } = stages.panelOf(changed, weather)
  let nearer_h = 0
  let worst_K = 0
  for (let h = 0; h < before.hours; h++) {
    const was_K = before.equilibrium_C[h]! - before.air_C[h]!
    const is_K = after.equilibrium_C[h]! - after.air_C[h]!
    const nearer_K = Math.abs(was_K) - is_K * Math.sign(was_K)
    if (nearer_K <= REST_K) continue
    nearer_h++
    worst_K = Math.max(worst_K, nearer_K)
  }
  return nearer_h === 0
    ? []
    : [`a thicker back of the panel: at rest ${worst_K.toFixed(3)} K nearer the air (${nearer_h} h)`]
}

/** Tank of a plant that is shut off, in the room's hottest hour held on, after it began colder than all about it, mean °C. */
function heldTank_C({ room, plant, nightVentStop_C }: YearInputs, { doNothing }: Prepared): number {
  const { states } = doNothing
  const hour = hottestHour(doNothing.room_C)
  const shut: YearInputs = {
    room,
    nightVentStop_C,
    plant: {
      ...plant!,
      store: { ...plant!.store, delivery_WK: 0, deliveryPower_W: 0 },
      allowed: new Uint8Array(room.hours),
    },
  }
  const kernel = new YearKernel(shut, STEP_S, false)
  kernel.setRoom(
    states!.air_C[hour]!,
    states!.masses.subarray(hour * states!.count, (hour + 1) * states!.count),
  )
  const { nodes, temp_C } = kernel
  temp_C.fill(Math.min(states!.air_C[hour]!, room.outdoor_C[hour]!) - COLDER_K, nodes.top, nodes.bottom + 1)
  for (let k = 0; k < HELD_h; k++) kernel.hour(hour)
  let sum_C = 0
  for (let layer = nodes.top; layer <= nodes.bottom; layer++) sum_C += temp_C[layer]!
  return sum_C / nodes.layers
}

/**
 * How both designs do in a place never colder than the tank, which is seen to in the year of the first; null where no
 * place is found. Windows stay shut there, as the air of the place would come in by them.
 */
function inWarmPlaces(
  { design, prepared, year }: OwnBuilt & { readonly year: YearResult },
  after: YearInputs,
): [Exceedance, Exceedance] | null {
  // the room begins as it was outdoors, not as if it had lain in that place
  const settled = prepared.doNothing.states
  let warmest_C = Math.max(...[prepared.room.outdoor_C, year.room_C, year.store_C].map(hottest))
  for (let place = 0; place < PLACES; place++) {
    const place_C = WARMER_K + warmest_C
    const first = simulateYear(inWarmPlace(design.inputs, place_C), { settled, books: false })
    const tank_C = hottest(first.store_C)
    if (tank_C <= place_C) {
      const { room_C } = simulateYear(inWarmPlace(after, place_C), { settled, lean: true, books: false })
      return [exceedance(first.room_C, prepared.yardstick), exceedance(room_C, prepared.yardstick)]
    }
    warmest_C = tank_C
  }
  return null
}

/** The same design with tank and pipes in a place of one temperature. */
function inWarmPlace(inputs: YearInputs, place_C: number): YearInputs {
  const { room, plant } = inputs
  const outdoor_C = new Float64Array(room.hours).fill(place_C)
  return {
    ...inputs,
    room: { ...room, outdoor_C },
    plant: {
      ...plant!,
      store: { ...plant!.store, lossTo: 'outside' },
    },
  }
}

function hottestHour(column: Float64Array): number {
  let at = 0
  for (let h = 1; h < column.length; h++) if (column[h]! > column[at]!) at = h
  return at
}
