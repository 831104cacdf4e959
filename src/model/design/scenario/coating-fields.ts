import { choice, number } from './field.ts'
import { figure, words } from '#model/basis/words'

/** Coating and cover. Ranges, words and defaults: see `fields.ts`. */
export const COATING_FIELDS = {
  solarReflectance_frac: number(
    'frac',
    { min: 0, max: 1, default: 0.93, usual: [0.6, 0.99], step: 0.005 },
    'Solar reflectance',
    'Share of sunlight the fresh coating sends back.',
    words`By day each 0.01 is about ${figure(9.5, 'Wm2')} at noon; at night it does nothing.`,
  ),
  windowEmittance_frac: number(
    'frac',
    { min: 0.02, max: 1, default: 0.94, usual: [0.7, 0.98], step: 0.005 },
    'Emittance 8–13 µm',
    'How well it radiates through the clear-air window.',
    'The night heat is nearly in proportion.',
  ),
  offWindowEmittance_frac: number(
    'frac',
    { min: 0.02, max: 1, default: 0.92, usual: [0.1, 0.98], step: 0.005 },
    'Emittance elsewhere',
    'How well it radiates outside 8–13 µm.',
    'High helps while the plate is warmer than the air, low helps once it is much colder.',
  ),
  soiling_1y: number(
    '1y',
    { min: 0, max: 0.2, default: 0.02, usual: [0, 0.08], step: 0.005 },
    'Soiling per year',
    'Solar reflectance lost to dirt in each year between washes.',
  ),
  age_y: number(
    'y',
    { min: 0, max: 10, default: 1, usual: [0, 5], step: 0.25 },
    'Years since washing',
    'Age the sizing is made for.',
  ),
} as const

export const COVER_FIELDS = {
  kind: choice(
    { bare: 'Bare', film: 'Thin film' },
    'bare',
    'Cover',
    'A thin infrared-clear film over a still-air gap, or nothing.',
    words`A film pays only once the plate runs about ${figure(1.5, 'K')} below the air; warmer than that, wind helps.`,
  ),
  solarTransmittance_frac: number(
    'frac',
    { min: 0, max: 0.99, default: 0.9, usual: [0.7, 0.95], step: 0.01 },
    'Film: sunlight through',
    'Solar transmittance of the film.',
  ),
  windowTransmittance_frac: number(
    'frac',
    { min: 0, max: 0.99, default: 0.86, usual: [0.5, 0.92], step: 0.01 },
    'Film: infrared through, 8–13 µm',
    'Thin polyethylene 10–25 µm passes 0.88–0.92, 50 µm 0.80–0.85.',
    'What the film holds back, the sky never sees.',
  ),
  offWindowTransmittance_frac: number(
    'frac',
    { min: 0, max: 0.99, default: 0.8, usual: [0.4, 0.92], step: 0.01 },
    'Film: infrared through, elsewhere',
    'Transmittance outside 8–13 µm.',
  ),
  reflectance_frac: number(
    'frac',
    { min: 0, max: 0.3, default: 0.08, usual: [0.02, 0.15], step: 0.01 },
    'Film: reflectance',
    'Two-surface reflection, all bands (index 1.5: 0.077).',
  ),
  scattered_frac: number(
    'frac',
    { min: 0, max: 0.98, default: 0, usual: [0, 0.9], step: 0.01 },
    'Film: sunlight sent back besides',
    'What a white cover that is clear to the infrared sends back of sunlight beside its surfaces: 0 for clear film, up to 0.9 for foams and pigmented films.',
    'It shades the plate by day and does nothing at night.',
  ),
  gap_m: number(
    'm',
    { min: 0.003, max: 0.1, default: 0.02, usual: [0.01, 0.05], step: 0.002 },
    'Film: air gap',
    'Air between film and plate.',
  ),
  flutter_frac: number(
    'frac',
    { min: 0, max: 0.5, default: 0.3, usual: [0, 0.5], step: 0.05 },
    'Film: flutter',
    'Share of the outside wind exchange that a moving film carries into the gap: 0 for a taut double film or one backed by a mesh, 0.3 for a single film. No measurement of it was found.',
    'A film that flutters lets the wind at the plate after all, so that a cold plate stays warmer.',
  ),
  life_months: number(
    'months',
    { min: 1, max: 60, default: 18, usual: [2, 36], step: 1 },
    'Film: life',
    'Months until it yellows, clouds or tears: weeks to months when unstabilised.',
  ),
} as const
