import { nightVent_WK } from '#model/room/air-change.ts'
import { SUNSET_deg } from '#model/room/day.ts'
import { envelope, type Envelope } from '#model/room/envelope.ts'
import { exposure, type Recall } from '#model/room/exposure.ts'
import { gainHours_W, shareGains } from '#model/room/gains.ts'
import { roomGeometry } from '#model/room/geometry.ts'
import { slabNode, type Slab } from '#model/room/slab.ts'
import { checkRoomSpec } from '#model/room/spec-check.ts'
import type { RoomModel, RoomSpec } from '#model/room/spec.ts'
import type { SkyHours } from '#model/sky/hours.ts'
import type { SunHours } from '#model/sun/hours.ts'
import type { WeatherRecord } from '#model/weather/record.ts'

const afresh: Recall = (_part, _key, make) => make()

/**
 * The room as three nodes with hourly drives. Works for records of any length ≥ 1 h.
 * `sunAndGains` holds what came through glass and what is given off inside; sunlight on walls and roof is in the
 * fabric's drive. `recall` may keep what the weather does to its parts (`exposure`). Throws RangeError for a spec or lengths out of range, a Problem for a window larger than its wall.
 */
export function roomModel(
  weather: WeatherRecord,
  sun: SunHours,
  sky: SkyHours,
  spec: RoomSpec,
  recall: Recall = afresh,
): RoomModel {
  checkRoomSpec(spec)
  if (sun.hours !== weather.hours || sky.hours !== weather.hours || weather.hours < 1)
    throw new RangeError(
      `room needs weather, sun and sky of equal length ≥ 1, got ${weather.hours}, ${sun.hours}, ${sky.hours}`,
    )
  const geometry = roomGeometry(spec)
  const { outside, air, sun_W, groundUnder_C } = exposure(weather, sun, sky, spec, geometry, recall)
  const shell = envelope(spec, geometry, outside)
  const slab = slabNode(spec, geometry, groundUnder_C)
  const gains_W = gainHours_W(spec.gains_W, weather)
  const shared = shareGains(sun_W, gains_W, geometry.floor_m2 / (geometry.floor_m2 + shell.fabric_m2))
  const airLoss_WK = air.conductance_WK.map((value) => value + spec.windowU_Wm2K * geometry.window_m2)
  return {
    hours: weather.hours,
    floor_m2: geometry.floor_m2,
    volume_m3: geometry.volume_m3,
    airCapacity_JK: spec.contents_Jm2K * geometry.floor_m2,
    fabricCapacity_JK: spec.fabric_Jm2K * shell.fabric_m2,
    slabCapacity_JK: slab.capacity_JK,
    airFabric_WK: shell.airFabric_WK,
    airSlab_WK: slab.airSlab_WK,
    fabricLoss_WK: shell.loss_WK,
    slabLoss_WK: slab.slabLoss_WK,
    airLoss_WK,
    airDrive_W: airLoss_WK.map((loss_WK, h) => loss_WK * weather.airTemp_C[h]! + shared.air_W[h]!),
    fabricDrive_W: shell.drive_W.map((drive_W, h) => drive_W + shared.fabric_W[h]!),
    slabDrive_W: slab.drive_W.map((drive_W, h) => drive_W + shared.slab_W[h]!),
    nightVent_WK: nightVent_WK(spec, geometry.volume_m3, weather),
    night: new Uint8Array(sun.hours).map((_, h) => (sun.altitude_deg[h]! < SUNSET_deg ? 1 : 0)),
    outdoor_C: weather.airTemp_C,
    indoorDewPoint_C: air.dewPoint_C,
    operativeWeights: operativeWeights(shell, slab, geometry.floor_m2),
    sunAndGains: { sun_W, gains_W, toSlab_W: shared.slab_W },
  }
}

/**
 * Operative temperature: half air, half surfaces by area (ISO 7726 at low air speed). The floor's surface lies between
 * air and slab node by the film's share of the resistance.
 */
function operativeWeights(shell: Envelope, slab: Slab, floor_m2: number): [number, number, number] {
  const floorShare = floor_m2 / (floor_m2 + shell.fabric_m2)
  const bySlab = 0.5 * floorShare * slab.filmShare_frac
  const byFabric = 0.5 * (1 - floorShare)
  return [1 - byFabric - bySlab, byFabric, bySlab]
}
