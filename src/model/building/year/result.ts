/** Energy that passed each boundary over the simulated hours, J. Heat *into* the named thing is positive. */
export interface Ledger {
  /** Through walls, roof, windows and air change into the room (net), J. Sunlight that goes out again through the glass is never in. */
  envelope_J: number
  /** Sunlight and internal gains into the room, J. */
  gains_J: number
  /** Into the ground slab from the ground (net), J. */
  ground_J: number
  /** Through opened windows at night (net, negative when it cools), J. */
  nightVent_J: number
  /** From the plate to sky and air, J: what the panels threw away (positive = heat leaving). */
  panelOut_J: number
  /** Picked up by pipes between panel and store, J. */
  pipes_J: number
  /** Pump and delivery power that ended as heat in loop or room, J. */
  pumpHeat_J: number
  /** Into the store through its insulation, J (from the room or the outdoors). */
  storeGain_J: number
  /** Of that, what came from outside (0 when the tank stands in the room), J. */
  storeGainFromOutside_J: number
  /** From room to store (cold delivered), J. */
  delivered_J: number
  /** From vapour of the room's air that condensed on a coil with a drip tray, into the store, J. */
  latent_J: number
  /** Energy in all nodes at the end minus the beginning, J. */
  stored_J: number
  /** in − out − stored, J: must vanish. */
  residual_J: number
  /** Σ |flows|, J: what the residual is measured against. */
  throughput_J: number
}

/** Air, °C, and masses of a room at every hour's end, `count` masses an hour. */
export interface RoomStates {
  readonly air_C: Float64Array
  readonly masses: Float64Array
  readonly count: number
}

/** One simulated year (or shorter record). Columns have one value an hour, mean over the hour unless said. */
export interface YearResult {
  readonly hours: number
  /** Operative temperature (air and surfaces), °C. */
  readonly room_C: Float64Array
  readonly air_C: Float64Array
  /** Mean radiant temperature of the inner faces, °C. */
  readonly radiant_C: Float64Array
  /** Floor slab at the depth of its pipes, or the mean of the slab without pipes (no soil in it), °C, at the hour's end. */
  readonly slab_C: Float64Array
  /** Mean store temperature, °C (for slab and building: the mass that is cooled). */
  readonly store_C: Float64Array
  /** Store outlet to the panel (top) and to the room (bottom), °C. */
  readonly storeTop_C: Float64Array
  readonly storeBottom_C: Float64Array
  readonly plate_C: Float64Array
  /** Fluid back from the panel, °C; NaN while the pump rests. */
  readonly panelReturn_C: Float64Array
  /** Heat taken out of the fluid by the panel, W. */
  readonly panelHeat_W: Float64Array
  /** Heat taken from the room into the store, W. */
  readonly delivered_W: Float64Array
  /** Share of the hour the pump ran, 0…1. */
  readonly pumpRun_frac: Float64Array
  /** Electric power of pump and delivery, W. */
  readonly electric_W: Float64Array
  /** Water (or frost) on the exposed surface, kg/m². */
  readonly water_kgm2: Float64Array
  readonly ledger: Ledger
  /** The room's state at every hour's end, where it was asked for. */
  readonly states: RoomStates | null
  /** Hours in which the plate was below freezing with water in it (protection acted or was needed). */
  readonly freezeRisk_h: number
  /** Hours in which delivery, or the supply of pipes in slab or ceiling, was held back by the indoor dew point. */
  readonly dewHeld_h: number
  /** Hours with windows open, or their fan on, at night. */
  readonly vented_h: number
  /** Water drained from the coil's tray, kg. */
  readonly condensate_kg: number
}
