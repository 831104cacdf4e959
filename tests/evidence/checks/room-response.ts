import { modesOf } from '#model/building/construction'
import { FILM_INSIDE_Wm2K, withRows } from '#model/building/room'
import { simulateYear } from '#model/building/year'
import { once, type Check } from '../check.ts'
import { annexC } from '../models/annex-c-year.ts'
import { allAt, plainRoom, type PlainRoom } from '../models/bench-year.ts'
import { dailyResponse, decay_C, twoNode } from '../models/lumped.ts'
import { slabMean } from '../models/slab.ts'

const room = (rest: Omit<Check, 'theme'>): Check => ({ theme: 'Room', ...rest })

const TWO_NODE = { air_JK: 2e5, mass_JK: 4e6, airOut_WK: 40, airMass_WK: 150, massOut_WK: 10 }
/** Air at the hour's end and its mean over the hour, and mass at the hour's end, of a hand-made room. */
function run(spec: Omit<PlainRoom, 'hours'>, hours: number, stepsPerHour = 4) {
  const made = plainRoom({ hours, ...spec })
  const { states, air_C } = simulateYear(
    { room: made, plant: null, nightVentStop_C: 0 },
    { warmUp_h: 0, stepsPerHour, settled: allAt(made, spec.start_C), keepStates: true },
  )
  const shape = made.groups[0]?.modes.inner[0] ?? 0
  return { air_C: states!.air_C, airMean_C: air_C, mass_C: states!.masses.map((z) => z * shape) }
}

const cooling = once(() => run({ ...TWO_NODE, start_C: 10, outdoor_C: () => 0 }, 30).mass_C)
const single = once(() => run({ start_C: 30, outdoor_C: () => 20, air_JK: 2.2e6, airOut_WK: 60 }, 30).air_C)

/** Amplitude and lag of a node after many days of a daily sinus outdoors, per kelvin. */
function dailySwing(
  spec: Omit<PlainRoom, 'hours' | 'start_C' | 'outdoor_C'>,
  pick: 'mass_C' | 'air_C' | 'airMean_C',
) {
  const days = 30
  const outdoor_C = (h: number) => Math.cos((2 * Math.PI * (h + 0.5)) / 24)
  const course = run({ ...spec, start_C: 0, outdoor_C }, days * 24, 12)[pick]
  const at = pick === 'airMean_C' ? 0.5 : 1
  let [c, s] = [0, 0]
  for (let h = (days - 1) * 24; h < days * 24; h++) {
    c += course[h]! * Math.cos((2 * Math.PI * (h + at)) / 24)
    s += course[h]! * Math.sin((2 * Math.PI * (h + at)) / 24)
  }
  return { ratio: Math.hypot(c, s) / 12, lag_h: (Math.atan2(s, c) * 24) / (2 * Math.PI) }
}
const oneNodeSwing = once(() => dailySwing({ air_JK: 2.2e6, airOut_WK: 60 }, 'air_C'))
const massSwing = once(() => dailySwing(TWO_NODE, 'mass_C'))
const airSwing = once(() => dailySwing(TWO_NODE, 'airMean_C'))

/** Slab of 100 mm with an insulated back, built of layers, under the film of convection alone: mean left after hours. */
function slabAfter(time_h: number): number {
  const layer = { thickness_m: 0.1, conductivity_WmK: 1.8, density_kgm3: 2400, specificHeat_JkgK: 1000 }
  const modes = modesOf([layer], {
    innerFilm_Wm2K: FILM_INSIDE_Wm2K,
    outerFilm_Wm2K: null,
    pipeDepth_m: null,
  })
  const plain = plainRoom({ hours: 24, start_C: 0, outdoor_C: () => 0, air_JK: 1, airOut_WK: 1e9 })
  const made = withRows({
    ...plain,
    groups: [{ name: 'contents', area_m2: 20, modes, outside: null, sunShare: 0, areaShare: 1 }],
  })
  const { states } = simulateYear(
    { room: made, plant: null, nightVentStop_C: 0 },
    { warmUp_h: 0, settled: allAt(made, 1), keepStates: true },
  )
  const { masses, count } = states!
  let held = 0
  let all = 0
  for (let k = 0; k < count; k++) {
    held += modes.held[k]! * masses[(time_h - 1) * count + k]!
    all += modes.held[k]! ** 2
  }
  return held / all
}

export const roomResponseChecks: readonly Check[] = [
  ...([6, 24] as const).map((hours) =>
    room({
      quantity: `room of air and mass cooling from 10 to 0 °C: mass after ${hours} h`,
      unit: '°C',
      kind: 'exact' as const,
      source: 'exact' as const,
      where: 'eigenvalues of the two-node room',
      got: () => cooling()[hours - 1]!,
      want: Number(twoNode(TWO_NODE, [10, 10], 0, 0, hours)[1].toFixed(5)),
      within: 0.01,
      because: 'a hundredth of a kelvin: quarter-hour steps',
    }),
  ),
  ...([1, 6, 24] as const).map((hours) =>
    room({
      quantity: `one mass cooling from 30 to 20 °C with a time constant of 10.2 h: after ${hours} h`,
      unit: '°C',
      kind: 'exact' as const,
      source: 'exact' as const,
      where: 'exponential',
      got: () => single()[hours - 1]!,
      want: Number(decay_C(2.2e6, 60, 30, 20, hours).toFixed(5)),
      within: 0.002,
      because: 'exact at any step; backward Euler in hours would be 0.1 K off',
    }),
  ),
  room({
    quantity: 'one mass under a daily swing: amplitude over the outdoor one',
    unit: '–',
    kind: 'exact',
    source: 'exact',
    where: '1/√(1 + (ωτ)²)',
    got: () => oneNodeSwing().ratio,
    want: Number(dailyResponse(2.2e6, 60).ratio.toFixed(6)),
    within: 0.0015,
    because: 'hourly steps of the drive shrink it by 0.3 %',
  }),
  room({
    quantity: 'one mass under a daily swing: lag',
    unit: 'h',
    kind: 'exact',
    source: 'exact',
    where: 'atan(ωτ)/ω',
    got: () => oneNodeSwing().lag_h,
    want: Number(dailyResponse(2.2e6, 60).lag_h.toFixed(4)),
    within: 0.02,
    because: 'a minute',
  }),
  ...(
    [
      ['mass', massSwing, 0.1369083, 5.686674],
      ['air', airSwing, 0.2436898, 2.035305],
    ] as const
  ).flatMap(([name, swing, ratio, lag]) => [
    room({
      quantity: `two-node room under a daily swing: ${name}, amplitude`,
      unit: '–',
      kind: 'exact' as const,
      source: 'exact' as const,
      where: 'complex response, worked out apart',
      got: () => swing().ratio,
      want: ratio,
      within: 0.0015,
      because: 'hourly steps of the drive',
    }),
    room({
      quantity: `two-node room under a daily swing: ${name}, lag`,
      unit: 'h',
      kind: 'exact' as const,
      source: 'exact' as const,
      where: 'complex response, worked out apart',
      got: () => swing().lag_h,
      want: lag,
      within: 0.03,
      because: 'two minutes',
    }),
  ]),
  room({
    quantity: 'slab of 100 mm of concrete, insulated back, built of layers: mean left after 4 h',
    unit: '–',
    kind: 'exact',
    source: 'carslaw',
    where: '§3.11, insulated back, series of 40 terms',
    got: () => slabAfter(4),
    want: Number(
      slabMean(
        { thickness_m: 0.1, conductivity_WmK: 1.8, capacity_Jm3K: 2.4e6, surface_Wm2K: 2.5 },
        4,
      ).toFixed(5),
    ),
    within: 0.003,
    because: 'a third of a percent: a few modes for a whole slab',
  }),
  ...annexC(),
]
