import { AGEING_RANGES } from '#model/panels/coating'
import { skyDoubtTimes, type SkyDoubtWeather } from './sky-doubt.ts'
import type { Scenario } from './fields.ts'
import type { Spread } from './spread.ts'
import { madeSpreads } from './made-spreads.ts'
import { fieldAt } from './schema.ts'
import type { UncertainInput } from '#model/design/sizing'
import type { WeatherRecord } from '#model/outdoors/weather'

/** Draws of a range when nobody says otherwise: page and command line give the same numbers. */
export const USUAL_DRAWS = 256

/** The named ranges of the uncertainty run. */
export const SPREADS: readonly Spread[] = [
  {
    field: 'sky.deficitFactor_frac',
    label: 'Sky radiation',
    times: [0.85, 1.15],
    reason:
      'Clear-sky formulas differ by about 15 % in what the sky falls short of black (design of this project; Matsunobu & Coimbra 2024 against Berdahl & Martin 1984).',
  },
  {
    field: 'panel.fieldFactor_frac',
    label: 'Field against ideal',
    between: [0.7, 1],
    reason: 'Idealised radiators read 20–30 % high in published field tests.',
  },
  {
    field: 'panel.windExposure_frac',
    label: 'Wind at the panel',
    times: [0.6, 1.4],
    reason: 'Terrain classes and wind formulas span 11.8–18.5 W/m²K at 3 m/s.',
  },
  {
    field: 'coating.windowEmittance_frac',
    label: 'Emittance 8–13 µm',
    plus: [-0.02, 0.02],
    reason: 'Home measurement; published white paints 0.90–0.95.',
  },
  {
    field: 'coating.solarReflectance_frac',
    label: 'Solar reflectance',
    plus: [-0.04, 0.02],
    reason: 'A light meter gives ± 0.05; yellowing only lowers it.',
  },
  AGEING_RANGES.dirt,
  AGEING_RANGES.filmLife,
  {
    field: 'room.airChange_1h',
    label: 'Air leaks',
    times: [0.6, 1.5],
    reason: 'Untested small buildings: common practice, no source.',
  },
  {
    field: 'room.wallMass_kgm2',
    label: 'Mass of the walls',
    times: [0.75, 1.25],
    reason: 'Weighed by eye: common practice, no source.',
  },
  {
    field: 'room.roofU_Wm2K',
    label: 'Roof insulation',
    times: [0.85, 1.25],
    reason: 'Workmanship: common practice, no source.',
  },
  {
    field: 'room.shading_frac',
    label: 'Sunlight past the shading',
    times: [0.7, 1.3],
    reason: 'Common practice, no source.',
  },
  {
    field: 'store.delivery_WK',
    label: 'Delivery',
    times: [0.8, 1.2],
    reason: 'Fan coils off their rating: common practice, no source.',
  },
  {
    field: 'site.hotSpell_K',
    label: 'A hotter or milder year',
    plus: [-1, 1.5],
    reason:
      'Years differ by about a kelvin in their hottest spells, and typical years leave out the hottest: common practice, no source.',
  },
]

/** The sky of a measured file: over a hot spell, by kind of climate. */
const skySpread = (weather: SkyDoubtWeather): Spread => ({
  field: 'sky.deficitFactor_frac',
  label: 'Sky radiation',
  times: skyDoubtTimes(weather),
  reason:
    'Modelled less measured nights, over the mean of five, at places of this kind of climate: 16 to 33 % of what the sky falls short of black.',
})

/** What is off besides under a film. */
const FILM_SPREAD: Spread = {
  field: 'cover.flutter_frac',
  label: 'Flutter of the film',
  between: [0, 0.5],
  reason:
    'No measurement of a flutter conductance was found; covered rigs in the field lose 4–11 W/m²K beside radiation, a still gap 1 to 2.',
}

/** The spreads for hours that were measured, or made from months. */
function spreadsFor(weather: MadeOrMeasured, cover: Scenario['cover']['kind']): readonly Spread[] {
  const film = cover === 'film' ? [FILM_SPREAD] : []
  const { madeFrom, madeErrors } = weather
  if (madeFrom === undefined) {
    const sky = skySpread(weather)
    return [...SPREADS.map((spread) => (spread.field === sky.field ? sky : spread)), ...film]
  }
  const made = madeSpreads(SPREADS, madeErrors)
  const fields = made.map(({ field }) => field)
  return [...SPREADS.filter(({ field }) => !fields.includes(field)), ...made, ...film]
}

/** What of the weather decides how far it may be off. */
export type MadeOrMeasured = Pick<WeatherRecord, 'madeFrom' | 'madeErrors'> & SkyDoubtWeather

/** The inputs with the ends they are drawn between for one scenario, cut to the fields' own ranges. */
export function uncertainInputs(scenario: Scenario, weather: MadeOrMeasured): UncertainInput[] {
  return spreadsFor(weather, scenario.cover.kind).map((spread) => {
    const { value, min, max } = numberAt(scenario, spread.field)
    const ends = spread.between ?? endsAround(value, spread)
    const within = (end: number): number => Math.min(max, Math.max(min, end))
    return { field: spread.field, label: spread.label, low: within(ends[0]), high: within(ends[1]) }
  })
}

function endsAround(value: number, { times, plus }: Spread): readonly [number, number] {
  if (times !== undefined) return [value * times[0], value * times[1]]
  return [value + (plus?.[0] ?? 0), value + (plus?.[1] ?? 0)]
}

function numberAt(scenario: Scenario, path: string): { value: number; min: number; max: number } {
  const found = fieldAt(path)
  if (found === null || found.field.type !== 'number') throw new RangeError(`${path} is not a number field`)
  const fields = scenario[found.group] as unknown as Record<string, number>
  return { value: fields[found.name]!, min: found.field.min, max: found.field.max }
}

/** The scenario of one draw: each input at its value. */
export function drawnScenario(
  scenario: Scenario,
  inputs: readonly UncertainInput[],
  values: readonly number[],
): Scenario {
  const out: Record<string, unknown> = { ...scenario }
  inputs.forEach(({ field }, i) => {
    const [group, name] = field.split('.') as [string, string]
    out[group] = { ...(out[group] as object), [name]: values[i] }
  })
  return out as unknown as Scenario
}
