import { choice, number, onOff } from './field.ts'

/** How the sky is worked out. Ranges, words and defaults: see `fields.ts`. */
export const SKY_FIELDS = {
  model: choice(
    {
      matsunobuCoimbraPrata: 'Mean of Matsunobu & Coimbra and Prata',
      matsunobuCoimbra2024: 'Matsunobu & Coimbra 2024',
      berdahlMartin1984: 'Berdahl & Martin 1984',
      brutsaert1975: 'Brutsaert 1975',
      prata1996: 'Prata 1996',
    },
    'matsunobuCoimbraPrata',
    'Clear-sky formula',
    'How sky radiation is worked out where the file has none. The default did best at places left out of its choice.',
    'The choice moves the area by about 15 %.',
  ),
  altitudeTerm: onOff(
    false,
    'Altitude term',
    'Thinner air above high places, an option of the 2024 formula. Measured data on mountains agree better without it.',
  ),
  deficitFactor_frac: number(
    'frac',
    { min: 0.6, max: 1.4, default: 1, usual: [0.85, 1.15], step: 0.01 },
    'Sky correction',
    'Multiplies what a clear sky falls short of a black one: 1 trusts the formula.',
    'The night heat is nearly in proportion.',
  ),
  useMeasured: onOff(
    true,
    'Use measured sky radiation',
    'A measured longwave column in the weather file wins over the formula.',
  ),
} as const
