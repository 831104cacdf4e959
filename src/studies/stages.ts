/**
 * The only place that knows the order of the stages.
 *
 *   weather → sun → sky → panel hours → year → sizing
 *                 coating ┘   loop, room, store ┘
 *
 * Each stage is remembered by what it depends on, so that a change re-runs only what it touches: weather
 * everything; coating or cover from the panel hours on; area, flow, store, plan and room the year only.
 */
import { RingPart } from '#model/basis/hours'
import { stressWeather } from '#model/outdoors/climate'
import { Memory } from './memory.ts'
import type { WayYear } from './way-year.ts'
import { reducePanelHours, type PanelSpec } from '#model/panels/plate'
import { type RoomNetwork, roomExposure, roomWithin } from '#model/building/room'
import { crossFieldProblems, unusualValues, type Scenario } from '#model/design/scenario'
import {
  type Built,
  type DesignAnswer,
  type Fit,
  fitOf,
  builtOf,
  designFlow,
  designOf,
  taskOf,
  type Design,
  designRemarks,
  hottestWeekStart_h,
  limitOfDesign,
  monthSummaries,
  type Prepared,
  refuseOutOfRange,
  roundingWords,
  loopSpecOf,
  panelSpecOf,
  planSpecOf,
  roomSpecOf,
  skyOptionsOf,
  targetSpecOf,
  ventStop_C,
} from '#model/design/assembly'
import { LOAD_CUTS, withWay } from '#model/design/measures'
import { type Exceedance, exceedance, yardstickOf } from '#model/design/target'
import {
  aboutArea,
  type AboutArea,
  type NearDesign,
  type LoadCut,
  type SizingResult,
  judgeOwnArea,
  sizePanels,
  type AreaAlone,
} from '#model/design/sizing'
import { skyHours } from '#model/outdoors/sky'
import { type PlaneIrradiance, type SunHours, planeIrradiance, sunHours } from '#model/outdoors/sun'
import type { WeatherRecord } from '#model/outdoors/weather'
import { planHours, simulateYear, USUAL_YEAR, type YearResult } from '#model/building/year'

/** A load cut that lowers the peak by less is not worth naming, K. */
const WORTH_NAMING_K = 0.05
/** Tank per m² of panel near an answer that has no panels itself, m³/m² (common practice, no source). */
const USUAL_STORE_m3m2 = 0.08

/** The stages with their memories. One for each worker or shell run; nothing is shared between stages. */
export class Stages {
  /** Of what is made from results of the stages as well. */
  readonly memory = new Memory()
  /** Answers what has a way taken; a page gives it only then, so that its first load is the smaller. */
  wayYear: WayYear | null

  constructor(wayYear: WayYear | null = null) {
    this.wayYear = wayYear
  }

  /** Stressed weather, sun and sky. */
  skyOf(scenario: Scenario, record: WeatherRecord): Pick<Prepared, 'weather' | 'sun' | 'sky'> {
    const { wholeYear_K, hotSpell_K, moreHumid_K, windFactor_frac } = scenario.site
    const stress = { wholeYear_K, hotSpell_K, moreHumid_K, windFactor_frac }
    const options = skyOptionsOf(scenario)
    const weather = this.memory.recall('weather', [record, stress], () => stressWeather(record, stress))
    const sun = this.memory.recall('sun', whenAndWhere(weather), () => sunOf(weather))
    const sky = this.memory.recall('sky', [weather, options], () => skyHours(weather, options))
    return { weather, sun, sky }
  }

  /** The same, and the panel hours. */
  panelOf(scenario: Scenario, record: WeatherRecord): Pick<Prepared, 'weather' | 'sun' | 'sky' | 'panel'> {
    const { weather, sun, sky } = this.skyOf(scenario, record)
    const spec = panelSpecOf(scenario)
    const panel = this.memory.recall('panel', [sky, sun, spec], () =>
      reducePanelHours(weather, sunOnPanel(weather, sun, spec), sky, spec),
    )
    return { weather, sun, sky, panel }
  }

  /** @param part  the hours it will be run in; all when left out */
  private roomOf(
    given: Scenario,
    record: WeatherRecord,
    part: RingPart | null = null,
  ): Pick<Prepared, 'room' | 'yardstick'> {
    const { memory } = this
    const scenario = withWay(given, record)
    const roomSpec = roomSpecOf(scenario)
    const target = targetSpecOf(scenario)
    const { weather, sun, sky } = this.skyOf(scenario, record)
    const make = (): RoomNetwork => {
      const exposed = roomExposure(weather, sun, sky, roomSpec, memory.recall)
      return roomWithin(exposed, weather, sun, roomSpec, { recall: memory.recall, part })
    }
    const room = part === null ? memory.recall('room', [sky, sun, roomSpec], make) : make()
    const yardstick = memory.recall('yardstick', [weather, target], () => yardstickOf(target, weather))
    return { room, yardstick }
  }

  /**
   * How the room left alone does in some hours of the year, the others not counted: never more than it does in all. Only the rows
   * of those hours and their warm-up are made: most of the cost of so short a run would be those of the others.
   */
  leftAlone(scenario: Scenario, record: WeatherRecord, span: readonly [number, number]): Exceedance {
    const part = new RingPart(record.hours, [[span[0] - USUAL_YEAR.warmUp_h, span[1]]])
    const { room, yardstick } = this.roomOf(scenario, record, part)
    const inputs = { room, plant: null, nightVentStop_C: ventStop_C(scenario) }
    return exceedance(simulateYear(inputs, { lean: true, books: false, span }).room_C, yardstick)
  }

  /**
   * Runs (or recalls) the stages up to the room left alone, with the measures of the way taken in the room. @throws ProblemError, RangeError as the stages do
   * @param lean  of the room left alone only its temperature is wanted
   */
  prepare(given: Scenario, record: WeatherRecord, lean = false): Prepared {
    const { memory } = this
    const scenario = withWay(given, record)
    const plan = planSpecOf(scenario)
    const nightVentStop_C = ventStop_C(scenario)
    const { weather, sun, sky, panel } = this.panelOf(scenario, record)
    const { room, yardstick } = this.roomOf(scenario, record)
    const allowed = memory.recall('plan', [weather, sun, plan], () => planHours(weather, sun, plan))
    const doNothing = memory.recall(lean ? 'doNothingLean' : 'doNothing', [room, nightVentStop_C], () =>
      simulateYear({ room, plant: null, nightVentStop_C }, { keepStates: true, lean, books: !lean }),
    )
    const flow_kgsm2 = memory.recall('flow', [loopSpecOf(scenario)], () => designFlow(scenario))
    return {
      scenario,
      weather,
      sun,
      sky,
      panel,
      room,
      allowed,
      yardstick,
      nightVentStop_C,
      doNothing,
      flow_kgsm2,
    }
  }

  /** Sizes (or judges the user's own area), then simulates the chosen design. @throws ProblemError out of range */
  answer(scenario: Scenario, record: WeatherRecord): DesignAnswer {
    const prepared = this.prepare(scenario, record)
    refuseOutOfRange(prepared)
    const plain = builtOf(prepared, sizingOf(prepared))
    const { design } = plain
    const way = this.wayTaken(scenario, record, prepared, plain)
    const year = way?.year ?? plain.year
    const built =
      way === null
        ? plain.sizing
        : { ...plain.sizing, withPanels: exceedance(year.room_C, prepared.yardstick) }
    const panels = design.candidate.area_m2 > 0 || scenario.job.way.length === 0
    const limit = built.kind === 'notNeeded' || !panels ? null : limitOfDesign(prepared, design, year)
    const loadCuts = built.kind === 'floor' ? this.loadCuts(prepared, built, design, record) : []
    const answer = answerOf(prepared, { ...built, limit, loadCuts }, design, year, fitOf(prepared, design))
    const warnings = [...crossFieldProblems(scenario), ...answer.warnings]
    return { ...answer, warnings, scenario, way: way?.taken ?? null }
  }

  private wayTaken(scenario: Scenario, record: WeatherRecord, prepared: Prepared, plain: Built) {
    if (scenario.job.way.length === 0) return null
    if (this.wayYear === null) throw new RangeError('stages: a way is taken, and nothing was given for it')
    return this.wayYear(this, scenario, record, prepared, plain)
  }

  /** About the area alone, from an answer to a description near this one: what can follow a hand on a slider. */
  about(scenario: Scenario, record: WeatherRecord, before: NearDesign): AboutArea {
    const task = taskOf(this.prepare(scenario, record))
    return aboutArea(task, areaAlone(before, task.guess_m2))
  }

  /** The load cuts that would help at the largest area, best first. */
  private loadCuts(
    prepared: Prepared,
    sizing: SizingResult,
    design: Design,
    record: WeatherRecord,
  ): LoadCut[] {
    const cuts = LOAD_CUTS.filter(({ fits }) => fits?.(prepared.scenario) ?? true).map((option): LoadCut => {
      const changed = this.prepare(option.apply(prepared.scenario), record)
      const inputs = designOf(changed, design.candidate, 'built').inputs
      const found = exceedance(simulateYear(inputs, { lean: true }).room_C, changed.yardstick)
      const enough = found.measure <= 0
      const peakDrop_K = sizing.withPanels.peak_C - found.peak_C
      return { name: option.name, peakDrop_K, area_m2: enough ? design.candidate.area_m2 : null }
    })
    return cuts
      .filter((cut) => cut.peakDrop_K > WORTH_NAMING_K)
      .toSorted((a, b) => b.peakDrop_K - a.peakDrop_K)
  }
}

/** What a search for the area alone takes from an answer; its guess is a task's where the answer has no panels. */
function areaAlone({ area_m2, storeVolume_m3, slope }: NearDesign, guess_m2: number): AreaAlone {
  const ratio_m3m2 = area_m2 > 0 ? storeVolume_m3 / area_m2 : 0
  return { guess_m2: area_m2 || guess_m2, ratio_m3m2: ratio_m3m2 || USUAL_STORE_m3m2, slope }
}

/** The sizing alone. */
export function sizingOf(prepared: Prepared): SizingResult {
  const { target } = prepared.scenario
  return target.autoArea ? sizePanels(taskOf(prepared)) : judgeOwnArea(taskOf(prepared), target.area_m2)
}

function sunOnPanel(weather: WeatherRecord, sun: SunHours, spec: PanelSpec): PlaneIrradiance {
  const { tilt_deg, azimuth_deg, groundAlbedo_frac, horizon_deg } = spec
  return planeIrradiance(sun, weather, tilt_deg, azimuth_deg, groundAlbedo_frac, horizon_deg)
}

/** What the sun's place depends on: not on what a stressed or drawn weather changes. */
function whenAndWhere({ start_utcMs, hours, radiationMiddle_h, site }: WeatherRecord): readonly unknown[] {
  return [start_utcMs, hours, radiationMiddle_h, site.latitude_deg, site.longitude_deg]
}

function sunOf(weather: WeatherRecord): ReturnType<typeof sunHours> {
  const { latitude_deg, longitude_deg } = weather.site
  return sunHours(weather.start_utcMs, weather.hours, weather.radiationMiddle_h, latitude_deg, longitude_deg)
}

function answerOf(
  prepared: Prepared,
  sizing: SizingResult,
  design: Design,
  year: YearResult,
  fit: Fit,
): Omit<DesignAnswer, 'scenario' | 'way'> {
  const { scenario, weather, sun, sky, panel, doNothing } = prepared
  return {
    simulated: scenario,
    weather,
    sun,
    sky,
    panel,
    sizing,
    area_m2: design.candidate.area_m2,
    loop: design.loop,
    store: design.store,
    storeVolume_m3: design.candidate.storeVolume_m3,
    year,
    doNothing,
    months: monthSummaries(weather, year, doNothing, prepared.yardstick.limit_C),
    limit_C: prepared.yardstick.limit_C,
    hottestWeekStart_h: hottestWeekStart_h(weather),
    fit,
    rounding: roundingWords(sizing, design.candidate),
    warnings: [...unusualValues(scenario), ...designRemarks(scenario, design.loop, sizing)],
  }
}
