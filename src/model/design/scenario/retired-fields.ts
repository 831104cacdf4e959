import type { Problem } from '#model/basis/words'

/** From here on an areal heat capacity of an old file is that of masonry, J/m²K. */
const HEAVY_JM2K = 30_000
const LIGHT_KGM2 = 30
const HEAVY_KGM2 = 250

/** What a field that is no longer there says in the fields of today. */
export interface Retired {
  readonly values: Readonly<Record<string, number | string>>
  readonly warning: Problem
}

/**
 * Reads a field of an older version; null when the path was never one, or its value is no number. A heat capacity alone
 * does not fix a wall, so it is read as light or heavy construction with its mass inside, and that is said.
 */
export function retiredField(path: string, given: unknown, file?: string): Retired | null {
  if (path !== 'room.fabric_Jm2K' || typeof given !== 'number' || !Number.isFinite(given)) return null
  const heavy = given >= HEAVY_JM2K
  const mass_kgm2 = heavy ? HEAVY_KGM2 : LIGHT_KGM2
  return {
    values: {
      wallMass_kgm2: mass_kgm2,
      wallMassPlace: 'inside',
      roofMass_kgm2: mass_kgm2,
      roofMassPlace: 'inside',
    },
    warning: {
      code: 'scenario-retired-field',
      severity: 'warning',
      message: `${path} is no longer a field: ${given} J/m²K is read as ${heavy ? 'heavy' : 'light'} walls and roof, ${mass_kgm2} kg/m² inside the insulation.`,
      remedy: 'Choose what walls and roof are made of, or give their mass and where it lies.',
      place: file === undefined ? { field: path } : { file, field: path },
    },
  }
}
