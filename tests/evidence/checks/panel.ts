import { blackbody_Wm2, LEWIS_FACTOR, evaporationHeat_Jkg } from '#model/outdoors/air'
import { restingPlate_C } from '#inside/model/panels/readings/resting-plate.ts'
import { sphereMultiplier, substitutionCorrected } from '#inside/model/panels/readings/light-box.ts'
import { panelBalance, type PanelHour } from '#model/panels/plate'
import { massTransfer } from '#inside/model/panels/plate/hour-inputs.ts'
import type { Check } from '../check.ts'
import {
  board,
  coating,
  heatAt,
  momentHour,
  overAir_K,
  statedCoefficient,
  THIN_FILM,
} from '../models/plate-case.ts'

const panel = (rest: Omit<Check, 'theme'>): Check => ({ theme: 'Panel', ...rest })

/** Conditions of ASTM E1980: 1000 W/m², air 310 K, sky 300 K. */
function e1980_C(reflectance: number, emittance: number, coefficient_Wm2K: number): number {
  const hour: PanelHour = {
    air_C: 36.85,
    pressure_Pa: 101325,
    vapour_Pa: 0,
    window_Wm2: 0,
    offWindow_Wm2: blackbody_Wm2(26.85),
    sun_Wm2: 1000,
    forced_Wm2K: coefficient_Wm2K,
  }
  return restingPlate_C(statedCoefficient(coating(reflectance, emittance)), hour, 0)
}

/** Solar reflectance index at a coefficient. */
function reflectanceIndex(reflectance: number, emittance: number, coefficient_Wm2K: number): number {
  const black = e1980_C(0.05, 0.9, coefficient_Wm2K)
  const white = e1980_C(0.8, 0.9, coefficient_Wm2K)
  return (100 * (black - e1980_C(reflectance, emittance, coefficient_Wm2K))) / (black - white)
}

/** A night of 12 h of one weather on an insulated board left alone, mm of dew. */
function dewNight_mm(air_C: number, dewPoint_C: number, forced_Wm2K: number): number {
  const setting = board(coating(0.9, 0.94), null, 0.4)
  const hour = momentHour({ air_C, dewPoint_C, sun_Wm2: 0, forced_Wm2K })
  let water = 0
  for (let quarter = 0; quarter < 48; quarter++) {
    const resting = restingPlate_C(setting, hour, water)
    water = Math.max(0, water + panelBalance(setting, hour, resting, water).water_kgm2s * 900)
  }
  return water
}

/** Beysens 2016, mm in 12 h: clear sky, sea level, wind under 4.4 m/s. */
function beysens_mm(air_C: number, dewPoint_C: number): number {
  const radiation = 0.37 * (1 - 18.0132e-3 * dewPoint_C) * ((dewPoint_C + 273.15) / 285) ** 4
  return 0.06 * (dewPoint_C - air_C) + radiation
}

/** Clear night with 2 m/s for the comparison of film and bare plate. */
const nightUnderFilm = { air_C: 20, dewPoint_C: 8, sun_Wm2: 0, forced_Wm2K: 6 }

const DEW_MISS =
  'ours is all the water that forms under twelve cloudless hours on an insulated board with the whole sky in view; theirs was collected. Our dew errs on the wet side, more so in warm air'

export const panelChecks: readonly Check[] = [
  ...(
    [
      ['black', 0.05, 5, 103.69],
      ['black', 0.05, 12, 82.46],
      ['black', 0.05, 30, 61.07],
      ['white', 0.8, 5, 49.25],
      ['white', 0.8, 12, 44.61],
      ['white', 0.8, 30, 40.77],
    ] as const
  ).map(([name, reflectance, coefficient, want]) =>
    panel({
      quantity: `${name} standard surface in the sun, coefficient ${coefficient} W/m²K`,
      unit: '°C',
      kind: 'independent calculation' as const,
      source: 'astmE1980' as const,
      where: 'energy balance of the standard, worked out apart',
      got: () => e1980_C(reflectance, 0.9, coefficient),
      want,
      within: 0.02,
      because: 'one equation in one unknown, printed to a hundredth',
    }),
  ),
  ...(
    [
      [0.83, 0.92, 104],
      [0.06, 0.86, -1],
      [0.26, 0.92, 28],
      [0.34, 0.9, 37],
    ] as const
  ).map(([reflectance, emittance, want]) =>
    panel({
      quantity: `solar reflectance index of a surface ${reflectance} / ${emittance} at 12 W/m²K`,
      unit: '–',
      kind: 'published' as const,
      source: 'reflectanceIndexLists' as const,
      where: 'for wind of 2 to 6 m/s (12 W/m²K)',
      fromMemory: true as const,
      got: () => reflectanceIndex(reflectance, emittance, 12),
      want,
      within: 1.2,
      because: 'printed whole numbers from reflectances printed to two digits',
    }),
  ),
  panel({
    quantity: 'heat of dew per W/m²K of convection and hPa of vapour, sea level',
    unit: 'W/m² per (W/m²K hPa)',
    kind: 'independent calculation',
    source: 'incropera',
    where: 'analogy of heat and mass transfer, eq. 6.60, by hand',
    got: () => massTransfer(101325) * evaporationHeat_Jkg(10) * 100,
    want: 1.66,
    within: 0.02,
    because: 'worked by hand to three digits',
  }),
  panel({
    quantity: 'mass over heat transfer, Le^(−2/3) of water vapour in air',
    unit: '–',
    kind: 'published',
    source: 'incropera',
    where: 'table A.8: D = 2.6e-5 m²/s and α = 2.25e-5 m²/s at 298 K',
    fromMemory: true,
    got: () => LEWIS_FACTOR,
    want: Number(((2.25 / 2.6) ** (-2 / 3)).toFixed(3)),
    within: 0.05,
    because: '5 %: what tabled diffusivities of vapour differ by',
  }),
  ...(
    [
      [15, 14, undefined],
      [20, 19, DEW_MISS],
      [10, 8.5, undefined],
    ] as const
  ).map(([air, dew, miss]) =>
    panel({
      quantity: `dew of a clear 12 h night, air ${air} °C, dew point ${dew} °C, light air`,
      unit: 'mm',
      kind: 'published' as const,
      source: 'beysens' as const,
      where: 'eq. by cloud, dew point and height',
      got: () => dewNight_mm(air, dew, 2),
      want: Number(beysens_mm(air, dew).toFixed(3)),
      within: Number((0.5 * beysens_mm(air, dew)).toFixed(3)),
      because:
        'half: a fit to real condensers that collect, ours counts all that forms on a well insulated board',
      ...(miss === undefined ? {} : { miss }),
    }),
  ),
  panel({
    quantity: 'dew of the best night there can be (saturated, 15 °C, nearly still)',
    unit: 'mm',
    kind: 'published',
    source: 'beysens',
    where: 'ceiling 0.7–0.8 mm a night',
    got: () => dewNight_mm(15, 15, 1),
    want: [0.2, 0.8],
    within: 0,
    because:
      'no surface radiates away more heat of condensation than that; measured maxima are 0.38 and 0.56',
  }),
  panel({
    quantity: 'dew at 70 % humidity in 2 m/s of wind',
    unit: 'mm',
    kind: 'published',
    source: 'beysens',
    where: 'next to none under 75 % or over 1.5 m/s (south-east Spain)',
    got: () => dewNight_mm(20, 14.4, 6),
    want: [0, 0.05],
    within: 0,
    because: 'a twentieth of a millimetre cannot be collected',
    miss: 'ours is all the water that forms under twelve cloudless hours with the whole sky in view; a collector yields less than forms on it',
  }),
  panel({
    quantity: 'film over the plate against bare, plate at air temperature, night: share of the heat kept',
    unit: '–',
    kind: 'independent calculation',
    source: 'exact',
    where:
      'net exchange through a film of transmittance 0.90 and 0.88 with the plate’s own reflections, film at its balance',
    got: () =>
      heatAt(board(coating(0.9, 0.94), THIN_FILM, 0), nightUnderFilm, 20) /
      heatAt(board(coating(0.9, 0.94), null, 0), nightUnderFilm, 20),
    want: [0.86, 0.95],
    within: 0,
    because: 'at least the transmittance, at most what the film re-emits half of',
  }),
  panel({
    quantity: 'how far below air a plate must run before a film pays, 2 m/s of wind',
    unit: 'K',
    kind: 'independent calculation',
    source: 'exact',
    where: 'bare and covered balance crossed, worked out apart: about 1.5 K',
    got: () => filmPays_K(),
    want: 1.5,
    within: 1,
    because: 'depends on film and wind; the rule is given to half a kelvin',
  }),
  panel({
    quantity: 'resting plate of emittance 0 with a mirror’s reflectance in the sun, over air',
    unit: 'K',
    kind: 'exact',
    source: 'exact',
    where: 'a perfect mirror takes the air’s temperature',
    got: () =>
      overAir_K(board(coating(1, 0), null, 0), { air_C: 25, dewPoint_C: 5, sun_Wm2: 1000, forced_Wm2K: 5 }),
    want: 0,
    within: 1e-4,
    because: 'nothing absorbed, nothing emitted, convection alone',
  }),
  panel({
    quantity: 'light box: sphere multiplier at wall 0.97 and ports 0.05',
    unit: '–',
    kind: 'independent calculation',
    source: 'goebel',
    where: 'ρ/(1 − ρ(1 − f)), by hand',
    got: () => sphereMultiplier(0.97, 0.05),
    want: 12.4,
    within: 0.05,
    because: 'worked by hand to three digits',
  }),
  ...(
    [
      [0.95, 0.01, -0.019],
      [0.97, 0.02, -0.049],
    ] as const
  ).map(([wall, port, want]) =>
    panel({
      quantity: `light box: uncorrected error at reflectance 0.80, wall ${wall}, port ${port}, other ports 0.03`,
      unit: '–',
      kind: 'independent calculation' as const,
      source: 'goebel' as const,
      where: 'substitution in a sphere, worked out apart',
      got: () => uncorrectedError(wall, port),
      want,
      within: 0.001,
      because: 'printed to a thousandth',
    }),
  ),
]

/** Where bare and covered plate shed the same heat, K under the air. */
function filmPays_K(): number {
  const bare = board(coating(0.93, 0.94), null, 0)
  const covered = board(coating(0.93, 0.94), THIN_FILM, 0)
  const gain = (below: number) =>
    heatAt(covered, nightUnderFilm, 20 - below) - heatAt(bare, nightUnderFilm, 20 - below)
  let [low, high] = [-5, 12]
  for (let i = 0; i < 50; i++) {
    const middle = (low + high) / 2
    if (gain(middle) < 0) low = middle
    else high = middle
  }
  return low
}

/** What the plain ratio of readings is off by when the sample is 0.80 and the reference 0.99. */
function uncorrectedError(wall: number, port: number): number {
  const box = { wallReflectance_frac: wall, samplePort_frac: port, otherPorts_frac: 0.03 }
  let [low, high] = [0.5, 1]
  for (let i = 0; i < 60; i++) {
    const ratio = (low + high) / 2
    if (substitutionCorrected(box, ratio, 0.99) < 0.8) low = ratio
    else high = ratio
  }
  return 0.99 * low - 0.8
}
