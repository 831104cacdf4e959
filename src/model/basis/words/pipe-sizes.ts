/** A size pipe is sold in. */
export interface PipeSize {
  readonly name: string
  readonly inner_m: number
}

/**
 * Cross-linked polyethylene pipe by outer diameter × wall, mm (sizes of EN ISO 15875-2, series S 5 from 25 mm up, S 4 and
 * thicker below; from memory).
 */
const METRIC: readonly PipeSize[] = [
  { name: '12 × 2.0', inner_m: 0.008 },
  { name: '16 × 2.0', inner_m: 0.012 },
  { name: '20 × 2.0', inner_m: 0.016 },
  { name: '25 × 2.3', inner_m: 0.0204 },
  { name: '32 × 2.9', inner_m: 0.0262 },
  { name: '40 × 3.7', inner_m: 0.0326 },
  { name: '50 × 4.6', inner_m: 0.0408 },
  { name: '63 × 5.8', inner_m: 0.0514 },
  { name: '75 × 6.8', inner_m: 0.0614 },
  { name: '90 × 8.2', inner_m: 0.0736 },
  { name: '110 × 10.0', inner_m: 0.09 },
]

/** The same in copper tube sizes, standard dimension ratio 9 (inner diameters of ASTM F876; from memory). */
const NOMINAL: readonly PipeSize[] = [
  { name: '3/8 in', inner_m: 0.0089 },
  { name: '1/2 in', inner_m: 0.0121 },
  { name: '3/4 in', inner_m: 0.017 },
  { name: '1 in', inner_m: 0.0219 },
  { name: '1 1/4 in', inner_m: 0.0268 },
  { name: '1 1/2 in', inner_m: 0.0316 },
  { name: '2 in', inner_m: 0.0414 },
  { name: '2 1/2 in', inner_m: 0.0515 },
  { name: '3 in', inner_m: 0.0612 },
  { name: '4 in', inner_m: 0.0815 },
]

/** Copper tube by outer diameter × wall, mm (EN 1057, from memory): the bores that loops are reckoned with. */
const METRIC_COPPER: readonly PipeSize[] = [
  { name: 'copper 10 × 0.6', inner_m: 0.0088 },
  { name: 'copper 12 × 0.6', inner_m: 0.0108 },
  { name: 'copper 15 × 0.7', inner_m: 0.0136 },
  { name: 'copper 22 × 0.9', inner_m: 0.0202 },
  { name: 'copper 28 × 0.9', inner_m: 0.0262 },
  { name: 'copper 35 × 1.2', inner_m: 0.0326 },
  { name: 'copper 42 × 1.2', inner_m: 0.0396 },
  { name: 'copper 54 × 1.2', inner_m: 0.0516 },
  { name: 'copper 66.7 × 1.2', inner_m: 0.0643 },
  { name: 'copper 76.1 × 1.5', inner_m: 0.0731 },
  { name: 'copper 108 × 1.5', inner_m: 0.105 },
]

/** Copper water tube, types L and M (ASTM B88, from memory). */
const NOMINAL_COPPER: readonly PipeSize[] = [
  { name: 'copper 3/8 in type L', inner_m: 0.0109 },
  { name: 'copper 1/2 in type L', inner_m: 0.0138 },
  { name: 'copper 3/4 in type L', inner_m: 0.0199 },
  { name: 'copper 3/4 in type M', inner_m: 0.0206 },
  { name: 'copper 1 in type L', inner_m: 0.026 },
  { name: 'copper 1 1/4 in type M', inner_m: 0.0328 },
  { name: 'copper 1 1/2 in type M', inner_m: 0.0388 },
  { name: 'copper 2 in type M', inner_m: 0.051 },
  { name: 'copper 2 1/2 in type M', inner_m: 0.0634 },
  { name: 'copper 3 in type L', inner_m: 0.0748 },
]

/** A size this near to the bore asked for is that bore, as a share of it (common practice, no source). */
const NEAR_frac = 0.025

/**
 * What is sold with the bore asked for (the nearest, plastic before copper); else the narrowest plastic pipe that is wide
 * enough; null where none is. `inner_m`: bore asked for, m.
 */
export function pipeSold(inner_m: number, system: 'si' | 'us'): PipeSize | null {
  const plastic = system === 'us' ? NOMINAL : METRIC
  const off = (size: PipeSize): number => Math.abs(size.inner_m - inner_m)
  const near = [...plastic, ...(system === 'us' ? NOMINAL_COPPER : METRIC_COPPER)]
    .filter((size) => off(size) <= NEAR_frac * inner_m)
    .sort((a, b) => off(a) - off(b))
  return near[0] ?? plastic.find((size) => size.inner_m >= inner_m) ?? null
}

/** A valve or fitting: nominal bore, mm, and its pipe thread. */
export interface ValveSize {
  readonly nominal: number
  readonly thread: string
}

/** Nominal sizes of EN ISO 6708 with the threads of ISO 7-1 that go with them (from memory). */
const VALVES: readonly ValveSize[] = [
  { nominal: 10, thread: '3/8 in' },
  { nominal: 15, thread: '1/2 in' },
  { nominal: 20, thread: '3/4 in' },
  { nominal: 25, thread: '1 in' },
  { nominal: 32, thread: '1 1/4 in' },
  { nominal: 40, thread: '1 1/2 in' },
  { nominal: 50, thread: '2 in' },
  { nominal: 65, thread: '2 1/2 in' },
  { nominal: 80, thread: '3 in' },
  { nominal: 100, thread: '4 in' },
]

/** Copper tube is up to so much wider than the nominal bore it goes by, as a share (15 to 66.7 mm of EN 1057, from memory). */
const WIDER_frac = 0.05

/** The smallest valve of the nominal bore that a pipe of this bore goes by; the largest listed where none is. `inner_m` in m. */
export function valveSold(inner_m: number): ValveSize {
  return VALVES.find(({ nominal }) => nominal * (1 + WIDER_frac) >= 1000 * inner_m) ?? VALVES.at(-1)!
}

/** Outside diameters of soft copper tube, in (ASTM B280, from memory), and their length, m. */
const TUBES = [
  ['3/16', 0.00476],
  ['1/4', 0.00635],
  ['5/16', 0.00794],
  ['3/8', 0.00953],
  ['1/2', 0.0127],
  ['5/8', 0.01588],
  ['3/4', 0.01905],
  ['7/8', 0.02223],
  ['1 1/8', 0.02858],
  ['1 3/8', 0.03493],
] as const

/** The soft tube of US trade that comes nearest to an outside diameter, in inches. `outer_m` in m. */
export function tubeSold(outer_m: number): string {
  return [...TUBES].sort((a, b) => Math.abs(a[1] - outer_m) - Math.abs(b[1] - outer_m))[0]![0]
}
