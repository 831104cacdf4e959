import { blackbody_Wm2 } from '#model/air/blackbody.ts'
import { windFactor_frac } from '#model/air/wind.ts'
import {
  bareResistance_m2KW,
  FABRIC_FILM_m2KW,
  outsideConvection_Wm2K,
  ROOF_INSIDE_m2KW,
  WALL_INSIDE_m2KW,
} from '#model/room/films.ts'
import type { RoomGeometry } from '#model/room/geometry.ts'
import { solAir } from '#model/room/sol-air.ts'
import type { RoomSpec } from '#model/room/spec.ts'
import type { SkyHours } from '#model/sky/hours.ts'
import type { WeatherRecord } from '#model/weather/record.ts'

/** Thermal emittance of walls: paint, brick, timber (ISO 6946, 0.9). */
const WALL_EMITTANCE_frac = 0.9

/** One opaque outside surface with the sunshine on it. */
interface OpaqueSurface {
  readonly area_m2: number
  /** Inner surface to outside film, m²K/W. */
  readonly resistance_m2KW: number
  readonly absorptance_frac: number
  readonly emittance_frac: number
  /** Share of its view that is sky; the rest is black and as warm as the air. */
  readonly skyView_frac: number
  readonly sun_Wm2: Float64Array
}

/** Walls and roof as the fabric node sees them. */
export interface Envelope {
  readonly fabric_m2: number
  readonly airFabric_WK: number
  /** Σ A g, W/K per hour: it moves with the wind, most of all where there is no insulation. */
  readonly loss_WK: Float64Array
  /** Σ A g T_solair, W per hour. */
  readonly drive_W: Float64Array
}

/**
 * Opaque parts between the fabric node (inner surfaces) and outdoors. Each hour a surface has its sol-air temperature and
 * film h_e; the conductance is g = 1/(R + 1/h_e), R its U-value without films.
 */
export function envelope(
  spec: RoomSpec,
  geometry: RoomGeometry,
  weather: WeatherRecord,
  sky: SkyHours,
  sun: { roof_Wm2: Float64Array; facades_Wm2: readonly Float64Array[] },
): Envelope {
  const surfaces = opaqueSurfaces(spec, geometry, sun)
  const fabric_m2 = surfaces.reduce((sum, surface) => sum + surface.area_m2, 0)
  return {
    fabric_m2,
    airFabric_WK: fabric_m2 / FABRIC_FILM_m2KW,
    ...outsideHours(surfaces, spec.height_m, weather, sky),
  }
}

function opaqueSurfaces(
  spec: RoomSpec,
  geometry: RoomGeometry,
  sun: { roof_Wm2: Float64Array; facades_Wm2: readonly Float64Array[] },
): OpaqueSurface[] {
  const walls = geometry.facades.map((facade, side) => ({
    area_m2: facade.opaque_m2,
    resistance_m2KW: bareResistance_m2KW(spec.wallU_Wm2K, WALL_INSIDE_m2KW),
    absorptance_frac: 1 - spec.wallReflectance_frac,
    emittance_frac: WALL_EMITTANCE_frac,
    skyView_frac: 0.5,
    sun_Wm2: sun.facades_Wm2[side]!,
  }))
  const roof = {
    area_m2: geometry.roof_m2,
    resistance_m2KW: bareResistance_m2KW(spec.roofU_Wm2K, ROOF_INSIDE_m2KW),
    absorptance_frac: 1 - spec.roofReflectance_frac,
    emittance_frac: spec.roofEmittance_frac,
    skyView_frac: 1,
    sun_Wm2: sun.roof_Wm2,
  }
  return [roof, ...walls]
}

function outsideHours(
  surfaces: readonly OpaqueSurface[],
  height_m: number,
  weather: WeatherRecord,
  sky: SkyHours,
): Pick<Envelope, 'loss_WK' | 'drive_W'> {
  const loss_WK = new Float64Array(weather.hours)
  const drive_W = new Float64Array(weather.hours)
  const atEaves = windFactor_frac('open', height_m)
  for (let h = 0; h < weather.hours; h++) {
    const air_C = weather.airTemp_C[h]!
    const convection_Wm2K = outsideConvection_Wm2K(weather.wind_ms[h]! * atEaves)
    const ground_Wm2 = blackbody_Wm2(air_C)
    for (const surface of surfaces) {
      const view = surface.skyView_frac
      const outside = solAir({
        air_C,
        absorbedSun_Wm2: surface.absorptance_frac * surface.sun_Wm2[h]!,
        longwave_Wm2: view * sky.total_Wm2[h]! + (1 - view) * ground_Wm2,
        emittance_frac: surface.emittance_frac,
        convection_Wm2K,
      })
      const through_WK = surface.area_m2 / (surface.resistance_m2KW + 1 / outside.film_Wm2K)
      loss_WK[h]! += through_WK
      drive_W[h]! += through_WK * outside.temp_C
    }
  }
  return { loss_WK, drive_W }
}
