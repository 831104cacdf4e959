import { modesOf } from '#model/building/construction'
import type { RingPart } from '#model/basis/hours'
import { nightVent_WK } from './air-change.ts'
import { contentsOf } from './contents.ts'
import type { WeatherRecord } from '#model/outdoors/weather'
import { exposure, type Exposure, type Recall } from './exposure.ts'
import { FILM_INSIDE_Wm2K, OUTSIDE_m2KW } from './films.ts'
import { gainHours_W } from './gains.ts'
import { roomGeometry, type RoomGeometry } from './geometry.ts'
import { partsOf } from './parts.ts'
import { checkRoomSpec } from './spec-check.ts'
import { groundTemp_C, type GroundFloor } from './ground.ts'
import { roomRows } from './rows.ts'
import type { OutsideHours, RoomNetwork, RoomParts, RoomRows, RoomSpec, WindowGroup } from './spec.ts'
import { sunShares, type SunlitFace } from './sun-inside.ts'
import { ventAllowed } from './vent-hours.ts'
import { diffuseFactor, panesOf } from './windows.ts'
import type { SkyHours } from '#model/outdoors/sky'
import type { SunHours } from '#model/outdoors/sun'

const afresh: Recall = (_part, _key, make) => make()

/** Share of sunlight that inner faces and the floor keep (light paint 0.5, floor coverings 0.6; common practice, no source). */
const FACE_ABSORPTANCE_frac = 0.5
const FLOOR_ABSORPTANCE_frac = 0.6
/** Both usual films of a window's U-value, m²K/W (ISO 6946: 0.13 and 0.04). */
const WINDOW_FILMS_m2KW = 0.13 + OUTSIDE_m2KW

/**
 * The room as a network of air, mean radiant temperature and faces built of layers. Works for records of any length ≥ 1 h.
 * `recall` may keep what the weather does to its parts (`exposure`). Throws RangeError for a spec or lengths out of
 * range, a Problem for a window larger than its wall.
 */
export function roomNetwork(
  weather: WeatherRecord,
  sun: SunHours,
  sky: SkyHours,
  spec: RoomSpec,
  recall: Recall = afresh,
): RoomNetwork {
  return roomWithin(roomExposure(weather, sun, sky, spec, recall), weather, sun, spec, { recall })
}

/** What sun, sky and wind do to a room, hour by hour: of any part of a record. Throws as `roomNetwork` does. */
export function roomExposure(
  weather: WeatherRecord,
  sun: SunHours,
  sky: SkyHours,
  spec: RoomSpec,
  recall: Recall = afresh,
): Exposure {
  checkRoomSpec(spec)
  if (sun.hours !== weather.hours || sky.hours !== weather.hours || weather.hours < 1)
    throw new RangeError(
      `room needs weather, sun and sky of equal length ≥ 1, got ${weather.hours}, ${sun.hours}, ${sky.hours}`,
    )
  return exposure(weather, sun, sky, spec, roomGeometry(spec), recall)
}

/**
 * The room whose exposure is known, in the weather of a whole record.
 * @param part  the hours it will be run in; all when left out
 */
export function roomWithin(
  exposed: Exposure,
  weather: WeatherRecord,
  sun: SunHours,
  spec: RoomSpec,
  { recall = afresh, part = null }: { readonly recall?: Recall; readonly part?: RingPart | null } = {},
): RoomNetwork {
  const geometry = roomGeometry(spec)
  const weathered = {
    ...exposed,
    groundUnder_C: (floor: GroundFloor) =>
      recall('ground', [weather, floor], () => groundTemp_C(floor, weather)),
  }
  const contents = contentsOf(spec.contents_Jm2K, geometry.floor_m2, geometry.volume_m3)
  const parts = partsOf(spec, geometry, weathered, contents.furniture)
  const panes = panesOf(spec.windowU_Wm2K)
  const faces: SunlitFace[] = parts.map(({ name, area_m2 }) => ({
    area_m2,
    absorptance_frac: name === 'floor' ? FLOOR_ABSORPTANCE_frac : FACE_ABSORPTANCE_frac,
    floor: name === 'floor',
  }))
  const glass: SunlitFace = {
    area_m2: geometry.window_m2,
    absorptance_frac: spec.windowGain_frac * diffuseFactor(panes),
    floor: false,
  }
  const shares = sunShares([...faces, glass])
  const inner_m2 = [...faces, glass].reduce((sum, face) => sum + face.area_m2, 0)
  const network: RoomParts = {
    hours: weather.hours,
    floor_m2: geometry.floor_m2,
    volume_m3: geometry.volume_m3,
    airCapacity_JK: contents.airCapacity_JK,
    groups: parts.map((part, i) => ({
      name: part.name,
      area_m2: part.area_m2,
      modes: modesOf(part.layers, {
        innerFilm_Wm2K: FILM_INSIDE_Wm2K,
        outerFilm_Wm2K: part.outside === null ? null : mean(part.outside.film_Wm2K),
        pipeDepth_m: part.pipeDepth_m,
      }),
      outside: part.outside,
      sunShare: shares[i]!,
      areaShare: part.area_m2 / inner_m2,
    })),
    windows:
      weathered.glass === null
        ? null
        : panesAsGroup(spec, geometry, weathered.glass, shares.at(-1)!, inner_m2),
    ventilation_WK: weathered.air.conductance_WK,
    outdoor_C: weather.airTemp_C,
    sun_W: weathered.sun_W,
    gains_W: gainHours_W(spec.gains_W, weather),
    nightVent_WK: nightVent_WK(spec, geometry.volume_m3, weather),
    ventAllowed: ventAllowed(spec, sun, weather),
    indoorDewPoint_C: weathered.air.dewPoint_C,
    pressure_Pa: mean(weather.pressure_Pa),
  }
  return withRows(network, part)
}

function panesAsGroup(
  spec: RoomSpec,
  { window_m2 }: RoomGeometry,
  outside: OutsideHours,
  sunShare: number,
  inner_m2: number,
): WindowGroup {
  return {
    area_m2: window_m2,
    resistance_m2KW: Math.max(0, 1 / spec.windowU_Wm2K - WINDOW_FILMS_m2KW),
    outside,
    sunShare,
    areaShare: window_m2 / inner_m2,
  }
}

/** A room that remembers the rows it was asked for: those of a part’s hours, or all. */
export function withRows(parts: RoomParts, part: RingPart | null = null): RoomNetwork {
  const known = new Map<number, RoomRows>()
  const rowsOf = (step_s: number): RoomRows => {
    const found = known.get(step_s) ?? roomRows(parts, step_s, part)
    known.set(step_s, found)
    return found
  }
  return { ...parts, rowsOf }
}

const mean = (values: Float64Array): number => values.reduce((sum, value) => sum + value, 0) / values.length
