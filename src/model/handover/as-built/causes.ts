import { AS_DESIGNED, type Departure } from './departure.ts'
import type { Observed } from './observed.ts'
import { sawSun } from './sunlit.ts'

/** What may be wrong with a built panel, its logger or its tank; `none` is nothing. */
export const FAULTS = [
  'none',
  'lowFlow',
  'air',
  'deadModule',
  'poorBond',
  'dirty',
  'wornFilm',
  'wetInsulation',
  'shading',
  'sensorOffset',
  'wrongClock',
  'warmMixing',
  'tankLeak',
] as const
export type Fault = (typeof FAULTS)[number]
export type RealFault = Exclude<Fault, 'none'>

/** What is known of one departure before looking: spread about 0, and bounds. */
export interface Known {
  readonly sd: number
  readonly min: number
  readonly max: number
}
export type Free = Partial<Readonly<Record<keyof Departure, Known>>>

/** One cause: what it sets free, what it fixes, and the sizes from which its fit may start. */
export interface Cause {
  readonly fault: RealFault
  readonly free: Free
  readonly fixed: Partial<Departure>
  readonly starts: readonly Partial<Departure>[]
  /** Fixed values tried for it: costs ln of this. */
  readonly tried: number
}

/**
 * Doubts every sound panel has: shelter, sky formula, sensor pair, a clock off by minutes, sun, meter or flow setting,
 * tank. Common practice, no source, but for the sky (mean errors of the formula at measured stations).
 */
export function soundDoubts({ inputs, hasPlate, rows }: Observed): Free {
  const metered = inputs.log.flow_kgs !== null
  const has = (kind: string) => rows.some((row) => row.kind === kind)
  return {
    windLog: { sd: 0.35, min: -1.5, max: 1.2 },
    sky_Wm2: { sd: 6, min: -30, max: 30 },
    offset_K: { sd: 0.1, min: -0.5, max: 0.5 },
    clock_h: { sd: 0.15, min: -0.5, max: 0.5 },
    sunGain_frac: { sd: 0.04, min: -0.2, max: 0.2 },
    flowLog: metered ? { sd: 0.04, min: -0.15, max: 0.15 } : { sd: 0.08, min: -0.3, max: 0.3 },
    ...(metered && { meterLog: { sd: 0.08, min: -0.3, max: 0.3 } }),
    ...(hasPlate && { plateSensor_K: { sd: 0.4, min: -2, max: 2 } }),
    ...(has('inlet') && { inletOverTank_K: { sd: 0.5, min: -3, max: 3 } }),
    ...(has('tank') && {
      tankLog: { sd: 0.4, min: -1.5, max: 1.5 },
      tankWarming_Kh: { sd: 0.15, min: -0.6, max: 0.6 },
    }),
  }
}

const share = (sd: number, max = 0.95): Known => ({ sd, min: 0, max })

/** Causes that this panel can have and this log can show, shading apart (see `shades.ts`). */
export function possibleCauses(observed: Observed): Cause[] {
  const { inputs, rows } = observed
  const metered = inputs.log.flow_kgs !== null
  const has = (kind: string) => rows.some((row) => row.kind === kind)
  const of = (fault: RealFault, free: Free, starts: readonly Partial<Departure>[]): Cause => ({
    fault,
    free,
    fixed: {},
    starts,
    tried: 1,
  })
  const flow = metered ? 'meterLog' : 'flowLog'
  return [
    of('lowFlow', { [flow]: { sd: 0.7, min: -3, max: 0.3 } }, [
      { [flow]: -0.3 },
      { [flow]: -0.7 },
      { [flow]: -1.4 },
    ]),
    of('air', { airy_frac: share(0.35) }, [{ airy_frac: 0.15 }, { airy_frac: 0.4 }]),
    of('deadModule', { dead_frac: share(0.35) }, [{ dead_frac: 0.2 }, { dead_frac: 0.5 }]),
    of('poorBond', { bondLog: { sd: 1.4, min: -4, max: 0 } }, [
      { bondLog: -0.7 },
      { bondLog: -1.5 },
      { bondLog: -2.5 },
    ]),
    ...(sawSun(inputs)
      ? [
          of('dirty', { soil_frac: share(0.12, 0.6), veil_frac: share(0.1, 0.8) }, [
            { soil_frac: 0.05, veil_frac: 0.03 },
            { soil_frac: 0.2, veil_frac: 0.05 },
          ]),
        ]
      : []),
    ...(inputs.panel.film === null
      ? []
      : [of('wornFilm', { torn_frac: share(0.5, 1) }, [{ torn_frac: 0.2 }, { torn_frac: 0.6 }])]),
    of('wetInsulation', { back_Wm2K: { sd: 5, min: 0, max: 30 } }, [{ back_Wm2K: 2 }, { back_Wm2K: 7 }]),
    of('sensorOffset', { offset_K: { sd: 1.2, min: -6, max: 6 } }, [
      { offset_K: -1 },
      { offset_K: -0.4 },
      { offset_K: 0.4 },
      { offset_K: 1 },
    ]),
    of(
      'wrongClock',
      { clock_h: { sd: 3, min: -13, max: 13 } },
      [-12, -6, -3, -2, -1, 1, 2, 3, 6, 12].map((clock_h) => ({ clock_h })),
    ),
    ...(has('inlet') ? [of('warmMixing', { mixing_frac: share(0.4) }, [{ mixing_frac: 0.3 }])] : []),
    ...(has('tank') ? [of('tankLeak', { leak_1d: share(0.03, 0.3) }, [{ leak_1d: 0.02 }])] : []),
  ]
}

/**
 * Before looking: most new panels are sound, and the causes are alike among themselves. Common practice, no source.
 */
export const PRIOR_BELIEF = { none: 0.6, each: 0.4 / 12 } as const

/** Whether a departure is large enough to matter; common practice, no source. */
export function isLarge(fault: RealFault, d: Departure): boolean {
  switch (fault) {
    case 'lowFlow':
      return d.flowLog + d.meterLog < Math.log(0.85)
    case 'air':
      return d.airy_frac > 0.06
    case 'deadModule':
      return d.dead_frac > 0.06
    case 'poorBond':
      return d.bondLog < Math.log(0.6)
    case 'dirty':
      return d.soil_frac > 0.03 || d.veil_frac > 0.08
    case 'wornFilm':
      return d.torn_frac > 0.08
    case 'wetInsulation':
      return d.back_Wm2K > 1
    case 'shading':
      return d.shade_frac > 0.1 || d.dayShade_frac > 0.2
    case 'sensorOffset':
      return Math.abs(d.offset_K) > 0.25
    case 'wrongClock':
      return Math.abs(d.clock_h) > 0.4
    case 'warmMixing':
      return d.mixing_frac > 0.08
    case 'tankLeak':
      return d.leak_1d > 0.004
  }
}

export const startOf = (cause: Cause, start: Partial<Departure>): Departure => ({
  ...AS_DESIGNED,
  ...cause.fixed,
  ...start,
})
