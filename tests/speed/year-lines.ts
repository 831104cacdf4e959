import { reducePanelHours } from '#model/panels/plate'
import { designOf, panelSpecOf } from '#model/design/assembly'
import { withField } from '#model/design/scenario'
import { planeIrradiance } from '#model/outdoors/sun'
import { YearKernel } from '#inside/model/building/year/kernel.ts'
import { restingRoom } from '#inside/model/building/year/room-start.ts'
import { simulateYear, type YearInputs } from '#model/building/year'
import { withRows } from '#model/building/room'
import { lump } from '../rooms/building/year/hand-made.ts'
import { CoupledSystem } from '../rooms/building/year/coupled-system.ts'
import type { Made } from './made.ts'
import { cpu_s, median, timed_s } from './measure.ts'
import type { Line, Row } from './table.ts'

const RUNS = 9
export const SEARCH = { lean: true, books: false }

/** A year as the search runs it, seconds of CPU in each of the runs. */
export function yearTimes_s({ inputs }: Made): number[] {
  return timed_s(() => simulateYear(inputs, SEARCH), RUNS, 15)
}

/** The same room as air, one lump of fabric and one of floor, each at one temperature behind its faces. */
function threeNodes({ inputs }: Made): Made['inputs'] {
  const { room } = inputs
  const lumped = (name: 'wall' | 'floor', of: (group: (typeof room.groups)[number]) => boolean) => {
    const mine = room.groups.filter(of)
    const area_m2 = mine.reduce((sum, group) => sum + group.area_m2, 0)
    const { outside } = mine.find((group) => group.outside !== null)!
    const capacity_JK = mine.reduce(
      (sum, { area_m2: own_m2, modes }) => sum + own_m2 * modes.held.reduce((all, e) => all + e * e, 0),
      0,
    )
    const shares = (pick: 'sunShare' | 'areaShare') => mine.reduce((sum, group) => sum + group[pick], 0)
    return {
      ...lump(name, area_m2, capacity_JK, { temp_C: outside!.temp_C, through_WK: area_m2 }),
      outside,
      sunShare: shares('sunShare'),
      areaShare: shares('areaShare'),
    }
  }
  const groups = [
    lumped('wall', ({ name }) => name !== 'floor'),
    lumped('floor', ({ name }) => name === 'floor'),
  ]
  return { ...inputs, room: withRows({ ...room, groups }) }
}

/** What the layers of walls, roof and floor cost: a year at equal steps over one of the room of three nodes, turn by turn. */
export function overThreeNodes(made: Made): Row {
  const lumped = threeNodes(made)
  const year = (inputs: Made['inputs']) => timed_s(() => simulateYear(inputs, SEARCH), 1, 2)[0]!
  const values = Array.from({ length: RUNS }, () => year(made.inputs) / year(lumped))
  return {
    name: 'year, over the room of three nodes',
    goal: '≤ 1.5',
    unit: '×',
    values,
    met: (x) => x <= 1.5,
    why: 'The layers of walls, roof and floor are a pass over their modes in every step.',
    work: () => simulateYear(made.inputs, SEARCH),
  }
}

/** The same case with some fields set, its room and plant worked out anew. */
function withFields(
  { stages, scenario, record }: Made,
  fields: Readonly<Record<string, string>>,
): YearInputs {
  const set = Object.entries(fields).reduce((s, [field, value]) => withField(s, field, value), scenario)
  const tank = set.store.kind === 'mixed' || set.store.kind === 'layered'
  const prepared = stages.prepare(set, record)
  return designOf(prepared, { area_m2: 10, storeVolume_m3: tank ? 1 : 0, flow_kgsm2: 0.01 }).inputs
}

/** The kinds of panel, store and delivery that are timed beside a bare panel with a mixed tank and a coil kept dry. */
const KINDS: readonly (readonly [string, Readonly<Record<string, string>>])[] = [
  ['a film over the panel', { 'cover.kind': 'film' }],
  ['a layered tank', { 'store.kind': 'layered' }],
  ['a coil with a drip tray', { 'store.deliveryKind': 'drained' }],
  ['a cooled ceiling from the tank', { 'store.deliveryKind': 'ceiling' }],
  ['pipes in the slab', { 'store.kind': 'slab' }],
  ['a cooled ceiling without a tank', { 'store.kind': 'building', 'store.deliveryKind': 'ceiling' }],
]

/**
 * Years of the search: with a plant in a weather whose resting plate is known from a year before, and not yet known; with its
 * ledger and all columns; of the room left alone; and of each other kind over the first, turn by turn.
 */
export function yearRows(made: Made): Line[] {
  const { inputs } = made
  const { plant } = inputs
  const alone = { ...inputs, plant: null }
  // A panel that is another object has no course of its resting plate yet.
  const afresh = (): YearInputs => ({ ...inputs, plant: plant && { ...plant, panel: { ...plant.panel } } })
  const row = (name: string, run: () => unknown): Row => ({
    name,
    goal: '',
    unit: 'ms',
    values: timed_s(run, RUNS, 15).map((s) => s * 1e3),
    met: null,
  })
  const search = (): unknown => simulateYear(inputs, SEARCH)
  const kinds = KINDS.map(([name, fields]): Row => {
    const own = withFields(made, fields)
    const run = (): unknown => simulateYear(own, SEARCH)
    timed_s(run, 1, 8)
    const values = Array.from({ length: RUNS }, () => timed_s(run, 1, 0)[0]! / timed_s(search, 1, 0)[0]!)
    return { name: `year with ${name}, over the first`, goal: '', unit: '×', values, met: null }
  })
  return [
    row('year with its plant', search),
    row('the same, its resting plate not yet known', () => simulateYear(afresh(), SEARCH)),
    row('the same, with ledger and every column', () => simulateYear(inputs)),
    row('year of the room alone', () => simulateYear(alone, SEARCH)),
    ...kinds,
    {
      name: 'years of the other kinds, and of the ledger, over the same in C',
      goal: '≤ 1.2',
      reason:
        'the twin in C is of a bare panel, a mixed tank and a coil kept dry, without ledger; the rows above say how much longer the others take, of which the modular kernel runs a drip tray.',
    },
  ]
}

/** Two summer days by the adaptive solver, against ours over the same hours; the solver's tolerance holds 0.05 K. */
export function againstOdex({ inputs, prepared }: Made): Row {
  const hours = 48
  const first = prepared.yardstick.hotDayStarts_h[0]!
  const kernel = new YearKernel(inputs, 900, false)
  const { air_C, masses } = restingRoom(inputs.room, [first])
  kernel.setRoom(air_C, masses)
  kernel.plate_C = air_C
  const exact = new CoupledSystem(inputs, { tank_C: [air_C], air_C, plate_C: air_C, masses })
  const values: number[] = []
  const ours_s =
    median(timed_s(() => simulateYear(inputs, SEARCH), RUNS)) * (hours / (inputs.room.hours + 504))
  for (let run = 0; run < RUNS; run++) {
    const start = cpu_s()
    for (let h = first; h < first + hours; h++)
      for (let k = 0; k < 4; k++) {
        kernel.step(h)
        exact.step(h, 900, kernel)
      }
    values.push((cpu_s() - start - ours_s) / ours_s)
  }
  return {
    name: 'year against odex, same equations',
    goal: '≥ 200',
    unit: '×',
    values,
    met: (x) => x >= 200,
    why: 'The solver has fewer steps to take than it had.',
    work: () => simulateYear(inputs, SEARCH),
  }
}

export function reduction(made: Made): Row {
  const { weather, sun, sky } = made.prepared
  const spec = panelSpecOf(made.scenario)
  const { tilt_deg, azimuth_deg, groundAlbedo_frac, horizon_deg } = spec
  const plane = planeIrradiance(sun, weather, tilt_deg, azimuth_deg, groundAlbedo_frac, horizon_deg)
  const times_s = timed_s(() => reducePanelHours(weather, plane, sky, spec), RUNS, 5)
  const year_s = median(yearTimes_s(made))
  return {
    name: 'reducing a year to panel hours, in years',
    goal: '≤ 5',
    unit: '×',
    values: times_s.map((s) => s / year_s),
    met: (x) => x <= 5,
    why: 'Every hour’s convection is fitted anew to the full formulas.',
    work: () => reducePanelHours(weather, plane, sky, spec),
  }
}
