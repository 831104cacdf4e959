import {
  COATING_IDS,
  COVER_KINDS,
  PLAN_KINDS,
  coatingName,
  coverName,
  planName,
} from '#model/design/comparison'
import { LOAD_CUTS } from '#model/design/measures'
import type { OwnClimate } from '#live/climate-choice.svelte.ts'
import type { Ticked } from '#live/compare-run.svelte.ts'
import { isPlaceId } from '#live/place-id.ts'
import { SAMPLE_CLIMATES } from '#live/sample-climates.ts'
import { climateName } from '#ui/choosing/climate-name.ts'

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

const listed = (ids: readonly string[], label: (id: string) => string): Choice[] =>
  ids.map((id) => ({ id, label: label(id) }))

/** Everything that can be set side by side; `climate` is that of the design, `towns` those added beside it. */
export function choiceLists(
  own: OwnClimate | null,
  climate: string,
  towns: readonly string[],
): readonly ChoiceList[] {
  const climates = [
    ...new Set([...(isPlaceId(climate) ? [climate] : []), ...towns]),
    ...(own === null ? [] : [own.id]),
    ...SAMPLE_CLIMATES.map(({ id }) => id),
  ]
  return [
    {
      axis: 'climates',
      title: 'Climates',
      choices: listed(climates, (id) => climateName(id, own)),
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
