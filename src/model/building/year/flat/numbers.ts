/**
 * What the flat year is written in. Its parts are small functions over one such set of numbers; `npm run -s flat` puts them
 * together as one function in which every number is a local variable (`hours.ts`), because V8 keeps those in registers.
 * Names, units and signs are those of the modular kernel, the reference.
 */
export type Flat = Columns & Whole & Given & Kept & Counts & Within & Flags

/** Arrays. */
export interface Columns {
  /** Rows of the room's hours (`room/rows.ts`), groups and modes (`places.ts`). */
  readonly rows: Float64Array
  readonly groupRows: Float64Array
  readonly modeRows: Float64Array
  /** One past each group's last mode, in entries of `modeRows`. */
  readonly ends: Int32Array
  /** Hours of the building. */
  readonly outdoors_C: Float64Array
  readonly dews_C: Float64Array
  readonly ventAllowed: Uint8Array
  readonly mayRun: Uint8Array
  readonly balances_C: Float64Array
  readonly conductances_Wm2K: Float64Array
  /** Rows of the panel's hours (`face-rows.ts`) and of the plate that never runs (`resting-course.ts`). */
  readonly faceRows: Float64Array
  restRows: Float64Array
  readonly saturation_Pa: Float64Array
  /** Found: operative temperature of each hour, °C. */
  readonly room_C: Float64Array
}

/** Whole numbers that hold for the run. */
export interface Whole {
  fromRun: number
  toRun: number
  hours: number
  stepsPerHour: number
  stride: number
  groups: number
  /** 1 where there are panels and a tank. */
  hasPlant: number
  /** 1 where the tank stands outdoors. */
  tankOutside: number
  /** 0 glycol, 1 drain-back, 2 stopped. */
  freeze: number
  keepsBooks: number
}

/** Numbers that hold for the run. */
export interface Given {
  step_s: number
  airCapacity_JK: number
  nightVent_WK: number
  ventStop_C: number
  toAir: number
  toRadiant: number
  perCapacity_K_J: number
  plateCapacity_JK: number
  shed_m2: number
  field_frac: number
  backLoss_Wm2K: number
  coldSpan_K: number
  hotSpan_K: number
  waterLimit_kgm2: number
  dry0: number
  dry1: number
  dry2: number
  dry3: number
  dry4: number
  dry5: number
  wet0: number
  wet1: number
  wet2: number
  wet3: number
  wet4: number
  wet5: number
  area_m2: number
  rate_WK: number
  pump_W: number
  fluidToPlate_Wm2K: number
  pipeShare: number
  tankCapacity_JK: number
  tankLoss_WK: number
  open_WK: number
  faded_K: number
  demand_WK: number
  fan_W: number
  dewMargin_K: number
  setpoint_C: number
  startDifference_K: number
  stopDifference_K: number
  lowestStore_C: number
  freezeLimit_C: number
}

/** Numbers carried from step to step. */
export interface Kept {
  air_C: number
  radiant_C: number
  tank_C: number
  plate_C: number
  water_kgm2: number
  sinkDrift_Ks: number
  /** The plate's last tangent. */
  shed_WK: number
  rest_W: number
  slope_Wm2K: number
  gain_kgm2s: number
  /** The tangent where the step begins. */
  begunSlope_Wm2K: number
  begunGain_kgm2s: number
  begunShed_WK: number
  begunRest_W: number
  latestShare: number
  earlierShare: number
  opening: number
  settled: number
  before: number
  /** Of the hour: °C s, J, s. */
  air_Cs: number
  radiant_Cs: number
  envelope_J: number
  ground_J: number
  nightVent_J: number
  shed_J: number
  taken_J: number
  pipes_J: number
  pump_J: number
  fan_J: number
  gain_J: number
  delivered_J: number
  run_s: number
  return_Cs: number
  vented_s: number
  /** Exponents last taken and what they came to. */
  airEnd: number
  endOf_WK: number
  tankEnd: number
  tankPace: number
}

/** Whole numbers carried from step to step. */
export interface Counts {
  hour: number
  /** Where the hour's row begins. */
  at: number
  law: number
  restHour: number
  restStep: number
  isOnRest: number
  isFreezing: number
  dewHolds: number
}

/** Numbers of one hour, step or trial. */
export interface Within {
  /** Face of the panel in the hour. */
  faceAir_C: number
  vapour_Pa: number
  massTransfer: number
  dryGain_Wm2: number
  wetGain_Wm2: number
  cold0: number
  cold1: number
  cold2: number
  cold3: number
  hot0: number
  hot1: number
  hot2: number
  hot3: number
  still_Wm2K: number
  stillRise_Wm2K2: number
  outdoor_C: number
  lowest_C: number
  vent_WK: number
  rowVent_WK: number
  inertia_WK: number
  across_WK: number
  radiant_WK: number
  radiantShare: number
  hourToAir_W: number
  hourToRadiant_W: number
  room_WK: number
  roomDrive_W: number
  toRadiant_W: number
  faces_W: number
  star_C: number
  portShare: number
  portBase_C: number
  portOwn_KW: number
  openSeen_WK: number
  fadingSeen_WK: number
  x: number
  endOverMean: number
  at_C: number
  atWater_kgm2: number
  wet_frac: number
  limit_kgm2s: number
  h_Wm2K: number
  riseOfH_Wm2K2: number
  evaporation_kgm2s: number
  evaporationSlope_kgm2sK: number
  change_Jkg: number
  radiated_Wm2: number
  radiatedSlope_Wm2K: number
  q_Wm2: number
  part_s: number
  fromSink_WK: number
  fromConst_W: number
  fromPlate_WK: number
  drift_Ks: number
  meanSlope: number
  meanOffset_C: number
  endWeight_K_W: number
  endRamp_C: number
  ahead_s: number
  waterAhead_kgm2: number
  exchange_WK: number
  backTop: number
  backPlate: number
  backConst_C: number
  charging_W: number
  charging_WK: number
  low: number
  high: number
  lowSlack_K: number
  highSlack_K: number
  side: number
  trial: number
  firstTried: number
  tried: number
  share: number
  from_C: number
  band_K: number
  slack_K: number
  foundShare: number
  tankMean_C: number
  airMean_C: number
  fanShare: number
  warmest_C: number
  heat_W: number
  delivered_W: number
}

export interface Flags {
  hasBegun: boolean
  spent: boolean
  changed: boolean
  mayPump: boolean
  isFound: boolean
}
