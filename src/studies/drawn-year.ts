import { HOUR_MS, RingPart } from '#model/basis/hours'
import { roomExposure, roomWithin, type Exposure } from '#model/building/room'
import { planHours, simulateYear } from '#model/building/year'
import {
  designOf,
  panelSpecOf,
  planSpecOf,
  roomSpecOf,
  skyOptionsOf,
  targetSpecOf,
  taskOf,
  type Prepared,
} from '#model/design/assembly'
import type { Scenario } from '#model/design/scenario'
import {
  alongCurve,
  AreaCurve,
  seasonAtRisk,
  tankOf_m3,
  type Candidate,
  type Season,
  type Trial,
} from '#model/design/sizing'
import { exceedance, yardstickOf, type Yardstick } from '#model/design/target'
import { stressWeather } from '#model/outdoors/climate'
import { skyHours } from '#model/outdoors/sky'
import { planeIrradiance } from '#model/outdoors/sun'
import type { WeatherRecord } from '#model/outdoors/weather'
import { reducePanelHours } from '#model/panels/plate'
import { Memory } from './memory.ts'

/** Hours that come this near to their limit with the panels of the answer are those that draws are run in, K. */
const MARGIN_K = 1.5
/** Hours that a draw is run before each of its spells. */
const WARM_UP_h = 21 * 24
/** Shares of the answer's area that its curve is made from. */
const CURVE_SHARES = [0.6, 1, 1.6] as const
/** A draw that needs a smaller share of the answer's area may need no panel at all. */
const SMALL_SHARE = 0.2

/** An area with its tank. */
type Sized = Pick<Candidate, 'area_m2' | 'storeVolume_m3'>

/**
 * The hours in which descriptions near one that is answered are judged. A draw of the range moves sky, coating, room and heat a
 * little, and its area follows until the room is as warm as the answer's: the hours that judge it are those that come near the
 * limit with the answer's panels. Sky, panel, room and year are worked out there alone; elsewhere they are the answer's.
 */
export class DrawnYear {
  private readonly base: Prepared
  private readonly exposed: Exposure
  private readonly sized: Sized
  /** The room with the answer's panels, °C. */
  private readonly withPanels_C: Float64Array
  private readonly season: Season
  private readonly part: RingPart
  private readonly curve: AreaCurve
  private readonly memory = new Memory()

  private constructor(
    base: Prepared,
    exposed: Exposure,
    sized: Sized,
    withPanels_C: Float64Array,
    season: Season,
  ) {
    this.base = base
    this.exposed = exposed
    this.sized = sized
    this.withPanels_C = withPanels_C
    this.season = season
    const spans = season.spells.map(([from, to]) => [from - WARM_UP_h, to] as const)
    this.part = new RingPart(base.room.hours, spans)
    const [less, same, more] = CURVE_SHARES.map((share) => this.judged(base, share))
    this.curve = new AreaCurve([less!, same!, more!])
  }

  /**
   * Around an answer.
   * @param exposed  its own room's
   * @param sized    the area that just meets its target
   * @returns null where the hours are most of the year
   */
  static around(base: Prepared, exposed: Exposure, sized: Sized): DrawnYear | null {
    const { room_C, flow_kgsm2 } = taskOf(base)
    const withPanels_C = room_C({ ...sized, flow_kgsm2: flow_kgsm2(sized.area_m2) })
    const nearLimit = seasonAtRisk(withPanels_C, base.yardstick, MARGIN_K)
    return nearLimit === null ? null : new DrawnYear(base, exposed, sized, withPanels_C, nearLimit)
  }

  /**
   * The area of a draw, m²: more than its largest where that is not enough. Null where these hours do not settle it: the steps do
   * not end, hardly any panel is left, or an hour that was further from the limit comes over it.
   */
  area_m2(drawn: Scenario, record: WeatherRecord): number | null {
    const prepared = this.prepared(drawn, record)
    // What a panel sheds goes by its factor in the field: shares are of area times factor.
    const field = this.base.scenario.panel.fieldFactor_frac / drawn.panel.fieldFactor_frac
    const answer_m2 = field * this.sized.area_m2
    let settled = false
    const measureOf = (share: number): number => {
      const trial = this.judged(prepared, field * share)
      settled = trial.settled
      return trial.measure
    }
    const share = alongCurve(this.curve, measureOf, drawn.target.maxArea_m2 / answer_m2)
    if (share === null || share < SMALL_SHARE || !settled) return null
    return share * answer_m2
  }

  /** A share of the answer's area in a year: how far from the target, and whether these hours settle that. */
  private judged(prepared: Prepared, share: number): Trial & { readonly settled: boolean } {
    const { scenario, yardstick } = prepared
    const { target } = scenario
    const { sized } = this
    const area_m2 = share * sized.area_m2
    const storeVolume_m3 = tankOf_m3(taskOf(prepared), area_m2, sized.storeVolume_m3 / sized.area_m2)
    const room_C = this.room_C(prepared, {
      area_m2,
      storeVolume_m3,
      flow_kgsm2: prepared.flow_kgsm2(area_m2),
    })
    const { measure } = exceedance(room_C, yardstick)
    const nearest = target.kind === 'degreeHours' || measure > this.season.outsideOver_K
    return { area_m2: share, measure, settled: nearest && !this.hasRisen(room_C, yardstick) }
  }

  private room_C(prepared: Prepared, candidate: Candidate): Float64Array {
    const { inputs } = designOf(prepared, candidate)
    const room_C = this.withPanels_C.slice()
    for (const span of this.season.spells) {
      const run = simulateYear(inputs, { lean: true, books: false, span, warmUp_h: WARM_UP_h })
      for (let h = span[0]; h < span[1]; h++) room_C[h % run.hours] = run.room_C[h % run.hours]!
    }
    return room_C
  }

  /** True where an hour that the answer keeps further under its limit than the margin comes over it. */
  private hasRisen(room_C: Float64Array, { limit_C }: Yardstick): boolean {
    const was = this.base.yardstick.limit_C
    return room_C.some((now_C, h) => now_C > limit_C[h]! && this.withPanels_C[h]! - was[h]! < -MARGIN_K)
  }

  private prepared(drawn: Scenario, record: WeatherRecord): Prepared {
    const { base, part, memory } = this
    const { wholeYear_K, hotSpell_K, moreHumid_K, windFactor_frac } = drawn.site
    const weather = stressWeather(record, { wholeYear_K, hotSpell_K, moreHumid_K, windFactor_frac })
    const here = { ...part.of(weather), start_utcMs: weather.start_utcMs + part.from * HOUR_MS }
    const sun = part.of(base.sun)
    const sky = skyHours(here, skyOptionsOf(drawn))
    const spec = roomSpecOf(drawn)
    const exposed = part.into(this.exposed, roomExposure(here, sun, sky, spec, memory.recall))
    const panel = panelSpecOf(drawn)
    const { tilt_deg, azimuth_deg, groundAlbedo_frac, horizon_deg } = panel
    const onPanel = memory.recall(
      'sun on panel',
      [sun, tilt_deg, azimuth_deg, groundAlbedo_frac, horizon_deg],
      () => planeIrradiance(sun, here, tilt_deg, azimuth_deg, groundAlbedo_frac, horizon_deg),
    )
    return {
      ...base,
      scenario: drawn,
      weather,
      panel: part.into(base.panel, reducePanelHours(here, onPanel, sky, panel)),
      room: roomWithin(exposed, weather, base.sun, spec, { recall: memory.recall, part }),
      allowed: planHours(weather, base.sun, planSpecOf(drawn)),
      yardstick: yardstickOf(targetSpecOf(drawn), weather),
    }
  }
}
