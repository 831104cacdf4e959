import { said, type Problem, words } from '#model/basis/words'
import { beforeMeasures } from './before-measures.ts'
import type { Scenario } from './fields.ts'
import { MEASURE_NAMES, PLANT_NAMES, type MeasureId, type WayPart } from './way-field.ts'
import { FIELDS } from './fields.ts'
import { withoutUngivenPrices } from './old-prices.ts'
import { withWayTaken } from './way.ts'

/** The way as versions 1 and 2 kept it: words of it, and the machine by itself; the room had its measures in it. */
export interface OlderWay {
  readonly way: string
  readonly machine: string
}

const NO_OLDER_WAY: OlderWay = { way: '', machine: 'none' }

/** A file’s groups without what versions 1 and 2 say of a way, and that. */
export interface WithOlderWay {
  readonly rest: Record<string, unknown>
  readonly older: OlderWay
}

/** Takes off a file of version 1 or 2 what it says of a way; what is no text there is left to be refused. */
export function olderWayIn(given: Record<string, unknown>, version: number): WithOlderWay {
  const value = version < 2 ? withoutUngivenPrices(given) : given
  const { job } = value
  if (version > 2 || typeof job !== 'object' || job === null || Array.isArray(job))
    return { rest: value, older: NO_OLDER_WAY }
  const { way, machine, ...others } = job as Record<string, unknown>
  return {
    rest: {
      ...value,
      job: {
        ...others,
        ...(way === undefined || typeof way === 'string' ? {} : { way }),
        ...(machine === undefined || typeof machine === 'string' ? {} : { machine }),
      },
    },
    older: {
      way: typeof way === 'string' ? way : '',
      machine: typeof machine === 'string' ? machine : 'none',
    },
  }
}

/** What a measure took the place of, where the room after it does not say what was there. */
const NOT_KNOWN: Readonly<Partial<Record<MeasureId, string>>> = {
  paintRoof: 'what the bare roof sends back and gives off (taken as 0.3 and 0.9)',
  insulateRoof: 'what the roof was made of (its U-value before is worked back)',
  insulateWalls: 'what the walls were made of (their U-value before is worked back)',
  nightOpening: 'whether windows were opened at night before (taken as shut)',
  nightFan: 'whether windows were opened at night before (taken as shut)',
  ceilingFan: 'how fast air moved at people before (taken as still)',
}

/**
 * A description of version 1 with its room as it was before the way's measures, as far as that can be worked back, and the way
 * beside it; what is simulated is then as it was. Words that name no measure are put into the note.
 */
export function withOlderWay(
  scenario: Scenario,
  { way, machine }: OlderWay,
  file?: string,
): { readonly scenario: Scenario; readonly warnings: readonly Problem[] } {
  const names = way
    .split(' + ')
    .map((name) => name.trim())
    .filter((name) => name !== '')
  const measures = idsOf(MEASURE_NAMES, names)
  const plants = idsOf(PLANT_NAMES, names)
  const plant = Object.keys(PLANT_NAMES).find((id) => id === machine) ?? plants[0]
  const parts = [...measures, ...(plant === undefined ? [] : [plant as WayPart])]
  const known = [...Object.values(MEASURE_NAMES), ...Object.values(PLANT_NAMES)] as readonly string[]
  const others = names.filter((name) => !known.includes(name))
  if (parts.length === 0 && others.length === 0) return { scenario, warnings: [] }
  const before = withinFields(beforeMeasures(scenario, measures))
  const { target, job } = before
  const note = others.length === 0 ? job.note : noted(job.note, others.join(' + '))
  const sized = plant !== undefined && plant !== 'panels' && target.area_m2 === 0
  const taken = {
    ...before,
    job: { ...job, note },
    target: sized ? { ...target, autoArea: true, area_m2: FIELDS.target.area_m2.default } : target,
  }
  return {
    scenario: withWayTaken(taken, parts),
    warnings: [...warningOf(measures, file), ...(others.length === 0 ? [] : [notedWarning(others, file)])],
  }
}

function idsOf<Id extends string>(all: Readonly<Record<Id, string>>, names: readonly string[]): Id[] {
  return (Object.keys(all) as Id[]).filter((id) => names.includes(all[id]))
}

const noted = (note: string, words: string): string =>
  `${note}${note === '' ? '' : '\n'}Way chosen: ${words}`.slice(0, FIELDS.job.note.maxLength)

const place = (file?: string) => (file === undefined ? { field: 'job.way' } : { file, field: 'job.way' })

function warningOf(measures: readonly MeasureId[], file?: string): Problem[] {
  if (measures.length === 0) return []
  const missing = [...new Set(measures.flatMap((id) => NOT_KNOWN[id] ?? []))]
  const left = missing.length === 0 ? 'All of it could be worked back.' : `Not known: ${missing.join('; ')}.`
  const named = measures.map((id) => MEASURE_NAMES[id]).join(' + ')
  return [
    {
      code: 'scenario-older-way',
      severity: 'warning',
      ...said(
        words`This design is of an older version, whose room had its measures in it (${named}). The room before them was worked back. ${left}`,
      ),
      remedy: 'Look over the room as it is on the Room step; the room with the measures is as before.',
      place: place(file),
    },
  ]
}

function notedWarning(others: readonly string[], file?: string): Problem {
  return {
    code: 'scenario-older-way',
    severity: 'warning',
    ...said(words`“${others.join(' + ')}” in the way of an older version names no measure.`),
    remedy: 'It is kept in the note of the design.',
    place: place(file),
  }
}

/** Numbers of the room that a measure worked back would bring out of their range, at its end. */
function withinFields(scenario: Scenario): Scenario {
  const room = Object.fromEntries(
    Object.entries(scenario.room).map(([name, value]) => {
      const field = FIELDS.room[name as keyof Scenario['room']]
      const within = (one: number, { min, max }: { min: number; max: number }) =>
        Math.min(max, Math.max(min, one))
      if (field.type === 'number') return [name, within(value as number, field)]
      if (field.type === 'dayProfile')
        return [name, (value as readonly number[]).map((one) => within(one, field))]
      return [name, value]
    }),
  )
  return { ...scenario, room: room as unknown as Scenario['room'] }
}
