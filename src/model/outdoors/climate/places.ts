import { DRY_PLACES } from './dry-places.ts'
import { WET_PLACES } from './wet-places.ts'
import { COOL_PLACES } from './cool-places.ts'
import type { InventedPlace } from './place.ts'

/** All invented places, hottest and driest first. Names, coordinates and numbers are made up. */
export const PLACES: readonly InventedPlace[] = [...DRY_PLACES, ...WET_PLACES, ...COOL_PLACES]

/** The place with an id. @throws RangeError when there is none */
export function placeById(id: string): InventedPlace {
  const place = PLACES.find((candidate) => candidate.id === id)
  if (place === undefined) throw new RangeError(`placeById: no invented place "${id}"`)
  return place
}
