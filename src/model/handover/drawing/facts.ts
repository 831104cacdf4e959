import type { Figure, Text } from '#model/basis/words'
import { fieldSize_m } from '#model/panels/loop'

/** What of a plant is drawn: sizes in m, angles in degrees; texts as they are written in the drawing. */
export interface PlantFacts {
  readonly moduleLength_m: number
  readonly moduleWidth_m: number
  /** Modules of each row, the fullest first. */
  readonly rows: readonly number[]
  /** Feet under each of a row's two rails, row by row; how far a rail runs past its modules, m. */
  readonly feetPerRail: readonly number[]
  readonly railPast_m: number
  /** Heights of the feet at the fed end, low and high rail of the row that is drawn, in words; null where none is needed. */
  readonly feetHigh: Text | null
  readonly tilt_deg: number
  readonly azimuth_deg: number
  /** Low edge of the panels above the ground. */
  readonly panelHeight_m: number
  /** Along the headers and down the slope; null where only an area is given and not its shape. */
  readonly roof: { readonly across_m: number; readonly down_m: number } | null
  readonly roomWidth_m: number
  readonly roomHeight_m: number
  /** From the ceiling to the roof’s outside; null where its layers are not known. */
  readonly roofThickness_m: number | null
  readonly liquid: boolean
  readonly glycol: boolean
  readonly freeze: 'drainBack' | 'glycol' | 'stop'
  readonly tank: {
    readonly volume_m3: number
    readonly diameter_m: number
    readonly height_m: number
    readonly place: 'room' | 'outside'
    /** Its bottom over the floor, m: it rests on its insulation. */
    readonly foot_m: number
    /** Heights above the tank's bottom, m: water line with empty panels, panel-loop outlet, end of the return in it. */
    readonly water_m: number
    readonly outlet_m: number
    readonly end_m: number
  } | null
  /** What keeps the cold where there is no tank. */
  readonly mass: 'slab' | 'building' | null
  /** A coil that may be colder than the dew point, with a tray and a drain. */
  readonly drained: boolean
  /** What brings a tank's cold into the room: fan coil, or cooled surface; null without a tank. */
  readonly roomUnit: 'fanCoil' | 'ceiling' | 'pipes' | null
  readonly pipe: Text
  readonly header: Text
  readonly pipeRun_m: number
  readonly flow: Figure
  readonly mover: 'pump' | 'fan'
  readonly ducting: 'pipe' | 'duct'
  readonly passage: 'riser' | 'tube' | 'channel'
  /** Thicknesses and sizes of the panel, from the sky down. */
  readonly build: {
    readonly film: { readonly gap_m: number } | null
    readonly coating: Text
    readonly plate_m: number
    readonly plateText: Text
    readonly passageInner_m: number
    readonly passageOuter_m: number
    /** Passages side by side on a module; bore of its headers, m. */
    readonly passages: number
    readonly header_m: number
    /** null: side by side. */
    readonly spacing_m: number | null
    readonly foam_m: number
    readonly foamText: Text
  }
}

/** Fixings sit so far in from a module's corners, of its shorter side (common practice, no source). */
export const FIXING_INSET_frac = 0.1

/** What the size of the panel field hangs on. */
type FieldFacts = Pick<PlantFacts, 'rows' | 'moduleWidth_m' | 'moduleLength_m' | 'tilt_deg'>

/** Size of the panel field, m: along the headers, and down the slope along the panels' own plane. */
export function fieldOf({ rows, moduleWidth_m, moduleLength_m }: FieldFacts) {
  return fieldSize_m({ moduleWidth_m, moduleLength_m }, rows)
}

/** Field as it lies on the plan: shortened by its tilt, m. */
export function planOf(facts: PlantFacts) {
  const field = fieldOf(facts)
  return { across_m: field.across_m, down_m: field.down_m * Math.cos((facts.tilt_deg * Math.PI) / 180) }
}

/** Supply and return go through the roof so far off the field's low and high edge, on the plan, m (common practice, no source). */
export const THROUGH_m = 0.1
/** They run so far beside the field, m, with room for the valves B; nearer where the roof ends before (common practice, no source). */
const ASIDE_m = { most: 0.35, least: 0.1 }

/** How far supply and return run beside the field, m. */
export function asideOf_m(facts: PlantFacts): number {
  const free_m = facts.roof === null ? Infinity : (facts.roof.across_m - planOf(facts).across_m) / 2
  return Math.max(ASIDE_m.least, Math.min(ASIDE_m.most, free_m - ASIDE_m.least))
}

/** Rise of the field from its low to its high edge, m. */
export function riseOf(facts: FieldFacts): number {
  return fieldOf(facts).down_m * Math.sin((facts.tilt_deg * Math.PI) / 180)
}

/** Highest corner of the panels over the ground, m: rows of a liquid loop hang lower at their fed end, so that headers drain. */
export function highest_m(facts: FieldFacts & Pick<PlantFacts, 'panelHeight_m' | 'liquid'>): number {
  const hung_m = facts.liquid ? FALL * fieldOf(facts).across_m : 0
  return facts.panelHeight_m + riseOf(facts) + hung_m
}

/** A vessel for water that drains back hangs this far under the ceiling or the panels, whichever is lower, m (common practice, no source). */
const VESSEL_UNDER_m = 0.4

/** Pipes fall by so much of their length, 1 : 50 (¼ inch in a foot; common practice, no source). */
export const FALL = 0.02

/** What the height of the water depends on. */
type WaterFacts = Pick<PlantFacts, 'tank' | 'panelHeight_m' | 'roomHeight_m' | 'liquid' | 'glycol' | 'freeze'>

/** True where water leaves the panels each time the pump stops. */
export const drainsBack = ({ liquid, glycol, freeze }: WaterFacts): boolean =>
  liquid && !glycol && freeze === 'drainBack'

/** Height of the water that the pump draws from, panels empty, above the floor, m; null in a closed loop that stays full. */
export function waterLine_m(facts: WaterFacts): number | null {
  if (!facts.liquid) return null
  if (facts.tank !== null) return facts.tank.foot_m + facts.tank.water_m
  return drainsBack(facts) ? Math.min(facts.roomHeight_m, facts.panelHeight_m) - VESSEL_UNDER_m : null
}

/** From that water to the highest point of the panels, m: what a pump lifts to fill panels that have drained. */
export function liftOf_m(facts: FieldFacts & WaterFacts): number | null {
  const water_m = waterLine_m(facts)
  return water_m === null ? null : highest_m(facts) - water_m
}

/** Height of the air hole AH above the tank’s bottom, m: in the middle between its water line and its rim. */
export const airHoleHeight_m = ({ water_m, height_m }: NonNullable<PlantFacts['tank']>): number =>
  (water_m + height_m) / 2
