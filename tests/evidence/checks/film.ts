import { airConductivity_WmK, rayleighGroup, uprightGap } from '#model/outdoors/air'
import { edgeLoss_Wm2K } from '#inside/model/panels/plate/edge-loss.ts'
import type { Check } from '../check.ts'
import { FILM_CASES, type FilmCase } from '../film/cases.ts'
import { modelledBelow_K } from '../film/choice.ts'

const film = (rest: Omit<Check, 'theme'>): Check => ({ theme: 'Film covers', ...rest })

const MISSES: Readonly<Record<string, string>> = {
  'near-black emitter on a mirror, by day':
    'a board of 0.1 m loses much at its edges and to wind here; size, wind and humidity of the test were not read',
  'selective emitter under 12 mm of infrared-clear aerogel at solar noon in a high desert':
    'optics of the aerogel outside the window, humidity and insulation of the rig were not read; its edges here are those of plain foam',
  'porous acrylic at noon': 'humidity, wind and insulation were not read; air, dew point and sun are assumed',
}

const fieldCase = (one: FilmCase): Check => {
  const miss = MISSES[one.name]
  return film({
    quantity: `under film: ${one.name} (${one.assumed}): below air`,
    unit: 'K',
    kind: 'measured',
    source: one.source,
    where:
      typeof one.below_K === 'number'
        ? one.fromMemory
          ? ''
          : 'abstract or first page'
        : `between ${one.below_K[0]} and ${one.below_K[1]} K as we read it`,
    ...(one.fromMemory ? { fromMemory: true as const } : {}),
    got: () => modelledBelow_K(one),
    want: one.below_K,
    within: 2,
    because: '2 K: conditions are incompletely reported, those assumed are stated',
    ...(miss === undefined ? {} : { miss }),
  })
}

const gap_Wm2K = (gap_m: number, tilt_deg: number, difference_K: number): number => {
  const out = { nusselt: 1, growth: 0 }
  uprightGap(rayleighGroup(15, 101325) * difference_K * gap_m ** 3, out)
  const nusselt = 1 + (out.nusselt - 1) * Math.sin((tilt_deg * Math.PI) / 180)
  return (airConductivity_WmK(15) / gap_m) * nusselt
}

const gap = ([gap_m, tilt_deg, difference_K, want]: readonly [number, number, number, number]): Check =>
  film({
    quantity: `gap of ${1000 * gap_m} mm, ${tilt_deg}°, colder below by ${difference_K} K: conductance`,
    unit: 'W/m²K',
    kind: 'independent calculation',
    source: 'elSherbiny',
    where: 'worked out apart from this program',
    fromMemory: true,
    got: () => gap_Wm2K(gap_m, tilt_deg, difference_K),
    want,
    within: 0.03 * want,
    because: '3 %: the other calculation’s conductivity of air is not given',
  })

const edge = ([across_m, want]: readonly [number, number]): Check =>
  film({
    quantity: `back and edges of a disc ${across_m} m across, flush in 50 mm of foam`,
    unit: 'W/m²K',
    kind: 'independent calculation',
    source: 'discInFoam',
    got: () => 0.77 + edgeLoss_Wm2K(across_m / 4),
    want,
    within: 0.1 * want,
    because: '10 %: the rule’s own claim; the finite volumes beside it move 2–6 % when halved',
  })

const GAPS = [
  [0.025, 10, 5, 1.07],
  [0.025, 10, 10, 1.13],
  [0.025, 30, 5, 1.16],
  [0.025, 30, 10, 1.34],
  [0.05, 10, 5, 0.66],
  [0.05, 10, 10, 0.72],
  [0.05, 30, 5, 0.95],
  [0.05, 30, 10, 1.12],
] as const
const DISCS = [
  [0.1, 1.92],
  [0.2, 1.28],
  [0.3, 1.07],
  [0.5, 0.9],
] as const

export const filmChecks: readonly Check[] = [
  ...FILM_CASES.map(fieldCase),
  ...GAPS.map(gap),
  ...DISCS.map(edge),
]
