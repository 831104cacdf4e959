export { type Days, SUNSET_deg, localHour, outdoorDays } from './days.ts'
export { hotSpellWeights } from './hot-spells.ts'
export {
  type ColumnOrigin,
  type Site,
  WEATHER_COLUMNS,
  type WeatherColumn,
  type WeatherRecord,
  YEAR_HOURS,
  isWholeYear,
} from './record.ts'
export { summariseClimate } from './statistics.ts'
