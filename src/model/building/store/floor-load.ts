import { GRAVITY_MS2 } from '#model/outdoors/air'
import { said, type Problem, figure, words, type Text } from '#model/basis/words'
import { fluidProperties } from '#model/panels/loop'
import { STORE_TEMP_C } from './model.ts'
import type { StoreSpec } from './spec.ts'
import { isTank, tankShape } from './tank.ts'

/** What a full tank does to the floor it stands on. */
export interface FloorLoad {
  /** Water, shell and insulation, kg. */
  readonly full_kg: number
  readonly footprint_m2: number
  readonly diameter_m: number
  readonly height_m: number
  /** On its footprint, or spread over `SPREAD_m2`, whichever is more floor. */
  readonly load_kgm2: number
  readonly load_kPa: number
  readonly warnings: readonly Problem[]
}

/** Shell, insulation and fittings, as a share of the water (common practice, no source). */
const SHELL_SHARE = 0.08

/** Design live load of dwelling floors, kPa: US residential code table R301.5, 40 psf. */
export const DWELLING_kPa = 1.92
/** A tank's weight counts as spread over at least so much floor, m²: EN 1991-1-1 has 2.0 kN in one spot beside 2.0 kN/m² for dwellings (from memory). */
export const SPREAD_m2 = 1
/** Tanks taller than this can tip and must be held (common practice, no source), m. */
const TALL_m = 1.2

/** A tank of so much water with its shell, insulation and fittings, full, kg. */
export function fullTank_kg(volume_m3: number): number {
  return fluidProperties('water', 0, STORE_TEMP_C).density_kgm3 * volume_m3 * (1 + SHELL_SHARE)
}

/**
 * Weight of the store on its floor, with warnings for the builder. Slab and building have none: all zero.
 * @param shape  of the tank; as high as wide where none is given
 */
export function floorLoad(spec: StoreSpec, shape = tankShape(tankVolume_m3(spec))): FloorLoad {
  const full_kg = fullTank_kg(tankVolume_m3(spec))
  const load_kgm2 = full_kg / Math.max(SPREAD_m2, shape.end_m2)
  const load = {
    full_kg,
    footprint_m2: shape.end_m2,
    diameter_m: shape.diameter_m,
    height_m: shape.height_m,
    load_kgm2,
    load_kPa: (load_kgm2 * GRAVITY_MS2) / 1000,
  }
  return { ...load, warnings: loadWarnings(load) }
}

const tankVolume_m3 = ({ kind, volume_m3 }: StoreSpec): number => (isTank(kind) ? volume_m3 : 0)

function loadWarnings(load: Omit<FloorLoad, 'warnings'>): Problem[] {
  const warnings: Problem[] = []
  if (load.load_kPa > DWELLING_kPa)
    warnings.push(
      warning(
        'tank-heavier-than-floor',
        words`Full, the tank weighs ${figure(load.full_kg, 'kg', 4)} and loads its floor with ${figure(load.load_kgm2, 'kgm2')}; ordinary dwelling floors are made for about ${figure((DWELLING_kPa * 1000) / GRAVITY_MS2, 'kgm2', 2)}.`,
        'Stand it on a slab on firm ground, or have the floor checked by a professional; local codes decide.',
      ),
    )
  if (load.height_m > TALL_m)
    warnings.push(
      warning(
        'tank-tall',
        words`The tank is ${figure(load.height_m, 'm', 2)} high and can tip when pushed or shaken.`,
        'Hold it to a wall or frame, and plan where a leak would run; local codes decide.',
      ),
    )
  return warnings
}

function warning(code: string, message: Text, remedy: string): Problem {
  return { code, severity: 'warning', ...said(message), remedy, place: { field: 'store.volume_m3' } }
}
