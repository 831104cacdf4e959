import { constructionOf } from '#model/building/construction'
import type { RoomSpec } from '#model/building/room'
import type { SkyHours } from '#model/outdoors/sky'
import { type SunHours, sunHours } from '#model/outdoors/sun'
import type { WeatherRecord } from '#model/outdoors/weather'

/** Hourly values of made-up weather, each a function of the hour from the record's start. */
export interface Made {
  readonly air_C?: (hour: number) => number
  readonly dew_C?: (hour: number) => number
  readonly wind_ms?: (hour: number) => number
  readonly direct_Wm2?: (hour: number) => number
  readonly diffuse_Wm2?: (hour: number) => number
  readonly start_utcMs?: number
  readonly utcOffset_h?: number
}

const column = (hours: number, value: (hour: number) => number) =>
  Float64Array.from({ length: hours }, (_, h) => value(h))

/** A record at 40° N, 0° E, sea level; calm, dark and 20 °C where nothing else is asked for. */
export function madeWeather(hours: number, made: Made = {}): WeatherRecord {
  const diffuse = made.diffuse_Wm2 ?? (() => 0)
  return {
    site: {
      name: 'made up',
      latitude_deg: 40,
      longitude_deg: 0,
      altitude_m: 0,
      utcOffset_h: made.utcOffset_h ?? 0,
    },
    start_utcMs: made.start_utcMs ?? Date.UTC(2023, 0, 1),
    hours,
    radiationMiddle_h: 0.5,
    airTemp_C: column(hours, made.air_C ?? (() => 20)),
    dewPoint_C: column(hours, made.dew_C ?? (() => 5)),
    pressure_Pa: column(hours, () => 101325),
    wind_ms: column(hours, made.wind_ms ?? (() => 0)),
    globalHorizontal_Wm2: column(hours, diffuse),
    directNormal_Wm2: column(hours, made.direct_Wm2 ?? (() => 0)),
    diffuseHorizontal_Wm2: column(hours, diffuse),
    cloud_frac: column(hours, () => 0),
    origins: {},
    basis: 'Made up for a test.',
  }
}

export function sunOf(weather: WeatherRecord): SunHours {
  const { latitude_deg, longitude_deg } = weather.site
  return sunHours(weather.start_utcMs, weather.hours, weather.radiationMiddle_h, latitude_deg, longitude_deg)
}

/** A sky that radiates like a black body `below_K` colder than the air. */
export function madeSky(weather: WeatherRecord, below_K = 0): SkyHours {
  const total_Wm2 = weather.airTemp_C.map((air_C) => 5.670374419e-8 * (air_C + 273.15 - below_K) ** 4)
  const none = new Float64Array(weather.hours)
  return {
    hours: weather.hours,
    total_Wm2,
    window_Wm2: none,
    offWindow_Wm2: none,
    measured: new Uint8Array(weather.hours),
  }
}

/** A 5 × 4 m room, insulated, with one window to the south. */
export const ROOM: RoomSpec = {
  length_m: 5,
  width_m: 4,
  height_m: 2.5,
  azimuth_deg: 180,
  terrain: 'open',
  roof: constructionOf({ U_Wm2K: 0.35, mass_kgm2: 25, place: 'inside' }),
  wall: constructionOf({ U_Wm2K: 0.45, mass_kgm2: 30, place: 'inside' }),
  roofReflectance_frac: 0.3,
  roofEmittance_frac: 0.9,
  wallReflectance_frac: 0.4,
  overhang_m: 0,
  overhangAbove_m: 0,
  reveal_m: 0,
  windowHeight_m: 1,
  behindFront: 'outdoors',
  behindRight: 'outdoors',
  behindBack: 'outdoors',
  behindLeft: 'outdoors',
  unheatedShare_frac: 0.5,
  partition_m2: 0,
  partitionMass_kgm2: 100,
  floorKind: 'ground',
  ventHours: 'night',
  ventFrom_h: 20,
  ventTo_h: 7,
  windowFront_m2: 2,
  windowRight_m2: 0,
  windowBack_m2: 0,
  windowLeft_m2: 0,
  windowU_Wm2K: 2.8,
  windowGain_frac: 0.7,
  shading_frac: 1,
  airChange_1h: 1,
  airChangeWind_1hms: 0,
  nightAirChange_1h: 6,
  nightVent: false,
  gains_W: Array<number>(24).fill(0),
  moisture_kgh: 0,
  contents_Jm2K: 15000,
  slabThickness_m: 0.1,
  slabConductivity_WmK: 1.35,
  slabDensity_kgm3: 2000,
  slabSpecificHeat_JkgK: 1000,
  slabInsulation_m2KW: 0,
  groundConductivity_WmK: 2,
  pipes: 'none',
}
