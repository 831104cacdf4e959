import {
  airConductivity_WmK,
  rayleighGroup,
  forcedConvection_Wm2K,
  WIND_SLOPES,
  freeFactors,
  gapTilt,
  hollandsNusselt,
  windFactor_frac,
} from '#model/outdoors/air'
import { blendedConvection_Wm2K, freeConvection_Wm2K } from '#inside/model/outdoors/air/convection.ts'
import type { Check } from '../check.ts'

const convection = (rest: Omit<Check, 'theme'>): Check => ({ theme: 'Convection and gaps', ...rest })

/** Warm flat plate of 2 × 1 m, 20 K above air of 20 °C: what the published wind lines were measured on. */
function warmPlate(wind_ms: number): number {
  const free = freeConvection_Wm2K(freeFactors(0), 40, 20, 101325, 1 / 3)
  return blendedConvection_Wm2K(free, WIND_SLOPES.watmuff1977 * wind_ms)
}

/** Churchill & Chu 1975 for an upright plate, the correlation of another pair of authors. */
function churchillChu(rayleigh: number): number {
  const psi = (1 + (0.492 / 0.71) ** (9 / 16)) ** (8 / 27)
  return (0.825 + (0.387 * rayleigh ** (1 / 6)) / psi) ** 2
}

export const convectionChecks: readonly Check[] = [
  convection({
    quantity: 'gap heated from below at 45°, 25 mm, 70 and 50 °C: Nusselt number',
    unit: '–',
    kind: 'published',
    source: 'duffieBeckman',
    where: 'example 3.11.1',
    fromMemory: true,
    got: () => hollandsNusselt(rayleighGroup(60, 101325) * 20 * 0.025 ** 3, gapTilt(45)),
    want: 2.4,
    within: 0.05,
    because: 'printed to two digits; air properties differ by a percent',
  }),
  convection({
    quantity: 'the same gap: heat transfer coefficient',
    unit: 'W/m²K',
    kind: 'published',
    source: 'duffieBeckman',
    where: 'example 3.11.1',
    fromMemory: true,
    got: () =>
      (hollandsNusselt(rayleighGroup(60, 101325) * 20 * 0.025 ** 3, gapTilt(45)) * airConductivity_WmK(60)) /
      0.025,
    want: 2.78,
    within: 0.09,
    because: '3 %: rounding of the printed Nusselt number and conductivity',
  }),
  convection({
    quantity: 'flat gap heated from below at Ra = 10⁴: Nusselt number',
    unit: '–',
    kind: 'independent calculation',
    source: 'hollands',
    where: 'eq. 2 at zero tilt, by hand',
    got: () => hollandsNusselt(1e4, gapTilt(0)),
    want: 2.391,
    within: 0.002,
    because: 'the formula itself, worked by hand to four digits',
  }),
  convection({
    quantity: 'gap below its critical Rayleigh number (1700, flat): Nusselt number',
    unit: '–',
    kind: 'exact',
    source: 'hollands',
    where: 'pure conduction under Ra = 1708',
    got: () => hollandsNusselt(1700, gapTilt(0)),
    want: 1,
    within: 1e-9,
    because: 'still air conducts and nothing else',
  }),
  convection({
    quantity: 'conduction through 20 mm of still air at 10 °C',
    unit: 'W/m²K',
    kind: 'published',
    source: 'incropera',
    where: 'conductivity of air over the gap',
    got: () => airConductivity_WmK(10) / 0.02,
    want: 1.25,
    within: 0.03,
    because: 'conductivity of air to 2 %',
  }),
  convection({
    quantity: 'cold plate of 2 × 1 m facing up in still air, 5 K below it',
    unit: 'W/m²K',
    kind: 'published',
    source: 'mcAdams',
    where: 'Nu = 0.27 Ra^¼, length area/perimeter: 1.0–2.2 over 1–15 K',
    got: () => freeConvection_Wm2K(freeFactors(0), 15, 20, 101325, 1 / 3),
    want: [1, 2.2],
    within: 0,
    because: 'the band of the correlation over the temperature differences met',
  }),
  convection({
    quantity: 'upright plate of 1 m, 10 K warmer than air: against Churchill & Chu 1975',
    unit: 'W/m²K',
    kind: 'independent calculation',
    source: 'incropera',
    where: 'eq. 9.26, Churchill & Chu',
    got: () => freeConvection_Wm2K(freeFactors(90), 30, 20, 101325, 1),
    want: Number(((churchillChu(rayleighGroup(25, 101325) * 10) * airConductivity_WmK(25)) / 1).toFixed(3)),
    within: 0.6,
    because: '20 %: what correlations of free convection differ by',
  }),
  ...(
    [
      ['watmuff1977', 'watmuff', 9],
      ['mcAdams1954', 'mcAdams', 11.4],
      ['test1981', 'test', 7.68],
      ['sharplesCharlesworth1998', 'sharples', 9.9],
      ['kumarMullick2010', 'kumarMullick', 11.61],
    ] as const
  ).map(([author, source, want]) =>
    convection({
      quantity: `rise of the wind coefficient from 2 to 5 m/s, ${author}`,
      unit: 'W/m²K',
      kind: 'published' as const,
      source,
      where: 'published line',
      got: () => forcedConvection_Wm2K(author, 5) - forcedConvection_Wm2K(author, 2),
      want,
      within: 0.005,
      because: 'the slope is taken over as printed; the intercept is not (it is a warm plate’s still air)',
    }),
  ),
  ...([1, 3] as const).map((wind) =>
    convection({
      quantity: `plate 20 K warmer than air in ${wind} m/s, free and forced together, against 2.8 + 3.0 v`,
      unit: 'W/m²K',
      kind: 'published' as const,
      source: 'watmuff' as const,
      where: 'the whole line, intercept included',
      got: () => warmPlate(wind),
      want: Number((2.8 + 3 * wind).toFixed(1)),
      within: 0.25 * (2.8 + 3 * wind),
      because: '25 %: published lines differ by more than half at the same wind',
    }),
  ),
  convection({
    quantity: 'wind at 3 m in a suburb over wind at 10 m in the open',
    unit: '–',
    kind: 'independent calculation',
    source: 'ashraeFundamentals',
    where: 'airflow around buildings, table 1, by hand',
    fromMemory: true,
    got: () => windFactor_frac('suburb', 3),
    want: 0.55,
    within: 0.01,
    because: 'worked by hand to two digits',
  }),
]
