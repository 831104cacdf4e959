import type { Flags, Within } from './within.ts'

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
  /** Rows of the film's hours, and its polynomials of exchange (`film-rows.ts`). */
  readonly filmRows: Float64Array
  readonly filmExchange: Float64Array
  readonly saturation_Pa: Float64Array
  /** Rows of the layers of a tank in layers, top first (`places.ts`). */
  readonly layerRows: Float64Array
  /** Of pipes in a layer: their shape in its modes times the share of a step's mean. */
  readonly pipeRows: Float64Array
  /** The shape itself. */
  readonly pipeShapes: Float64Array
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
  /** 1 where there are panels. */
  hasPlant: number
  /** 1 where the plant meets the room in its air. */
  meetsAir: number
  /** Place among the groups of the one with the pipes that the plant meets, −1 without; and where its modes begin in `modeRows`. */
  piped: number
  pipedFrom: number
  /** 1 where a film is over the panels. */
  hasFilm: number
  /** Layers of the tank; 1 is a mixed one, 0 is none: the loop charges where the plant meets the room. */
  layers: number
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
  /** Mean answers of pipes in a layer to heat at inner and outer face and at themselves, and of the inner to the outer face: \`GroupStep\`. */
  pipeDb: number
  pipeDc: number
  pipeDd: number
  pipeCb: number
  pipeInner_Wm2K: number
  pipeArea_m2: number
  perCapacity_K_J: number
  plateCapacity_JK: number
  shed_m2: number
  field_frac: number
  backLoss_Wm2K: number
  coldSpan_K: number
  hotSpan_K: number
  waterLimit_kgm2: number
  /** Gap under a film: sin β, cos β held at 60°, and (sin 1.8β)^1.6. */
  gapWidth_m: number
  gapSine: number
  gapCosine: number
  gapShear: number
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
  /** Share of the loop's difference to what it charges that is exchanged: 1 of a tank. */
  sinkShare: number
  tankCapacity_JK: number
  /** 0 of a tank in layers, whose own are in their rows. */
  tankLoss_WK: number
  topLoss_WK: number
  betweenLayers_WK: number
  open_WK: number
  faded_K: number
  demand_WK: number
  fan_W: number
  dewMargin_K: number
  setpoint_C: number
  startDifference_K: number
  stopDifference_K: number
  leastDrop_K: number
  lowestStore_C: number
  freezeLimit_C: number
}

/** Numbers carried from step to step. */
export interface Kept {
  air_C: number
  radiant_C: number
  /** Shares of heat where the plant meets the room that air and radiant temperature get. */
  toAir: number
  toRadiant: number
  /** The tank, of one in layers its top; without a tank what the loop charges. */
  tank_C: number
  plate_C: number
  water_kgm2: number
  sinkDrift_Ks: number
  /** Water that leaves what the loop charges: topSink T_sink + topPlate T_plate + topConst; of a tank 1, 0, 0. */
  topSink: number
  topPlate: number
  topConst_C: number
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
  /** 1 where return water is blended in. */
  isMixing: number
  dewHolds: number
}
