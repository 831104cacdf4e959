export { hotSpellWeights } from './hot-spells.ts'
export {
  type ColumnOrigin,
  type Site,
  WEATHER_COLUMNS,
  type WeatherColumn,
  type WeatherRecord,
  isWholeYear,
} from './record.ts'
export { runningMeanOutdoor_C } from './running-mean.ts'
export { summariseClimate } from './statistics.ts'
