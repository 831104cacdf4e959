import { stop, figure, sentenceCase, words } from '#model/basis/words'
import type { Behind, RoomSpec } from './spec.ts'

/** One outside wall. */
export interface Facade {
  readonly name: 'front' | 'right' | 'back' | 'left'
  /** The way it faces, degrees clockwise from north, 0 ≤ a < 360. */
  readonly azimuth_deg: number
  readonly behind: Behind
  readonly window_m2: number
  /** Wall without its window, m². */
  readonly opaque_m2: number
}

/** A box: four facades, a flat roof as large as the floor. */
export interface RoomGeometry {
  readonly floor_m2: number
  readonly volume_m3: number
  readonly perimeter_m: number
  readonly roof_m2: number
  /** Front, right, back, left. */
  readonly facades: readonly Facade[]
  readonly window_m2: number
  readonly opaqueWall_m2: number
}

/**
 * Areas of the room. Right and left as seen from outside, facing the front. Throws a Problem when a window is larger
 * than the wall it sits in, or sits in a wall that is not outdoors.
 */
export function roomGeometry(spec: RoomSpec): RoomGeometry {
  const facades = [
    facade('front', spec.azimuth_deg, spec.length_m * spec.height_m, spec.windowFront_m2, spec.behindFront),
    facade(
      'right',
      spec.azimuth_deg - 90,
      spec.width_m * spec.height_m,
      spec.windowRight_m2,
      spec.behindRight,
    ),
    facade(
      'back',
      spec.azimuth_deg + 180,
      spec.length_m * spec.height_m,
      spec.windowBack_m2,
      spec.behindBack,
    ),
    facade('left', spec.azimuth_deg + 90, spec.width_m * spec.height_m, spec.windowLeft_m2, spec.behindLeft),
  ]
  const floor_m2 = spec.length_m * spec.width_m
  return {
    floor_m2,
    volume_m3: floor_m2 * spec.height_m,
    perimeter_m: 2 * (spec.length_m + spec.width_m),
    roof_m2: floor_m2,
    facades,
    window_m2: facades.reduce((sum, each) => sum + each.window_m2, 0),
    opaqueWall_m2: facades.reduce((sum, each) => sum + each.opaque_m2, 0),
  }
}

function facade(
  name: Facade['name'],
  azimuth_deg: number,
  wall_m2: number,
  window_m2: number,
  behind: Behind,
): Facade {
  if (window_m2 > 0 && behind !== 'outdoors')
    throw stop(
      'window-in-adjoining-wall',
      words`The ${name} wall is not outdoors, but has a window of ${figure(window_m2, 'm2', 4)}.`,
      'Set that window to 0, or say that the wall is outdoors.',
      { field: `room.window${sentenceCase(name)}_m2` },
    )
  if (window_m2 > wall_m2)
    throw stop(
      'window-larger-than-wall',
      words`The ${name} window has ${figure(window_m2, 'm2', 4)}, but its wall only ${figure(wall_m2, 'm2', 4)}.`,
      'Make the window smaller or the room larger.',
      { field: `room.window${sentenceCase(name)}_m2` },
    )
  const turned_deg = ((azimuth_deg % 360) + 360) % 360
  return { name, azimuth_deg: turned_deg, behind, window_m2, opaque_m2: wall_m2 - window_m2 }
}
