import { FILM_INSIDE_Wm2K } from '#model/building/room'
import { outsideConvection_Wm2K } from '#inside/model/building/room/films.ts'
import { annualDepth_m, outdoorSwing_WK, slabOnGroundU_Wm2K } from '#inside/model/building/room/ground.ts'
import type { Layer } from '#inside/model/building/construction/layer.ts'
import { solAir } from '#inside/model/building/room/sol-air.ts'
import { FIELDS } from '#model/design/scenario'
import { once, type Check } from '../check.ts'
import { modesDaily } from '../models/modes-daily.ts'

const room = (rest: Omit<Check, 'theme'>): Check => ({ theme: 'Room', ...rest })
const BY_ANOTHER =
  'the same standard worked out by another program, confirmed with a fine finite-volume model; cells of 5 mm leave 0.2 %'
const concrete = (thickness_m: number): Layer => ({
  thickness_m,
  conductivity_WmK: 1.8,
  density_kgm3: 2400,
  specificHeat_JkgK: 1000,
})
const foam: Layer = { thickness_m: 0.1, conductivity_WmK: 0.035, density_kgm3: 25, specificHeat_JkgK: 1450 }
const board: Layer = { thickness_m: 0.02, conductivity_WmK: 0.13, density_kgm3: 500, specificHeat_JkgK: 1600 }
const wool: Layer = { thickness_m: 0.1, conductivity_WmK: 0.035, density_kgm3: 25, specificHeat_JkgK: 1030 }

const WALLS = [
  ['200 mm of concrete', [concrete(0.2)], 3.5573, 1.8271, -5.676, 86.168, 5.7043],
  ['100 mm of concrete inside 100 mm of foam', [concrete(0.1), foam], 0.3244, 0.1207, -5.612, 86.074, 6.226],
  ['100 mm of concrete outside the foam', [foam, concrete(0.1)], 0.3244, 0.225, -4.101, 5.002, 0.346],
  ['boards, wool, boards', [board, wool, board], 0.2999, 0.2903, -1.793, 16.412, 1.1565],
] as const

/** Ground cases: name, length, width, wall, ground, resistance, U. */
const FLOORS = [
  ['20 × 10 m on clay', 200, 60, 0.3, 1.5, 0, 0.495],
  ['20 × 10 m on sand', 200, 60, 0.3, 2, 0, 0.6285],
  ['5 × 4 m shed on sand', 20, 18, 0.15, 2, 0, 1.3687],
  ['the same, insulated with 2.5 m²K/W', 20, 18, 0.15, 2, 2.5, 0.3037],
] as const
const floor = (
  area_m2: number,
  perimeter_m: number,
  wall_m: number,
  ground_WmK: number,
  floor_m2KW: number,
) => ({
  area_m2,
  perimeter_m,
  wall_m,
  ground_WmK,
  floor_m2KW,
})

/** ASHRAE's sol-air case: 30 °C, 800 W/m² on a roof, h_o 17, 63 W/m² to the sky. */
function roofTemp_C(absorptance: number): number {
  const emittance = 1
  const air_K = 303.15
  const radiative = 4 * 5.670374419e-8 * air_K ** 3
  return solAir({
    air_C: 30,
    absorbedSun_Wm2: absorptance * 800,
    longwave_Wm2: 5.670374419e-8 * air_K ** 4 - 63,
    emittance_frac: emittance,
    convection_Wm2K: 17 - radiative,
  }).temp_C
}

export const roomChecks: readonly Check[] = [
  ...WALLS.flatMap(([name, layers, u, transmittance, shift, inner, admittance]) => {
    const ours = once(() => modesDaily(layers))
    const wall = (what: string, unit: string, got: () => number, want: number, within: number): Check =>
      room({
        quantity: `${name}, as the room runs it: ${what}`,
        unit,
        kind: 'independent calculation',
        source: 'iso13786',
        where: 'worked out apart, 24 h',
        got,
        want,
        within,
        because: BY_ANOTHER,
      })
    return [
      wall('U-value', 'W/m²K', () => ours().U_Wm2K, u, 1e-4),
      wall(
        'periodic transmittance',
        'W/m²K',
        () => ours().transmittance_Wm2K,
        transmittance,
        2e-3 * transmittance,
      ),
      wall('time shift', 'h', () => ours().timeShift_h, shift, 0.02),
      wall('admittance', 'W/m²K', () => ours().admittance_Wm2K, admittance, 2e-3 * admittance),
      wall(
        'areal heat capacity inside',
        'kJ/m²K',
        () => ours().insideCapacity_Jm2K / 1000,
        inner,
        2e-3 * inner,
      ),
    ]
  }),
  room({
    quantity: 'gypsum, 100 mm of foam, plywood: U-value',
    unit: 'W/m²K',
    kind: 'independent calculation',
    source: 'iso6946',
    where: 'plain sum of resistances, worked out apart',
    got: () =>
      modesDaily([
        { thickness_m: 0.0125, conductivity_WmK: 0.25, density_kgm3: 900, specificHeat_JkgK: 1000 },
        { ...foam },
        board,
      ]).U_Wm2K,
    want: 0.3095,
    within: 1e-4,
    because: 'five digits',
  }),
  ...(
    [
      ['inside, horizontal', () => 1 / FILM_INSIDE_Wm2K, 0.13, 1 / (2.5 + 0.9 * 5.7)],
      ['outside at 4 m/s and 10 °C', () => 1 / (outsideConvection_Wm2K(4) + 0.9 * 5.1), 0.04, 0.0407],
    ] as const
  ).map(([name, got, want]) =>
    room({
      quantity: `surface resistance ${name}`,
      unit: 'm²K/W',
      kind: 'published' as const,
      source: 'iso6946' as const,
      where: 'table 7',
      fromMemory: true,
      got,
      want,
      within: 0.002,
      because: 'printed to two digits',
    }),
  ),
  ...(
    [
      [
        'conductivity of the default slab',
        () => FIELDS.room.slabConductivity_WmK.default,
        1.35,
        'W/m K',
        0.01,
      ],
      ['density of the default slab', () => FIELDS.room.slabDensity_kgm3.default, 2000, 'kg/m³', 1],
      [
        'specific heat of the default slab',
        () => FIELDS.room.slabSpecificHeat_JkgK.default,
        1000,
        'J/kg K',
        1,
      ],
      [
        'conductivity of the default tank foam',
        () => FIELDS.store.insulationConductivity_WmK.default,
        0.035,
        'W/m K',
        0.005,
      ],
    ] as const
  ).map(([name, got, want, unit, within]) =>
    room({
      quantity: `${name}, against medium concrete and foam`,
      unit,
      kind: 'published' as const,
      source: 'iso10456' as const,
      where: 'table 3',
      fromMemory: true,
      got,
      want,
      within,
      because: 'a default must be the tabulated value; foams span 0.030–0.040',
    }),
  ),
  ...FLOORS.map(([name, area, perimeter, wall, ground, resistance, want]) =>
    room({
      quantity: `slab on ground, ${name}: U-value`,
      unit: 'W/m²K',
      kind: 'independent calculation' as const,
      source: 'iso13370' as const,
      where: 'worked out apart',
      got: () => slabOnGroundU_Wm2K(floor(area, perimeter, wall, ground, resistance)),
      want,
      within: 2e-4,
      because: 'four digits',
    }),
  ),
  room({
    quantity: 'slab on ground 20 × 10 m, clay of 1.4 W/m K: U-value against an older published sheet',
    unit: 'W/m²K',
    kind: 'published',
    source: 'floorSheet',
    where: 'four exposed edges, wall 0.3 m',
    got: () => slabOnGroundU_Wm2K(floor(200, 60, 0.3, 1.4, 0)),
    want: 0.482,
    within: 0.024,
    because: '5 %: another closed form (Macey) for the same ground',
  }),
  ...(
    [
      ['clay', 1.5, 2.2],
      ['sand', 2, 3.2],
      ['rock', 3.5, 4.2],
    ] as const
  ).map(([name, ground, want]) =>
    room({
      quantity: `depth the year’s swing reaches in ${name}`,
      unit: 'm',
      kind: 'published' as const,
      source: 'iso13370' as const,
      where: 'table of periodic penetration depths',
      fromMemory: true,
      got: () => annualDepth_m(ground),
      want,
      within: 0.05,
      because: 'printed to two digits',
    }),
  ),
  room({
    quantity: 'shed floor: heat per kelvin of the year’s outdoor swing',
    unit: 'W/K',
    kind: 'independent calculation',
    source: 'iso13370',
    where: 'H_pe worked out apart',
    got: () => outdoorSwing_WK(floor(20, 18, 0.15, 2, 0)),
    want: 25.05,
    within: 0.05,
    because: 'four digits',
  }),
  ...(
    [
      [0.9, 68.647, 3.5],
      [0.45, 47.471, 1],
      [0.1, 31, 0.1],
    ] as const
  ).map(([absorptance, want, within]) =>
    room({
      quantity: `roof in 800 W/m² at 30 °C, absorptance ${absorptance}: sol-air temperature`,
      unit: '°C',
      kind: 'published' as const,
      source: 'ashraeFundamentals' as const,
      where: 'sol-air formula, h_o 17, sky 63 W/m², by hand',
      fromMemory: true,
      got: () => roofTemp_C(absorptance),
      want,
      within,
      because:
        'the formula keeps one coefficient; the fourth power sheds more from a hot roof (it must be under it)',
    }),
  ),
]
