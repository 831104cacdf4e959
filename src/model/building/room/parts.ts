import { isResistance, type Construction } from '#model/building/construction'
import type { Exposure } from './exposure.ts'
import type { GroundFloor } from './ground.ts'
import type { RoomGeometry } from './geometry.ts'
import { merged } from './outside.ts'
import { partition } from './partition.ts'
import { floorOnGround } from './slab.ts'
import type { FaceGroup, OutsideHours, RoomSpec } from './spec.ts'

/** A group before its modes are worked out. */
export interface Part {
  readonly name: FaceGroup['name']
  readonly area_m2: number
  readonly layers: Construction
  readonly outside: OutsideHours | null
  readonly pipeDepth_m: number | null
}

/** What lies outside the room, and the ground under it. */
type Weathered = Exposure & { readonly groundUnder_C: (floor: GroundFloor) => Float64Array }

/** Furniture and goods as faces; null when there are none to speak of. */
type Furniture = { readonly area_m2: number; readonly layers: Construction } | null

/** Walls, roof, floor and what is inside, each with its layers and what lies outside; those of no area are left out. */
export function partsOf(
  spec: RoomSpec,
  geometry: RoomGeometry,
  weathered: Weathered,
  furniture: Furniture,
): Part[] {
  const sides = geometry.facades.map(({ opaque_m2, behind }, side) => ({
    // What an unheated space has of the room's own warmth: that share of the wall passes no heat.
    area_m2: opaque_m2 * outdoorShare(behind, spec),
    inner_m2: opaque_m2 * (1 - outdoorShare(behind, spec)),
    outside: weathered.outside.facades[side]!,
  }))
  const parts: Part[] = [
    {
      name: 'wall',
      area_m2: sum(sides.map(({ area_m2 }) => area_m2)),
      layers: spec.wall,
      outside: merged(sides),
      pipeDepth_m: null,
    },
    {
      name: 'adjoining',
      area_m2: sum(sides.map(({ inner_m2 }) => inner_m2)),
      layers: spec.wall,
      outside: null,
      pipeDepth_m: null,
    },
    {
      name: 'roof',
      area_m2: geometry.roof_m2,
      layers: spec.roof,
      outside: weathered.outside.roof,
      pipeDepth_m: spec.pipes === 'roof' ? innermostMiddle_m(spec.roof) : null,
    },
    floorOf(spec, geometry, weathered),
    { name: 'partition', ...partition(spec), outside: null, pipeDepth_m: null },
  ]
  if (furniture !== null) parts.push({ name: 'contents', ...furniture, outside: null, pipeDepth_m: null })
  return parts.filter(({ area_m2 }) => area_m2 > 0)
}

/**
 * Share of a wall's conductance that leads outdoors. An unheated space takes up a temperature between room and outdoors:
 * T_u = T_i − b (T_i − T_o), so a share b of the wall leads outdoors and the rest nowhere (ISO 13789:2017, factor b).
 */
function outdoorShare(behind: RoomGeometry['facades'][number]['behind'], spec: RoomSpec): number {
  if (behind === 'outdoors') return 1
  return behind === 'sameRoom' ? 0 : spec.unheatedShare_frac
}

function floorOf(spec: RoomSpec, geometry: RoomGeometry, weathered: Weathered): Part {
  const ground = floorOnGround(spec, geometry)
  const pipeDepth_m = spec.pipes === 'floor' ? spec.slabThickness_m / 2 : null
  const own = { name: 'floor', area_m2: geometry.floor_m2, pipeDepth_m } as const
  // The soil is the last layer of a floor on the ground; a raised one has air below it.
  if (weathered.under !== null) return { ...own, layers: ground.layers.slice(0, 2), outside: weathered.under }
  return {
    ...own,
    layers: ground.layers,
    outside: {
      temp_C: weathered.groundUnder_C(ground.floor),
      film_Wm2K: new Float64Array(weathered.sun_W.length).fill(ground.below_Wm2K),
    },
  }
}

/** How deep the middle of the innermost layer with mass lies among those with mass, m. */
function innermostMiddle_m(layers: Construction): number {
  const layer = layers.find((part) => !isResistance(part))
  return layer === undefined || isResistance(layer) ? 0 : layer.thickness_m / 2
}

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0)
