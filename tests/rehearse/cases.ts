/* The cases of the rehearsal: each fault in four sizes that matter, sound panels, and two faults at once. Sizes, climates
 * and dates were chosen before any judging seed was run. */
import type { Departure, RealFault } from '#model/handover/as-built'

export type Size = Partial<Departure>

/** A fortnight in each of three climates: clear and dry, seaside, and cloudy. */
export const CLIMATES = [
  { place: 'semi-arid-south', firstDay: 10 },
  { place: 'mediterranean-coast', firstDay: 190 },
  { place: 'continental', firstDay: 180 },
] as const

const log = Math.log
/** From a fault that a careful maker would want to know of to one that nobody could overlook. */
export const SIZES: Readonly<Record<RealFault, readonly Size[]>> = {
  lowFlow: [0.7, 0.5, 0.35, 0.2].map((share) => ({ meterLog: log(share) })),
  air: [0.2, 0.3, 0.45, 0.6].map((airy_frac) => ({ airy_frac })),
  deadModule: [1 / 6, 1 / 4, 1 / 3, 1 / 2].map((dead_frac) => ({ dead_frac })),
  poorBond: [0.3, 0.2, 0.12, 0.06].map((share) => ({ bondLog: log(share) })),
  dirty: [0.05, 0.1, 0.15, 0.25].map((soil_frac) => ({ soil_frac, veil_frac: 0.5 * soil_frac })),
  wornFilm: [0.3, 0.5, 0.7, 1].map((torn_frac) => ({ torn_frac })),
  wetInsulation: [4, 6, 8, 12].map((back_Wm2K) => ({ back_Wm2K })),
  shading: [
    { dayShade_frac: 0.6, dayShadeFrom_h: 9, dayShadeTo_h: 12, shade_frac: 0.08 },
    { dayShade_frac: 0.8, dayShadeFrom_h: 13, dayShadeTo_h: 18, shade_frac: 0.15 },
    { shade_frac: 0.3, shadeFrom: 7 * 24 },
    { shade_frac: 0.5, shadeFrom: 5 * 24 },
  ],
  sensorOffset: [-0.8, -1.1, -1.5, -2].map((offset_K) => ({ offset_K })),
  wrongClock: [1, -1.5, 2, -3].map((clock_h) => ({ clock_h })),
  warmMixing: [0.15, 0.25, 0.4, 0.6].map((mixing_frac) => ({ mixing_frac })),
  tankLeak: [0.02, 0.03, 0.04, 0.06].map((leak_1d) => ({ leak_1d })),
}

/** Two faults at once, each in its third size. */
const PAIRS: readonly (readonly [RealFault, RealFault])[] = [
  ['lowFlow', 'dirty'],
  ['deadModule', 'sensorOffset'],
  ['poorBond', 'shading'],
  ['air', 'dirty'],
  ['wetInsulation', 'dirty'],
  ['lowFlow', 'wrongClock'],
  ['deadModule', 'tankLeak'],
  ['dirty', 'warmMixing'],
  ['shading', 'sensorOffset'],
  ['poorBond', 'dirty'],
  ['lowFlow', 'warmMixing'],
  ['wrongClock', 'dirty'],
]

export interface RehearsedCase {
  readonly planted: readonly RealFault[]
  readonly size: Size
  /** Which of the sizes, from 0; for the table. */
  readonly sizeNumber: number
  readonly climate: (typeof CLIMATES)[number]
  readonly seed: number
}

/** All cases of these seeds: sound panels (four a climate), single faults, pairs. */
export function casesOf(seeds: readonly number[]): RehearsedCase[] {
  const single = Object.entries(SIZES) as [RealFault, readonly Size[]][]
  return seeds.flatMap((seed) =>
    CLIMATES.flatMap((climate, c) => {
      const of = (planted: readonly RealFault[], size: Size, sizeNumber: number) => ({
        planted,
        size,
        sizeNumber,
        climate,
        // No two cases share their errors.
        seed: 100_000 * seed + 10_000 * c + 97 * sizeNumber + 7 * planted.join('').length,
      })
      return [
        ...[0, 1, 2, 3].map((number) => of([], {}, number)),
        ...single.flatMap(([fault, sizes]) => sizes.map((size, number) => of([fault], size, number))),
        ...PAIRS.map(([a, b], number) => of([a, b], { ...SIZES[a][2], ...SIZES[b][2] }, number)),
      ]
    }),
  )
}
