import { fluidProperties } from '#model/panels/loop'
import type { Check } from '../check.ts'

const fluid = (rest: Omit<Check, 'theme'>): Check => ({ theme: 'Loop and fluids', ...rest })

export const fluidChecks: readonly Check[] = [
  ...(
    [
      [10, 999.7, 1.307, 4194.8],
      [20, 998.2, 1.002, 4184.2],
      [30, 995.7, 0.797, 4179.8],
    ] as const
  ).flatMap(([t, density, viscosity, heat]) => {
    const water = fluidProperties('water', 0, t)
    const at = (quantity: string, unit: string, got: number, want: number, within: number): Check =>
      fluid({
        quantity: `${quantity} of water at ${t} °C`,
        unit,
        kind: 'published',
        source: 'lsbu',
        where: 'table of properties by temperature',
        got: () => got,
        want,
        within,
        because: 'printed to this many digits',
      })
    return [
      at('density', 'kg/m³', water.density_kgm3, density, 0.1),
      at('viscosity', 'mPa s', water.viscosity_Pas * 1e3, viscosity, 0.002),
      at('specific heat', 'J/kg K', water.specificHeat_JkgK, heat, 1),
    ]
  }),
  ...(
    [
      [5, 0.5678, 11.24],
      [15, 0.5888, 8.09],
      [25, 0.6065, 6.14],
    ] as const
  ).flatMap(([t, conductivity, prandtl]) => {
    const water = fluidProperties('water', 0, t)
    const at = (quantity: string, unit: string, got: number, want: number): Check =>
      fluid({
        quantity: `${quantity} of water at ${t} °C`,
        unit,
        kind: 'independent calculation',
        source: 'iapws',
        where: 'values by a general property library',
        got: () => got,
        want,
        within: Number((0.002 * want).toPrecision(2)),
        because: '0.2 %: rounding of the printed values and the 0.1 MPa fits',
      })
    return [
      at('conductivity', 'W/m K', water.conductivity_WmK, conductivity),
      at(
        'Prandtl number',
        '–',
        (water.viscosity_Pas * water.specificHeat_JkgK) / water.conductivity_WmK,
        prandtl,
      ),
    ]
  }),
  ...(
    [
      [0.2, -7.1],
      [0.3, -12.7],
      [0.4, -21.1],
    ] as const
  ).map(([share, want]) =>
    fluid({
      quantity: `freezing point of ${share * 100} % propylene glycol by mass`,
      unit: '°C',
      kind: 'published' as const,
      source: 'glycolTable' as const,
      where: 'by mass; page not noted',
      fromMemory: true as const,
      got: () => fluidProperties('glycol', share, 10).freezing_C,
      want,
      within: 0.6,
      because: 'tables of makers and handbooks differ by 0.6 K',
    }),
  ),
  fluid({
    quantity: 'specific heat of 30 % propylene glycol at 10 °C',
    unit: 'kJ/kg K',
    kind: 'published',
    source: 'glycolTable',
    where: 'by mass; page not noted',
    fromMemory: true,
    got: () => fluidProperties('glycol', 0.3, 10).specificHeat_JkgK / 1000,
    want: 3.82,
    within: 0.04,
    because: '1 %: what such tables differ by',
  }),
  fluid({
    quantity: 'density of 30 % propylene glycol at 10 °C',
    unit: 'kg/m³',
    kind: 'published',
    source: 'glycolTable',
    where: 'by mass; page not noted',
    fromMemory: true,
    got: () => fluidProperties('glycol', 0.3, 10).density_kgm3,
    want: 1032.6,
    within: 10,
    because: '1 %: what such tables differ by',
  }),
]
