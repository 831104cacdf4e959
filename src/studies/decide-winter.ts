/** What measures cost or save in heating, and what they do to mould. */
import { idealLoad } from '#model/building/year'
import { AIR_MEASURES, BUILDING_MEASURES, winterDamp, type Measure } from '#model/design/measures'
import type { WeatherRecord } from '#model/outdoors/weather'
import type { Trials } from './decide-trial.ts'

/** Winter with some measures, beside the building as it is. */
export interface WinterLine {
  /** Heat that keeps the room at the user's winter temperature through a year, over that of the building as it is, J. */
  readonly heatingChange_J: number
  readonly heating_J: number
  /** Months with mould weather at the coldest corner, with the measures and as it is. */
  readonly mouldMonths: number
  readonly mouldMonthsBefore: number
  /** The same for panes that are wet. */
  readonly wetPaneMonths: number
  readonly wetPaneMonthsBefore: number
}

const STEPS = { cool_C: null, stepsPerHour: 2, warmUp_h: 21 * 24 }

/** Winters of one search, each set of measures once. */
export class Winter {
  private readonly known = new Map<
    string,
    { heating_J: number; mouldMonths: number; wetPaneMonths: number }
  >()
  private readonly trials: Trials
  private readonly weather: WeatherRecord

  constructor(trials: Trials, weather: WeatherRecord) {
    this.trials = trials
    this.weather = weather
  }

  of(ids: readonly Measure['id'][]): WinterLine {
    const before = this.with([])
    const after = this.with(ids)
    return {
      heating_J: after.heating_J,
      heatingChange_J: after.heating_J - before.heating_J,
      mouldMonths: after.mouldMonths,
      mouldMonthsBefore: before.mouldMonths,
      wetPaneMonths: after.wetPaneMonths,
      wetPaneMonthsBefore: before.wetPaneMonths,
    }
  }

  private with(ids: readonly Measure['id'][]) {
    const set = [...BUILDING_MEASURES, ...AIR_MEASURES].filter(
      ({ id }) => ids.includes(id) && !SUMMER.has(id),
    )
    const key = set.map(({ id }) => id).join(' ')
    const known = this.known.get(key)
    if (known !== undefined) return known
    const { heatedTo_C } = this.trials.scenario.target
    const { heating_J } = idealLoad(this.trials.with(set).room, {
      ...STEPS,
      by: 'operative',
      heat_C: heatedTo_C,
    })
    const damp = winterDamp(this.trials.described(set), this.weather, heatedTo_C)
    const found = { heating_J, mouldMonths: damp.mouldMonths, wetPaneMonths: damp.wetPaneMonths }
    this.known.set(key, found)
    return found
  }
}

/** Used in summer only: windows are shut, and fans off, while the room is heated. */
const SUMMER: ReadonlySet<Measure['id']> = new Set(['nightOpening', 'nightFan', 'ceilingFan'])
