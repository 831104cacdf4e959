import { GRAVITY_MS2 } from '#model/outdoors/air'
import {
  DWELLING_kPa,
  fullTank_kg,
  isTank,
  SPREAD_m2,
  tankShape,
  type TankShape,
} from '#model/building/store'
import { FIELDS, type Scenario } from '#model/design/scenario'

/** Clear width of an ordinary door, m: 32 inches, US residential code R311.2 (from memory). It limits no tank until a door is given: tanks are brought in before a wall is closed, or are several side by side. */
const DOOR_m = 0.813
/** What firm ground under a floor carries where nobody has looked, kPa: 1500 psf, US residential code table R401.4.1 (from memory). */
const GROUND_kPa = 71.8
/** A tank in the room takes no more than this share of its floor (common practice, no source). */
const FLOOR_SHARE = 0.2
/** What must stay free above a tank for its pipes and lid, m (common practice, no source). */
export const HEADROOM_m = 0.3
/** Tanks are sold up to so many times as high as wide (common practice, no source). */
const SLIMMEST = 2.5
/** Wider than this share of the room's height, a tank that is tipped upright under the ceiling gains nothing: √(2/3). */
const TIPPED_WIDE = Math.sqrt(2 / 3)

/** What keeps a tank from being larger where it is to be. */
export type PlaceLimit = 'door' | 'floor' | 'height' | 'load'

/** The field by which each of them is changed. */
export const PLACE_FIELDS: Readonly<Record<PlaceLimit, string>> = {
  door: 'store.doorWidth_m',
  floor: 'store.place',
  height: 'store.place',
  load: 'store.floorLoad_kgm2',
}

/** The place of the tank, as given or worked out, and what fits it. */
export interface TankPlace {
  readonly inRoom: boolean
  /** Narrowest door, m: given, or an ordinary one, which limits nothing. */
  readonly door_m: number
  readonly doorGiven: boolean
  /** What the floor under it carries, kg/m². */
  readonly load_kgm2: number
  readonly loadGiven: boolean
  /** Largest tank that passes an ordinary door in such a room, m³. */
  readonly byDoor_m3: number
  /** Largest tank that fits, m³; 0 where none does. */
  readonly most_m3: number
  readonly limit: PlaceLimit
  /** Widest and highest bare tank, m; Infinity outdoors. */
  readonly widest_m: number
  readonly highest_m: number
}

/** Where the tank is to be; null for a store without one. */
export function tankPlaceOf({ store, room }: Scenario): TankPlace | null {
  if (!isTank(store.kind)) return null
  const inRoom = store.place === 'room'
  const door_m = store.doorWidth_m > 0 ? store.doorWidth_m : DOOR_m
  const raised = inRoom && room.floorKind === 'raised'
  const usual_kgm2 = ((raised ? DWELLING_kPa : GROUND_kPa) * 1000) / GRAVITY_MS2
  const load_kgm2 = store.floorLoad_kgm2 > 0 ? store.floorLoad_kgm2 : usual_kgm2
  const given = { doorGiven: store.doorWidth_m > 0, loadGiven: store.floorLoad_kgm2 > 0 }
  const space = inRoom ? spaceOf({ store, room }, given.doorGiven ? door_m : Infinity) : OUTDOORS
  const byLoad_m3 = carried_m3(load_kgm2, space.widest_m)
  const most_m3 = Math.max(0, Math.min(space.most_m3, byLoad_m3, FIELDS.store.volume_m3.max))
  return {
    inRoom,
    door_m,
    load_kgm2,
    ...given,
    ...space,
    byDoor_m3: inRoom ? spaceOf({ store, room }, DOOR_m).most_m3 : Infinity,
    most_m3,
    limit: byLoad_m3 < space.most_m3 ? 'load' : space.limit,
  }
}

type Space = Pick<TankPlace, 'widest_m' | 'highest_m' | 'most_m3' | 'limit'>

const OUTDOORS: Space = { widest_m: Infinity, highest_m: Infinity, most_m3: Infinity, limit: 'load' }

/** The largest tank that passes a door, can be tipped upright and has headroom, with its insulation put on inside. */
function spaceOf({ store, room }: Pick<Scenario, 'store' | 'room'>, door_m: number): Space {
  const skins_m = 2 * store.insulation_m
  const byFloor_m = Math.sqrt(FLOOR_SHARE * room.length_m * room.width_m) - skins_m
  const byTipping_m = TIPPED_WIDE * room.height_m
  const narrowest_m = Math.min(door_m, byFloor_m, byTipping_m)
  const widest_m = Math.max(0, narrowest_m)
  const under_m = room.height_m - HEADROOM_m - skins_m
  const tipped_m = Math.sqrt(room.height_m ** 2 - widest_m ** 2)
  const highest_m = Math.max(0, Math.min(under_m, tipped_m, SLIMMEST * widest_m))
  const limit = narrowest_m === door_m ? 'door' : narrowest_m === byFloor_m ? 'floor' : 'height'
  const most_m3 = (Math.PI / 4) * widest_m ** 2 * highest_m
  return { widest_m, highest_m, most_m3, limit }
}

/** The largest tank that a floor carries, m³: as high as wide, or no wider than may be. */
function carried_m3(load_kgm2: number, widest_m: number): number {
  const high_m = load_kgm2 / fullTank_kg(1)
  const base_m2 = Math.min((Math.PI / 4) * high_m ** 2, (Math.PI / 4) * widest_m ** 2)
  return high_m * Math.max(SPREAD_m2, base_m2)
}

/** What a full tank loads its floor with where that is judged, kg/m². */
export function judgedLoad_kgm2(volume_m3: number, { end_m2 }: TankShape): number {
  return fullTank_kg(volume_m3) / Math.max(SPREAD_m2, end_m2)
}

/** The tank as it goes into its place: as high as wide, or slimmer or lower where it has to be. */
export function shapeInPlace(volume_m3: number, place: TankPlace): TankShape {
  const free = tankShape(volume_m3)
  if (volume_m3 <= 0 || volume_m3 > place.most_m3 * (1 + 1e-9)) return free
  if (free.diameter_m > place.widest_m) return tankShape(volume_m3, volume_m3 / widestEnd_m2(place))
  return free.height_m > place.highest_m ? tankShape(volume_m3, place.highest_m) : free
}

const widestEnd_m2 = ({ widest_m }: TankPlace): number => (Math.PI / 4) * widest_m ** 2
