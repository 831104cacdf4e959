import { airChange, type AirChange } from './air-change.ts'
import { windFactor_frac } from '#model/outdoors/air'
import { GLASS_FINISH, roofFinish, SHELTERED_FINISH, wallFinish } from './finishes.ts'
import type { RoomGeometry } from './geometry.ts'
import { merged, outsideHours, type Finish } from './outside.ts'
import type { OutsideHours, RoomSpec } from './spec.ts'
import { glazingOf, panesOf, windowSun_W } from './windows.ts'
import type { SkyHours } from '#model/outdoors/sky'
import { type SunHours, planeIrradiance } from '#model/outdoors/sun'
import type { WeatherRecord } from '#model/outdoors/weather'

/** Reflectance of the ground before the walls (ISO 52016-1 and common practice: 0.2). */
const GROUND_ALBEDO_frac = 0.2

/** Sunlight from the ground on an upright face, W/m²: half of what it throws back. */
const groundLight_Wm2 = (weather: WeatherRecord): Float64Array =>
  weather.globalHorizontal_Wm2.map((global_Wm2) => 0.5 * GROUND_ALBEDO_frac * global_Wm2)

/** Gives a part of the room that was worked out before from the same key, or makes it. */
export type Recall = <T>(part: string, key: readonly unknown[], make: () => T) => T

/** What the weather does to the parts of a room. */
export interface Exposure {
  readonly outside: { readonly roof: OutsideHours; readonly facades: readonly OutsideHours[] }
  /** Air below a raised floor; null for one on the ground. */
  readonly under: OutsideHours | null
  /** Outside of all panes together; null without windows. */
  readonly glass: OutsideHours | null
  readonly air: AirChange
  /** Let in by all windows, W per hour. */
  readonly sun_W: Float64Array
}

/** A side of the room by its own name, not by the way it faces: so that a room turned round leaves no trail of parts behind. */
interface Face {
  readonly name: string
  readonly tilt_deg: number
  readonly azimuth_deg: number
}

const UNDERSIDE: Face = { name: 'underside', tilt_deg: 180, azimuth_deg: 0 }

/** An unheated space before a wall, where it follows outdoors: air without sun and wind, film as inside (ISO 6946: 0.13 m²K/W). */
const sheltered = (weather: WeatherRecord): OutsideHours => ({
  temp_C: weather.airTemp_C,
  film_Wm2K: new Float64Array(weather.hours).fill(1 / 0.13),
})

const ROOF: Face = { name: 'roof', tilt_deg: 0, azimuth_deg: 0 }

const upright = ({ name, azimuth_deg }: Omit<Face, 'tilt_deg'>): Face => ({ name, tilt_deg: 90, azimuth_deg })

/**
 * Sun, sky, ground and wind on a room. Each part is recalled by the little of the description it depends on, so that a
 * change of one leaves the others: a U-value or a mass none of them.
 */
export function exposure(
  weather: WeatherRecord,
  sun: SunHours,
  sky: SkyHours,
  spec: RoomSpec,
  geometry: RoomGeometry,
  recall: Recall,
): Exposure {
  const { airChange_1h, airChangeWind_1hms, moisture_kgh } = spec
  const atEaves = windFactor_frac(spec.terrain, spec.height_m)
  const leaks = { airChange_1h, airChangeWind_1hms: airChangeWind_1hms * atEaves, moisture_kgh }
  const panes = panesOf(spec.windowU_Wm2K)
  const light = [weather.globalHorizontal_Wm2, weather.directNormal_Wm2, weather.diffuseHorizontal_Wm2]
  const glazing = glazingOf(spec, geometry)
  const sunOn = ({ name, tilt_deg, azimuth_deg }: Face) =>
    recall(`sun on ${name}`, [...light, sun, tilt_deg, azimuth_deg], () =>
      planeIrradiance(sun, weather, tilt_deg, azimuth_deg, GROUND_ALBEDO_frac),
    )
  const outside = (face: Face, finish: Finish) =>
    recall(`outside of ${face.name}`, [weather, sun, sky, face, finish, atEaves], () =>
      outsideHours(finish, sunOn(face).total_Wm2, atEaves, weather, sky),
    )
  return {
    outside: {
      roof: outside(ROOF, roofFinish(spec)),
      facades: geometry.facades.map((facade) =>
        facade.behind === 'outdoors' ? outside(upright(facade), wallFinish(spec)) : sheltered(weather),
      ),
    },
    under: spec.floorKind === 'raised' ? outside(UNDERSIDE, SHELTERED_FINISH) : null,
    glass:
      geometry.window_m2 > 0
        ? merged(
            geometry.facades
              .filter(({ window_m2 }) => window_m2 > 0)
              .map((facade) => ({
                area_m2: facade.window_m2,
                outside: outside({ ...upright(facade), name: `glass ${facade.name}` }, GLASS_FINISH),
              })),
          )
        : null,
    air: recall('air change', [weather, leaks, geometry.volume_m3], () =>
      airChange(leaks, geometry.volume_m3, weather),
    ),
    sun_W: recall('window sun', [...light, sun, glazing, panes], () =>
      windowSun_W(
        glazing,
        (facade) => sunOn(upright(facade)),
        { altitude_deg: sun.altitude_deg, ground_Wm2: groundLight_Wm2(weather) },
        panes,
      ),
    ),
  }
}
