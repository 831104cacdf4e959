import { FIELDS } from '#model/scenario/fields.ts'
import type { Check } from '../check.ts'
import { board, coating, overAir_K, statedCoefficient, THIN_FILM, type Moment } from '../models/plate-case.ts'

const trade = (rest: Omit<Check, 'theme' | 'kind' | 'source'>): Check => ({
  theme: 'Facts of the trade',
  kind: 'common practice',
  source: 'commonPractice',
  ...rest,
})

/** Clear dry night, a board on the ground, a breath of wind (0.5 m/s). */
const night: Moment = { air_C: 29, dewPoint_C: 5, sun_Wm2: 0, forced_Wm2K: 1.5 }
/** Clear summer noon, 2 m/s at the board. */
const noon: Moment = { air_C: 29, dewPoint_C: 10, sun_Wm2: 950, forced_Wm2K: 6 }
/** The same behind a wall: half the sky, its diffuse light, less wind. */
const shade: Moment = { air_C: 29, dewPoint_C: 10, sun_Wm2: 100, forced_Wm2K: 3, skyView_frac: 0.5 }

/** Ordinary white wall paint, and the coating a new scenario of this app starts with. */
const ordinary = coating(0.8, 0.9)
const { solarReflectance_frac, windowEmittance_frac, offWindowEmittance_frac } = FIELDS.coating
const homeMade = coating(
  solarReflectance_frac.default,
  windowEmittance_frac.default,
  offWindowEmittance_frac.default,
)
const NIGHT = 'air 29 °C, dew point 5 °C, 0.5 m/s'
const NOON = 'air 29 °C, dew point 10 °C, 950 W/m², 2 m/s'
const ABOUT = '“about”: weather is plausible, not measured; 3 K'

const SHADE_MISS =
  'the half of the view that is not sky is taken at air temperature; real walls and ground in summer are warmer'

export const tradeChecks: readonly Check[] = [
  trade({
    quantity: `clear dry night (${NIGHT}): ordinary white paint, bare, below air`,
    unit: 'K',
    got: () => -overAir_K(board(ordinary), night),
    want: 11,
    within: 3,
    because: ABOUT,
  }),
  trade({
    quantity: `clear dry night (${NIGHT}): cooling paint, bare, below air`,
    unit: 'K',
    got: () => -overAir_K(board(homeMade), night),
    want: 11,
    within: 3,
    because: ABOUT,
  }),
  trade({
    quantity: `clear dry night (${NIGHT}): cooling paint under ordinary white paint`,
    unit: 'K',
    got: () => overAir_K(board(ordinary), night) - overAir_K(board(homeMade), night),
    want: 0,
    within: 1,
    because: 'within about a kelvin of each other',
  }),
  trade({
    quantity: `direct sun (${NOON}): good home-made cooling paint, bare, over air`,
    unit: 'K',
    got: () => overAir_K(board(homeMade), noon),
    want: 0,
    within: 3,
    because: ABOUT,
  }),
  trade({
    quantity: `direct sun (${NOON}): ordinary white paint over the cooling paint`,
    unit: 'K',
    got: () => overAir_K(board(ordinary), noon) - overAir_K(board(homeMade), noon),
    want: [3, 11],
    within: 0,
    because: 'up to 11 K warmer',
  }),
  trade({
    quantity: `direct sun (${NOON}): the cooling paint under a thin film, below air`,
    unit: 'K',
    got: () => -overAir_K(board(homeMade, THIN_FILM), noon),
    want: 1,
    within: 2,
    because: 'about 1 K; half a hundredth of reflectance alone is a kelvin',
  }),
  ...(
    [
      ['ordinary white paint', ordinary],
      ['cooling paint', homeMade],
    ] as const
  ).map(([name, optics]) =>
    trade({
      quantity: `open shade (air 29 °C, dew point 10 °C, half the sky, 100 W/m² of diffuse light): ${name}, below air`,
      unit: 'K',
      got: () => -overAir_K(board(optics), shade),
      want: [0.3, 4],
      within: 0,
      because: 'a little below air',
      ...(optics === homeMade ? { miss: SHADE_MISS } : {}),
    }),
  ),
  trade({
    quantity:
      'best daylight results (0.98 / 0.95 under film, air 20 °C, dew point 5 °C, 900 W/m²), below air',
    unit: 'K',
    got: () =>
      -overAir_K(board(coating(0.98, 0.95), THIN_FILM), {
        air_C: 20,
        dewPoint_C: 5,
        sun_Wm2: 900,
        forced_Wm2K: 6,
      }),
    want: [2, 7],
    within: 0,
    because: 'a few kelvin',
    miss: 'an ideal film over a still gap (field gaps take twice the heat: 8 K then), no dust and the whole of a dry sky: the case for a field factor under 1',
  }),
  trade({
    quantity:
      'published lab coatings (selective 0.97 / 0.93 / 0.2 in a draught-proof box: 3 W/m²K in all, air 25 °C, dew point 8 °C, 600 W/m²), below air',
    unit: 'K',
    got: () =>
      -overAir_K(statedCoefficient(coating(0.97, 0.93, 0.2)), {
        air_C: 25,
        dewPoint_C: 8,
        sun_Wm2: 600,
        forced_Wm2K: 3,
      }),
    want: 10,
    within: 3,
    because: ABOUT,
    miss: 'just over the band: the conditions are our guess, and an ideal selective box reads high',
  }),
  trade({
    quantity: 'fresh snow: the highest ground reflectance that can be entered',
    unit: '–',
    got: () => FIELDS.site.albedo_frac.max,
    want: [0.98, 1],
    within: 0,
    because: 'fresh snow reflects over 98 % (in visible light)',
  }),
]
