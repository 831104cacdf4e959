/**
 * How the error that was measured in each part of the chain reaches the range of an answer: by an input that the range draws, or why
 * it is not drawn. Figures are those of the table of checks (`npm run -s evidence`, `-- sky`, `-- film`).
 */
export interface AreaDoubt {
  /** Part of the chain, as in the table where it has measurements of its own. */
  readonly part: string
  /** The drawn input that carries it; null: none. */
  readonly field: string | null
  readonly words: string
}

export const AREA_DOUBTS: readonly AreaDoubt[] = [
  {
    part: 'Sky',
    field: 'sky.deficitFactor_frac',
    words:
      'drawn as “Sky radiation”: the error of five nights together, 16 to 33 % of what the sky falls short of black by kind of climate (places made from months: their own)',
  },
  {
    part: 'Panels in the field',
    field: 'panel.fieldFactor_frac',
    words:
      'drawn as “Field against ideal”, 0.7 to 1: a standard deviation of 9 % of the heat, where the measured boards scatter by 7 %',
  },
  {
    part: 'Film covers',
    field: 'cover.flutter_frac',
    words:
      'drawn as “Flutter of the film”, 0 to 0.5, which moves the cases from 1.8 K too cold to 1.8 K too warm; what is left, “Field against ideal” has to cover',
  },
  {
    part: 'Dew',
    field: null,
    words:
      'not drawn: ours forms up to 0.13 mm more in a clear night than a published regression, which takes heat from the panel, so the area is too large rather than too small',
  },
  {
    part: 'Room',
    field: null,
    words:
      'not drawn of itself: a wall given by U-value and mass instead of its layers moves the year’s peak by 0.12 K (adobe 0.54 K), while hotter and milder years alone are drawn over 2.5 K, beside air leaks, mass, insulation and shading',
  },
  {
    part: 'Store',
    field: null,
    words:
      'not drawn: the tank follows its closed form; its minimum over that of the air is in “Whole systems”, and “Delivery” is drawn by 20 % either way',
  },
  {
    part: 'Whole systems',
    field: null,
    words:
      'no draw of its own: they were measured elsewhere and are compared with invented climates; the inputs of their parts are drawn together',
  },
]
