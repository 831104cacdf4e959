import type { CoatingOptics } from './optics.ts'

/** A coating of the literature, fresh; broadband emittance is used for both bands where only that is published. */
export interface KnownCoating extends CoatingOptics {
  readonly id: string
  readonly name: string
  readonly source: string
}

/** Coatings to compare one's own with. */
export const KNOWN_COATINGS: readonly KnownCoating[] = [
  {
    id: 'bariumSulfate',
    name: 'Barium sulfate paint, laboratory',
    solarReflectance_frac: 0.981,
    windowEmittance_frac: 0.95,
    offWindowEmittance_frac: 0.95,
    source: 'Li et al. 2021, ACS Appl. Mater. Interfaces 13, 21733 (from memory)',
  },
  {
    id: 'calciumCarbonate',
    name: 'Calcium carbonate paint, laboratory',
    solarReflectance_frac: 0.955,
    windowEmittance_frac: 0.94,
    offWindowEmittance_frac: 0.94,
    source: 'Li et al. 2020, Cell Reports Physical Science 1, 100221',
  },
  {
    id: 'porousPolymer',
    name: 'Porous polymer coating, laboratory',
    solarReflectance_frac: 0.96,
    windowEmittance_frac: 0.97,
    offWindowEmittance_frac: 0.97,
    source: 'Mandal et al. 2018, Science 362, 315 (from memory)',
  },
  {
    id: 'whitePaint',
    name: 'Titanium dioxide white paint, fresh',
    solarReflectance_frac: 0.85,
    windowEmittance_frac: 0.91,
    offWindowEmittance_frac: 0.91,
    source: 'reflectance 0.80–0.88, emittance 0.90–0.92: from memory',
  },
  {
    id: 'blackPaint',
    name: 'Black paint (night only)',
    solarReflectance_frac: 0.05,
    windowEmittance_frac: 0.95,
    offWindowEmittance_frac: 0.95,
    source: 'Ito & Miura 1989 used a black painted radiator; values common practice, no source',
  },
]
