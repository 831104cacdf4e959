import type { CoatingOptics, FilmOptics } from '#model/panels/coating'
import { coating, type Moment } from '../models/plate-case.ts'
import type { SourceKey } from '../sources.ts'

/**
 * Film-covered plates in the open, by published result. What a paper gave us is the depression and mostly the coating;
 * air, dew point and wind are recalled or assumed and say so in `assumed`. They were written down before the
 * model was run on them and are not adjusted.
 */
export interface FilmCase {
  readonly name: string
  readonly source: SourceKey
  /** Read from the source, or recalled. */
  readonly fromMemory: boolean
  /** Plate below air, K: a value, or a band where the source says "more than" (2 K wide from there). */
  readonly below_K: number | readonly [number, number]
  readonly assumed: string
  readonly coating: CoatingOptics
  readonly film: FilmOptics
  readonly moment: Omit<Moment, 'forced_Wm2K'>
  readonly wind_ms: number
  /** Board across, m. */
  readonly across_m: number
}

/** Polyethylene of 10–15 µm over a 25 mm gap: optics as the project recalls thin film; flutter is the model's default. */
const thin = (gap_m = 0.025): FilmOptics => ({
  solarTransmittance_frac: 0.9,
  solarReflectance_frac: 0.08,
  windowTransmittance_frac: 0.9,
  windowReflectance_frac: 0.08,
  offWindowTransmittance_frac: 0.88,
  offWindowReflectance_frac: 0.08,
  gap_m,
  flutter_frac: 0.3,
})
/** Wind at the board where a paper gives none: by day and by night, m/s (common practice, no source). */
const DAY_WIND = 2
const NIGHT_WIND = 1
const SMALL = 0.2

export const FILM_CASES: readonly FilmCase[] = [
  {
    name: 'seven-layer reflector, 880 W/m² of sun',
    source: 'raman',
    fromMemory: true,
    below_K: 4.9,
    assumed: 'air 20 °C, dew point 4 °C, emittance 0.70 in the window and 0.15 beside it',
    coating: coating(0.97, 0.7, 0.15),
    film: thin(),
    moment: { air_C: 20, dewPoint_C: 4, sun_Wm2: 880 },
    wind_ms: DAY_WIND,
    across_m: SMALL,
  },
  {
    name: 'CaCO₃ paint at noon, 950 W/m²',
    source: 'liCaco3',
    fromMemory: false,
    below_K: [1.7, 3.7],
    assumed: 'air 20 °C, dew point 5 °C; that the board had a film is recalled',
    coating: coating(0.955, 0.94),
    film: thin(),
    moment: { air_C: 20, dewPoint_C: 5, sun_Wm2: 950 },
    wind_ms: DAY_WIND,
    across_m: SMALL,
  },
  {
    name: 'BaSO₄ particle film by day',
    source: 'liBaso4',
    fromMemory: false,
    below_K: [4.5, 6.5],
    assumed: 'air 30 °C, dew point 5 °C, 900 W/m²; that the board had a film is recalled',
    coating: coating(0.976, 0.96),
    film: thin(),
    moment: { air_C: 30, dewPoint_C: 5, sun_Wm2: 900 },
    wind_ms: DAY_WIND,
    across_m: SMALL,
  },
  {
    name: 'BaSO₄ coating in Malaysia, largest depression',
    source: 'joseph2023',
    fromMemory: false,
    below_K: 6.1,
    assumed: 'night, air 26 °C, dew point 22 °C; cover not read',
    coating: coating(0.95, 0.95),
    film: thin(),
    moment: { air_C: 26, dewPoint_C: 22, sun_Wm2: 0 },
    wind_ms: NIGHT_WIND,
    across_m: SMALL,
  },
  {
    name: 'near-black emitter on a mirror, by day',
    source: 'kou2017',
    fromMemory: false,
    below_K: 8.2,
    assumed: 'air 20 °C, dew point 2 °C, 750 W/m², reflectance 0.97, emittance 0.95',
    coating: coating(0.97, 0.95),
    film: thin(),
    moment: { air_C: 20, dewPoint_C: 2, sun_Wm2: 750 },
    wind_ms: DAY_WIND,
    across_m: 0.1,
  },
  {
    name: 'selective emitter under 12 mm of infrared-clear aerogel at solar noon in a high desert',
    source: 'leroy2019',
    fromMemory: false,
    below_K: 13,
    assumed:
      'air 25 °C, dew point −10 °C, 1000 W/m², 77 kPa; aerogel passes 0.80 of the infrared, sends 0.92 of sunlight back, conducts as still air (28 against 26 mW/m K)',
    coating: coating(0.94, 0.9, 0.5),
    film: {
      solarTransmittance_frac: 0.07,
      solarReflectance_frac: 0.92,
      windowTransmittance_frac: 0.8,
      windowReflectance_frac: 0.05,
      offWindowTransmittance_frac: 0.75,
      offWindowReflectance_frac: 0.05,
      gap_m: 0.012,
      flutter_frac: 0,
    },
    moment: { air_C: 25, dewPoint_C: -10, sun_Wm2: 1000, pressure_Pa: 77000 },
    wind_ms: DAY_WIND,
    across_m: SMALL,
  },
  {
    name: 'porous polymer, 890 W/m² in dry air',
    source: 'mandal2018',
    fromMemory: true,
    below_K: 6,
    assumed: 'air 28 °C, dew point 0 °C; that the board had a wind shield is recalled',
    coating: coating(0.96, 0.97),
    film: thin(),
    moment: { air_C: 28, dewPoint_C: 0, sun_Wm2: 890 },
    wind_ms: DAY_WIND,
    across_m: SMALL,
  },
  {
    name: 'porous acrylic at noon',
    source: 'wang2021',
    fromMemory: true,
    below_K: 6,
    assumed: 'air 25 °C, dew point 8 °C, 900 W/m²',
    coating: coating(0.95, 0.98),
    film: thin(),
    moment: { air_C: 25, dewPoint_C: 8, sun_Wm2: 900 },
    wind_ms: DAY_WIND,
    across_m: SMALL,
  },
  {
    name: 'delignified wood, day, Arizona',
    source: 'liWood2019',
    fromMemory: true,
    below_K: 4,
    assumed: 'air 25 °C, dew point 0 °C, 850 W/m²',
    coating: coating(0.96, 0.9),
    film: thin(),
    moment: { air_C: 25, dewPoint_C: 0, sun_Wm2: 850 },
    wind_ms: DAY_WIND,
    across_m: SMALL,
  },
  {
    name: 'delignified wood, night, Arizona',
    source: 'liWood2019',
    fromMemory: true,
    below_K: 9,
    assumed: 'air 15 °C, dew point 0 °C',
    coating: coating(0.96, 0.9),
    film: thin(),
    moment: { air_C: 15, dewPoint_C: 0, sun_Wm2: 0 },
    wind_ms: NIGHT_WIND,
    across_m: SMALL,
  },
  {
    name: 'water at air temperature through a covered panel, 0.2 L/min per m²: its fall',
    source: 'goldstein',
    fromMemory: true,
    below_K: [3, 5],
    assumed: 'night, air 20 °C, dew point 5 °C, panel 0.6 m, F′ 0.92; the source says up to 5 K',
    coating: coating(0.97, 0.9),
    film: thin(),
    moment: { air_C: 20, dewPoint_C: 5, sun_Wm2: 0 },
    wind_ms: NIGHT_WIND,
    across_m: 0.6,
  },
]
