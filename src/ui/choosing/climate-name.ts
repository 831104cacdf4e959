import { sentenceCase } from '#model/basis/words'
import type { OwnClimate } from '#live/climate-choice.svelte.ts'
import { isOwnId, OWN_CLIMATE } from '#live/own-id.ts'
import { isPlaceId, readPlaceId } from '#live/place-id.ts'
import { SAMPLE_CLIMATES } from '#live/sample-climates.ts'

/** A place by the name it was chosen by, or by its coordinates. */
function placeName(id: string): string {
  const { latitude_deg, longitude_deg, name, hotSummer, own } = readPlaceId(id)
  return `${name ?? `Place at ${latitude_deg}, ${longitude_deg}`}${hotSummer ? ', a hot summer' : ''}${own.length > 0 ? ', own months' : ''}`
}

/** Name of a climate in lists and tables. */
export function climateName(id: string, own: OwnClimate | null): string {
  if (isOwnId(id)) {
    const here = own !== null && (id === OWN_CLIMATE || id === own.id)
    return here ? `Your file: ${own.name}` : 'A weather file that is not here'
  }
  if (isPlaceId(id)) return placeName(id)
  return sentenceCase(SAMPLE_CLIMATES.find((sample) => sample.id === id)?.type ?? id)
}
