import type { Construction, Modes } from '#model/building/construction'
import type { WIND_TERRAINS } from '#model/outdoors/air'

/** One outside wall direction's glass and opaque wall follow the building's azimuth. */
export interface RoomSpec {
  /** Floor plan, m: `length_m` runs along the facade that faces `azimuth_deg`. */
  readonly length_m: number
  readonly width_m: number
  readonly height_m: number
  /** The way the long front faces, degrees clockwise from north. */
  readonly azimuth_deg: number
  /** What the wind crosses before it reaches walls and roof. */
  readonly terrain: keyof typeof WIND_TERRAINS
  /** Layers from the inside out. */
  readonly roof: Construction
  readonly wall: Construction
  readonly roofReflectance_frac: number
  readonly roofEmittance_frac: number
  readonly wallReflectance_frac: number
  /** Window area on the front, right, back and left facade, m². */
  readonly windowFront_m2: number
  readonly windowRight_m2: number
  readonly windowBack_m2: number
  readonly windowLeft_m2: number
  readonly windowU_Wm2K: number
  /** Solar heat gain coefficient at normal incidence, 0…1. */
  readonly windowGain_frac: number
  /** Share of the sunlight that shading lets through, 0…1. */
  readonly shading_frac: number
  /** An overhang over every window: how far it reaches out, and its height above the window's head, m. */
  readonly overhang_m: number
  readonly overhangAbove_m: number
  /** How deep the panes sit behind the wall's face, and how tall they are, m. */
  readonly reveal_m: number
  readonly windowHeight_m: number
  /** What lies behind each facade. */
  readonly behindFront: Behind
  readonly behindRight: Behind
  readonly behindBack: Behind
  readonly behindLeft: Behind
  /** How far an unheated space beyond a wall follows outdoors: 0 as warm as the room, 1 as outdoors. */
  readonly unheatedShare_frac: number
  /** Walls inside the room, one face counted, m², and their mass, kg/m². */
  readonly partition_m2: number
  readonly partitionMass_kgm2: number
  readonly floorKind: 'ground' | 'raised'
  /** Air changes per hour with everything shut, at rest. */
  readonly airChange_1h: number
  /** Extra air changes per hour per m/s of wind at the eaves. */
  readonly airChangeWind_1hms: number
  /** Air changes per hour when the windows are opened at night (the baseline, or with the panels). */
  readonly nightAirChange_1h: number
  /** Open windows at night as well? */
  readonly nightVent: boolean
  /** Open by the sun (sunset to sunrise), or by the clock from one hour to another, local standard time, 0…24. */
  readonly ventHours: 'night' | 'clock'
  readonly ventFrom_h: number
  readonly ventTo_h: number
  /** Internal gains, W, 24 values, hour 0 first. */
  readonly gains_W: readonly number[]
  /** Moisture given off inside, kg/h (people, plants, drying): for the indoor dew point. */
  readonly moisture_kgh: number
  /** Heat capacity of air, furniture and goods, J/K per m² of floor. */
  readonly contents_Jm2K: number
  readonly slabThickness_m: number
  readonly slabConductivity_WmK: number
  readonly slabDensity_kgm3: number
  readonly slabSpecificHeat_JkgK: number
  /** Resistance of insulation under the slab, m²K/W. */
  readonly slabInsulation_m2KW: number
  readonly groundConductivity_WmK: number
  /** Pipes through which a plant may cool a layer: half way down the slab, or in the middle of the roof's innermost layer. */
  readonly pipes: 'none' | 'floor' | 'roof'
}

/** Where a plant meets the room: its air, a cooled ceiling (air and radiant temperature), or pipes inside a layer. */
export type RoomPortKind = 'air' | 'ceiling' | 'pipes'

/** Beyond a wall: outdoors, an unheated space, or a room that is kept as this one. */
export type Behind = 'outdoors' | 'unheated' | 'sameRoom'

/** What lies outside a group of faces each hour: its temperature, °C, and the film to it, W/m²K. */
export interface OutsideHours {
  readonly temp_C: Float64Array
  readonly film_Wm2K: Float64Array
}

/** Faces of one construction: merged, for four walls of the same layers behave as one. */
export interface FaceGroup {
  readonly name: 'wall' | 'roof' | 'floor' | 'adjoining' | 'partition' | 'contents'
  readonly area_m2: number
  readonly modes: Modes
  /** Null where no heat passes the far side. */
  readonly outside: OutsideHours | null
  /** Share of the sunlight let in that these faces keep. */
  readonly sunShare: number
  /** Share of all inner faces, windows among them: what radiant gains go by. */
  readonly areaShare: number
}

/** Panes: no mass. */
export interface WindowGroup {
  readonly area_m2: number
  /** Without films, m²K/W. */
  readonly resistance_m2KW: number
  readonly outside: OutsideHours
  /** Share of the sunlight let in that goes out again. */
  readonly sunShare: number
  readonly areaShare: number
}

/**
 * The room as a thermal network: air and mean radiant temperature, to which every group of faces is tied by its own
 * convection and longwave; each group reduced to a few modes. All drives hold over the hour. T in °C.
 */
export interface RoomParts {
  readonly hours: number
  readonly floor_m2: number
  readonly volume_m3: number
  readonly airCapacity_JK: number
  /** Walls, roof, floor, contents; those of no area are left out. */
  readonly groups: readonly FaceGroup[]
  readonly windows: WindowGroup | null
  /** Air change while shut, W/K, per hour. */
  readonly ventilation_WK: Float64Array
  readonly outdoor_C: Float64Array
  /** Sunlight let in by all windows, and internal gains, W, per hour. */
  readonly sun_W: Float64Array
  readonly gains_W: Float64Array
  /** Air-to-outdoor conductance added while the windows are open, W/K. */
  readonly nightVent_WK: number
  /** 1 in the hours in which windows may be opened: at night, or by the clock. */
  readonly ventAllowed: Uint8Array
  /** Indoor dew point, °C, from outdoor air, air change and moisture given off (steady in each hour). */
  readonly indoorDewPoint_C: Float64Array
  /** Mean pressure of the record, Pa. */
  readonly pressure_Pa: number
}

/** A group for one length of step: constants of its modes, from `begin` on in the arrays of all modes. */
export interface GroupStep {
  readonly area_m2: number
  readonly begin: number
  readonly end: number
  readonly inner_Wm2K: number
  /** Mean temperatures of inner face, outer face and pipes for each W/m² into them over a step, K m²/W. */
  readonly bb: number
  readonly cb: number
  readonly cc: number
  readonly db: number
  readonly dc: number
  readonly dd: number
  readonly hasPipes: boolean
}

/** All that a step of one length needs and no plant changes, one row an hour. */
export interface RoomRows {
  readonly step_s: number
  readonly stride: number
  readonly rows: Float64Array
  readonly groups: readonly GroupStep[]
  readonly modes: number
  /** Each mode's e^−x and its shapes times the share of a step's mean, inner and outer, side by side. */
  readonly modeRows: Float64Array
  /** Of each group: one past its last mode, its conductance inside, what of its inner temperature goes back to the room, and `cb`. */
  readonly ends: Int32Array
  readonly inner_Wm2K: Float64Array
  readonly given_WK: Float64Array
  readonly cb: Float64Array
  /** Shapes times the share of a step's mean: what one J/m² over the step leaves at its end. */
  readonly innerMean: Float64Array
  readonly outerMean: Float64Array
  readonly pipeMean: Float64Array
  readonly held: Float64Array
}

/** The parts, and the rows worked out from them: once for each length of step. */
export interface RoomNetwork extends RoomParts {
  readonly rowsOf: (step_s: number) => RoomRows
}
