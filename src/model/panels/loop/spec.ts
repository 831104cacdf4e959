import type { Wording } from '#model/basis/words'
import type { RowPlace } from './row-place.ts'

export const FLUIDS = ['water', 'glycol', 'air'] as const
export type FluidKind = (typeof FLUIDS)[number]

export const LAYOUTS = ['riser', 'serpentine', 'wetted'] as const
export type PlateLayout = (typeof LAYOUTS)[number]

/** The plate as the fluid sees it, and the pipes between panel and store. */
export interface LoopSpec {
  readonly fluid: FluidKind
  /** Propylene glycol, share by mass, 0…0.6; used when fluid is `glycol`. */
  readonly glycol_frac: number
  /** Flow per m² of panel, kg/s m². */
  readonly flow_kgsm2: number
  readonly layout: PlateLayout
  readonly plateThickness_m: number
  readonly plateConductivity_WmK: number
  readonly tubeSpacing_m: number
  readonly tubeOuterDiameter_m: number
  readonly tubeInnerDiameter_m: number
  /** Module size along the risers and across them, m. */
  readonly moduleLength_m: number
  readonly moduleWidth_m: number
  /** Where the rows are to lie; null or absent where its shape is not known. */
  readonly place?: RowPlace | null
  /** Pipe run from panel to store and back, m (both ways together). */
  readonly pipeLength_m: number
  /** Null: chosen from the standard bores by velocity and friction. */
  readonly pipeInnerDiameter_m: number | null
  readonly pipeInsulation_m: number
  /** Height the pump must lift to (drain-back only), m; 0 for a full loop. */
  readonly lift_m: number
  /** Pump (or fan) efficiency, electric to hydraulic, 0…1. */
  readonly pumpEfficiency_frac: number
}

/** The loop worked out for one panel area: what the year needs. */
export interface LoopDuty {
  readonly area_m2: number
  readonly modules: number
  readonly flow_kgs: number
  /** ṁ c, W/K. */
  readonly capacityRate_WK: number
  /** Conductance from fluid to plate per m² of plate, W/m²K: F′ = 1/(1 + U/this) for a surface conductance U. */
  readonly fluidToPlate_Wm2K: number
  /** Heat gain of pipes per K between air and fluid, W/K (supply and return each take half). */
  readonly pipeGain_WK: number
  readonly pressureDrop_Pa: number
  readonly pumpPower_W: number
  readonly pipeInnerDiameter_m: number
  readonly pipeVelocity_ms: number
  readonly headerInnerDiameter_m: number
  readonly riserVelocity_ms: number
  readonly riserReynolds: number
  readonly headerLoss_Pa: number
  /** Fastest and slowest passage of a row against their mean, ± share of it (see `evenness.ts`). */
  readonly flowSpread_frac: number
  readonly riserLoss_Pa: number
  readonly pipeLoss_Pa: number
  readonly liftLoss_Pa: number
  /** Sentences worth showing: velocity too low to carry air, transitional flow, uneven risers … */
  readonly remarks: readonly Wording[]
}
