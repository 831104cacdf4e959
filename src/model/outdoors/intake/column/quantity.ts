/** What a column of a weather table can hold, with the units it comes in (the first is the usual one). */
export const QUANTITIES = {
  airTemp: { label: 'Air temperature', units: ['C', 'K', 'F'] },
  dewPoint: { label: 'Dew point', units: ['C', 'K', 'F'] },
  relativeHumidity: { label: 'Relative humidity', units: ['%', 'frac'] },
  wetBulb: { label: 'Wet-bulb temperature', units: ['C', 'K', 'F'] },
  vapourPressure: { label: 'Vapour pressure', units: ['hPa', 'Pa', 'kPa', 'mmHg', 'inHg'] },
  vapourDeficit: { label: 'Vapour pressure deficit', units: ['hPa', 'Pa', 'kPa', 'mmHg', 'inHg'] },
  specificHumidity: { label: 'Specific humidity', units: ['kg/kg', 'g/kg'] },
  mixingRatio: { label: 'Mixing ratio of water vapour', units: ['kg/kg', 'g/kg'] },
  pressure: { label: 'Air pressure at the site', units: ['hPa', 'Pa', 'kPa', 'mmHg', 'inHg'] },
  windSpeed: { label: 'Wind speed at 10 m', units: ['m/s', 'km/h', 'mph', 'kn'] },
  windEast: { label: 'Wind towards the east', units: ['m/s', 'km/h', 'mph', 'kn'] },
  windNorth: { label: 'Wind towards the north', units: ['m/s', 'km/h', 'mph', 'kn'] },
  windDirection: { label: 'Wind direction', units: ['deg'] },
  globalHorizontal: {
    label: 'Global horizontal irradiance',
    units: ['W/m2', 'Wh/m2', 'kJ/m2', 'J/cm2', 'MJ/m2', 'J/m2', 'Ly', 'Ly/day', 'cal/cm2min'],
  },
  directNormal: {
    label: 'Direct normal irradiance',
    units: ['W/m2', 'Wh/m2', 'kJ/m2', 'J/cm2', 'MJ/m2', 'J/m2', 'Ly', 'Ly/day', 'cal/cm2min'],
  },
  diffuseHorizontal: {
    label: 'Diffuse horizontal irradiance',
    units: ['W/m2', 'Wh/m2', 'kJ/m2', 'J/cm2', 'MJ/m2', 'J/m2', 'Ly', 'Ly/day', 'cal/cm2min'],
  },
  directHorizontal: {
    label: 'Direct irradiance on the horizontal',
    units: ['W/m2', 'Wh/m2', 'kJ/m2', 'J/cm2', 'MJ/m2', 'J/m2', 'Ly', 'Ly/day', 'cal/cm2min'],
  },
  opaqueCloud: { label: 'Opaque cloud', units: ['tenths', 'oktas', '%', 'frac'] },
  totalCloud: { label: 'Total cloud', units: ['tenths', 'oktas', '%', 'frac'] },
  skyLongwave: {
    label: 'Longwave from the sky',
    units: ['W/m2', 'Wh/m2', 'kJ/m2', 'J/cm2', 'MJ/m2', 'J/m2', 'Ly', 'Ly/day', 'cal/cm2min'],
  },
  latitude: { label: 'Latitude', units: ['deg'] },
  longitude: { label: 'Longitude', units: ['deg'] },
  dateTime: { label: 'Date and time', units: ['stamp'] },
  date: { label: 'Date', units: ['stamp'] },
  timeOfDay: { label: 'Time of day', units: ['stamp'] },
  year: { label: 'Year', units: ['count'] },
  month: { label: 'Month', units: ['count'] },
  day: { label: 'Day of the month', units: ['count'] },
  dayOfYear: { label: 'Day of the year (may have a fraction)', units: ['count'] },
  hour: { label: 'Hour (0–24, may have a fraction)', units: ['count', 'hhmm'] },
  minute: { label: 'Minute', units: ['count'] },
  hourOfYear: { label: 'Hour of the year', units: ['count'] },
  epoch: { label: 'Seconds since 1970', units: ['s', 'ms'] },
  stampNumber: { label: 'Date and time as one number (YYYYMMDDHH…)', units: ['count'] },
  ignore: { label: 'Not used', units: [''] },
} as const

export type Quantity = keyof typeof QUANTITIES
/** A unit as it is written in a mapping; see `unit.ts` for what each means. */
export type Unit = (typeof QUANTITIES)[Quantity]['units'][number]

const TIME_QUANTITIES: ReadonlySet<Quantity> = new Set([
  'dateTime',
  'date',
  'timeOfDay',
  'year',
  'month',
  'day',
  'dayOfYear',
  'hour',
  'minute',
  'hourOfYear',
  'epoch',
  'stampNumber',
])

/** True for the quantities that say when a row was. */
export function givesTime(quantity: Quantity): boolean {
  return TIME_QUANTITIES.has(quantity)
}

export function isQuantity(word: unknown): word is Quantity {
  return typeof word === 'string' && Object.hasOwn(QUANTITIES, word)
}

/** True when the unit is one the quantity comes in. */
export function isUnitOf(quantity: Quantity, unit: unknown): unit is Unit {
  return (QUANTITIES[quantity].units as readonly unknown[]).includes(unit)
}
