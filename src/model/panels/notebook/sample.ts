import { DEMO_RECIPE, type CoatingRecipe } from '#model/panels/paint'

/** What can be measured on a sample. All are shares, –. */
export const PROPERTIES = ['solarReflectance', 'emittance', 'overBlack', 'overWhite'] as const
export type Property = (typeof PROPERTIES)[number]

/** A measured value with its 90 % interval. */
export interface SampleValue {
  readonly value: number
  readonly low: number
  readonly high: number
}

/** One painted sample of a maker's series: what is in it, how it was put on, what was measured on it. */
export interface PaintSample {
  readonly name: string
  /** `2026-05-03`, or empty. */
  readonly date: string
  readonly recipe: CoatingRecipe
  readonly coats: number
  /** Once dry, all coats together, m. */
  readonly dryThickness_m: number
  readonly substrate: string
  readonly note: string
  readonly measured: Readonly<Partial<Record<Property, SampleValue>>>
}

/** Samples kept side by side. */
export interface SampleSeries {
  readonly basis: string
  readonly samples: readonly PaintSample[]
}

function demo(name: string, date: string, carbonate_gg: number, value: number, half: number): PaintSample {
  const [first, ...rest] = DEMO_RECIPE.solids
  return {
    name,
    date,
    recipe: { ...DEMO_RECIPE, solids: [{ ...first!, parts_gg: carbonate_gg }, ...rest] },
    coats: 3,
    dryThickness_m: 0.00024,
    substrate: 'Aluminium 0.5 mm, primed white',
    note: '',
    measured: { solarReflectance: { value, low: value - half, high: value + half } },
  }
}

/** Example series; every number of it is invented. */
export const DEMO_SERIES: SampleSeries = {
  basis: 'Invented: three samples that were never made, to try the notebook with.',
  samples: [
    demo('A1', '2026-05-03', 1.6, 0.871, 0.016),
    demo('A2', '2026-05-05', 2.65, 0.924, 0.014),
    demo('A3', '2026-05-08', 4.2, 0.931, 0.015),
  ],
}
