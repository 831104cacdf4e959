import type { Site } from '#model/outdoors/weather'

/** Twelve numbers, January first. */
export type Monthly = readonly [
  number,
  number,
  number,
  number,
  number,
  number,
  number,
  number,
  number,
  number,
  number,
  number,
]

/** The kinds of climate an invented place can have. */
export type ClimateType =
  | 'hot desert'
  | 'foggy desert coast'
  | 'high dry plateau'
  | 'Mediterranean coast'
  | 'semi-arid, south of the equator'
  | 'monsoon plain'
  | 'humid subtropical'
  | 'wet tropics'
  | 'tropical savanna'
  | 'mild ocean coast'
  | 'continental'
  | 'cold continental'

/** An invented place: everything the generator needs to make its year. */
export interface InventedPlace {
  /** Short and stable; also the file name. */
  readonly id: string
  readonly type: ClimateType
  /** One or two sentences for people. */
  readonly description: string
  readonly site: Site
  readonly seed: number
  /** Month means the year is made to hold: air and dew point, °C; 24 h maximum − minimum, K; cloud, 0…1; m/s. */
  readonly airTemp_C: Monthly
  readonly dewPoint_C: Monthly
  readonly dailyRange_K: Monthly
  readonly cloud_frac: Monthly
  readonly wind_ms: Monthly
  /** Standard deviation of daily means about the season, coldest and warmest month, K. */
  readonly coldSpread_K: number
  readonly warmSpread_K: number
  /** Standard deviation of the daily dew point about the season, K. */
  readonly dewSpread_K: number
  /** Peak of the hottest planted spells above the season, K, and how many there are in the warm months. */
  readonly hotSpell_K: number
  readonly hotSpells: number
  /** Dew-point change at the peak of a hot spell, K: negative where heat comes from a desert. */
  readonly hotSpellDew_K: number
  /** Spread of the cloud's logit: 1.5 broken, 3 clear or overcast and little between. */
  readonly cloudContrast: number
  /** Swing of the cloud's logit through the day, and the solar hour it peaks at (16 convective, 7 fog). */
  readonly cloudSwing: number
  readonly cloudPeak_h: number
  /** Mean wind by night over mean wind by day. */
  readonly nightWind_frac: number
  /** Linke turbidity: 2 very clean, 3 usual, 5 hazy or dusty. */
  readonly turbidity: number
  /** Standard deviation of daily pressure, Pa. */
  readonly pressureSpread_Pa: number
}
