export { PLACE_CREDITS } from './credits.ts'
export { type FoundPlace, type PlaceAsked, findPlace } from './found.ts'
export type { PlaceMonths } from './months.ts'
export { readMonthsTable } from './months-table.ts'
export {
  type ChangedMonth,
  MONTH_COLUMNS,
  MONTH_NAMES,
  type MonthColumn,
  monthChangeText,
  type OwnMonth,
} from './own-months.ts'
export { type NearbyClimate, type Neighbour, nearbyClimate } from './nearest.ts'
export { type ClimatePlaces, readClimatePlaces } from './pack.ts'
export { type Town, type TownIndex, indexTowns, readTowns, townsLike, townsNamed } from './towns.ts'
export { type PlaceChoices, TRUST_IN_SHORT, USUAL_PLACE, placeWeather, trustLine } from './weather.ts'
