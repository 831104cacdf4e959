/** One outside wall direction's glass and opaque wall follow the building's azimuth. */
export interface RoomSpec {
  /** Floor plan, m: `length_m` runs along the facade that faces `azimuth_deg`. */
  readonly length_m: number
  readonly width_m: number
  readonly height_m: number
  /** The way the long front faces, degrees clockwise from north. */
  readonly azimuth_deg: number
  readonly roofU_Wm2K: number
  readonly wallU_Wm2K: number
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
  /** Air changes per hour with everything shut, at rest. */
  readonly airChange_1h: number
  /** Extra air changes per hour per m/s of wind. */
  readonly airChangeWind_1hms: number
  /** Air changes per hour when the windows are opened at night (the baseline, or with the panels). */
  readonly nightAirChange_1h: number
  /** Open windows at night as well? */
  readonly nightVent: boolean
  /** Internal gains, W, 24 values, hour 0 first. */
  readonly gains_W: readonly number[]
  /** Moisture given off inside, kg/h (people, plants, drying): for the indoor dew point. */
  readonly moisture_kgh: number
  /** Heat capacity of air, furniture and goods, J/K per m² of floor. */
  readonly contents_Jm2K: number
  /** Effective daily heat capacity of walls and roof inside their insulation, J/K per m² of wall and roof. */
  readonly fabric_Jm2K: number
  readonly slabThickness_m: number
  readonly slabConductivity_WmK: number
  readonly slabDensity_kgm3: number
  readonly slabSpecificHeat_JkgK: number
  /** Resistance of insulation under the slab, m²K/W. */
  readonly slabInsulation_m2KW: number
  readonly groundConductivity_WmK: number
}

/**
 * The room reduced to three nodes with hourly drives and, toward outdoors, hourly conductances.
 *
 *   C_air dT_air/dt  = airFabric (T_fabric − T_air) + airSlab (T_slab − T_air) − airLoss[h] T_air + airDrive[h] (+ night vent, + cooling)
 *   C_fab dT_fab/dt  = airFabric (T_air − T_fab) − fabricLoss[h] T_fab + fabricDrive[h]
 *   C_slab dT_slab/dt = airSlab (T_air − T_slab) − slabLoss T_slab + slabDrive[h]
 *
 * T in °C; a drive is Σ H T_outside + gains, W.
 */
export interface RoomModel {
  readonly hours: number
  readonly floor_m2: number
  readonly volume_m3: number
  readonly airCapacity_JK: number
  readonly fabricCapacity_JK: number
  readonly slabCapacity_JK: number
  readonly airFabric_WK: number
  readonly airSlab_WK: number
  readonly slabLoss_WK: number
  /** Walls and roof between fabric node and sol-air temperature, W/K, per hour (the outside film moves with the wind). */
  readonly fabricLoss_WK: Float64Array
  /** Windows + air change, W/K, per hour. */
  readonly airLoss_WK: Float64Array
  readonly airDrive_W: Float64Array
  readonly fabricDrive_W: Float64Array
  readonly slabDrive_W: Float64Array
  /** Air-to-outdoor conductance added while the windows are open at night, W/K. */
  readonly nightVent_WK: number
  /** 1 in the hours of the night. */
  readonly night: Uint8Array
  readonly outdoor_C: Float64Array
  /** Indoor vapour pressure, Pa, from outdoor air, air change and moisture given off (steady in each hour). */
  readonly indoorDewPoint_C: Float64Array
  /** Weights of air, fabric and slab temperature in the operative temperature; they add to 1. */
  readonly operativeWeights: readonly [number, number, number]
  /** Drives by cause, W, for the ledger: what airDrive, fabricDrive and slabDrive are made of. */
  readonly sunAndGains: {
    readonly sun_W: Float64Array
    readonly gains_W: Float64Array
    /** The part of sun + gains that is in slabDrive, W. */
    readonly toSlab_W: Float64Array
  }
}
