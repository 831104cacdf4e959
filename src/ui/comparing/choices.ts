import {
  COATING_IDS,
  COVER_KINDS,
  PLAN_KINDS,
  coatingName,
  coverName,
  planName,
} from '#model/design/comparison'
import { LOAD_CUTS } from '#model/design/measures'
import { OWN_CLIMATE } from '#live/climate-choice.svelte.ts'
import type { Ticked } from '#live/compare-run.svelte.ts'
import { isPlaceId, readPlaceId } from '#live/place-id.ts'
import { SAMPLE_CLIMATES } from '#live/sample-climates.ts'

export interface Choice {
  readonly id: string
  readonly label: string
}

/** One list of boxes to tick. */
export interface ChoiceList {
  readonly axis: keyof Ticked
  readonly title: string
  readonly choices: readonly Choice[]
  /** False where nothing ticked is a choice too (the building as described is always there). */
  readonly needed: boolean
}

/** A place where its town is not at hand: by its coordinates. */
function placeName(id: string): string {
  const { latitude_deg, longitude_deg } = readPlaceId(id)
  return `Place at ${latitude_deg}, ${longitude_deg}`
}

/** Name of a climate in lists and tables. */
export function climateName(id: string, ownName: string | null): string {
  if (id === OWN_CLIMATE) return `Your file: ${ownName ?? 'weather'}`
  if (isPlaceId(id)) return placeName(id)
  const type = SAMPLE_CLIMATES.find((sample) => sample.id === id)?.type ?? id
  return type[0]!.toUpperCase() + type.slice(1)
}

const listed = (ids: readonly string[], label: (id: string) => string): Choice[] =>
  ids.map((id) => ({ id, label: label(id) }))

/** Everything that can be set side by side; `climate` is that of the design. */
export function choiceLists(ownClimate: string | null, climate: string): readonly ChoiceList[] {
  const climates = [
    ...(isPlaceId(climate) ? [climate] : []),
    ...(ownClimate === null ? [] : [OWN_CLIMATE]),
    ...SAMPLE_CLIMATES.map(({ id }) => id),
  ]
  return [
    {
      axis: 'climates',
      title: 'Climates',
      choices: listed(climates, (id) => climateName(id, ownClimate)),
      needed: true,
    },
    { axis: 'plans', title: 'Running plans', choices: listed(PLAN_KINDS, planName), needed: true },
    { axis: 'coatings', title: 'Coatings', choices: listed(COATING_IDS, coatingName), needed: true },
    { axis: 'covers', title: 'Covers', choices: listed(COVER_KINDS, coverName), needed: true },
    {
      axis: 'cuts',
      title: 'Beside the building as described',
      choices: listed(
        LOAD_CUTS.map(({ name }) => name),
        (name) => name,
      ),
      needed: false,
    },
  ]
}
