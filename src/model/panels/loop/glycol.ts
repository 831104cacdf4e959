import type { FluidProperties } from './properties.ts'

/**
 * Propylene glycol in water, by mass: the correlations of Melinder 2010, *Properties of Secondary Working
 * Fluids for Indirect Systems* (IIR), tabulated at 0, 10, 20, 30, 40 °C. The columns follow TABLE_TEMPS_C.
 */
interface GlycolRow {
  readonly frac: number
  readonly freezing_C: number
  readonly density_kgm3: readonly number[]
  readonly specificHeat_JkgK: readonly number[]
  readonly viscosity_mPas: readonly number[]
  readonly conductivity_WmK: readonly number[]
}

const TABLE_TEMPS_C = [0, 10, 20, 30, 40] as const

const ROWS: readonly GlycolRow[] = [
  {
    frac: 0.1,
    freezing_C: -2.87,
    density_kgm3: [1009.3, 1008.3, 1006.2, 1003.2, 999.4],
    specificHeat_JkgK: [4059, 4067, 4076, 4088, 4101],
    viscosity_mPas: [2.745, 1.936, 1.432, 1.105, 0.884],
    conductivity_WmK: [0.5155, 0.5301, 0.5438, 0.5567, 0.5688],
  },
  {
    frac: 0.2,
    freezing_C: -7.17,
    density_kgm3: [1020.1, 1017.9, 1014.8, 1010.9, 1006.4],
    specificHeat_JkgK: [3936, 3956, 3977, 3998, 4019],
    viscosity_mPas: [4.312, 2.875, 2.03, 1.508, 1.169],
    conductivity_WmK: [0.4711, 0.4818, 0.4922, 0.5024, 0.5123],
  },
  {
    frac: 0.3,
    freezing_C: -12.79,
    density_kgm3: [1031.6, 1028.0, 1023.8, 1018.9, 1013.4],
    specificHeat_JkgK: [3803, 3830, 3857, 3884, 3910],
    viscosity_mPas: [7.117, 4.438, 2.965, 2.104, 1.573],
    conductivity_WmK: [0.4285, 0.4364, 0.4444, 0.4525, 0.4606],
  },
  {
    frac: 0.4,
    freezing_C: -20.57,
    density_kgm3: [1042.4, 1037.6, 1032.3, 1026.4, 1020.1],
    specificHeat_JkgK: [3642, 3674, 3707, 3739, 3771],
    viscosity_mPas: [11.879, 6.935, 4.384, 2.972, 2.141],
    conductivity_WmK: [0.3878, 0.394, 0.4003, 0.4067, 0.4132],
  },
  {
    frac: 0.5,
    freezing_C: -32.19,
    density_kgm3: [1050.9, 1045.3, 1039.1, 1032.4, 1025.4],
    specificHeat_JkgK: [3453, 3492, 3530, 3569, 3607],
    viscosity_mPas: [19.112, 10.579, 6.394, 4.175, 2.914],
    conductivity_WmK: [0.3498, 0.3546, 0.3595, 0.3645, 0.3695],
  },
  {
    frac: 0.6,
    freezing_C: -50,
    density_kgm3: [1056.0, 1049.7, 1043.0, 1035.9, 1028.4],
    specificHeat_JkgK: [3250, 3295, 3340, 3386, 3431],
    viscosity_mPas: [29.173, 15.712, 9.279, 5.938, 4.069],
    conductivity_WmK: [0.3151, 0.3186, 0.322, 0.3254, 0.3289],
  },
]

/**
 * Propylene glycol mix, `frac` by mass 0…0.6, at `temp_C` (held to 0…40 °C, where the table ends): linear in share and
 * temperature, logarithmic for viscosity. Below 10 % it runs toward `water`, the properties of plain water.
 */
export function glycolProperties(frac: number, temp_C: number, water: FluidProperties): FluidProperties {
  const upper = Math.max(
    0,
    ROWS.findIndex((row) => row.frac >= frac - 1e-12),
  )
  const high = rowAt(ROWS[upper]!, temp_C)
  const low = upper === 0 ? water : rowAt(ROWS[upper - 1]!, temp_C)
  const lowFrac = upper === 0 ? 0 : ROWS[upper - 1]!.frac
  const share = Math.min(1, Math.max(0, (frac - lowFrac) / (ROWS[upper]!.frac - lowFrac)))
  const between = (from: number, to: number) => from + share * (to - from)
  return {
    density_kgm3: between(low.density_kgm3, high.density_kgm3),
    specificHeat_JkgK: between(low.specificHeat_JkgK, high.specificHeat_JkgK),
    viscosity_Pas: Math.exp(between(Math.log(low.viscosity_Pas), Math.log(high.viscosity_Pas))),
    conductivity_WmK: between(low.conductivity_WmK, high.conductivity_WmK),
    freezing_C: between(low.freezing_C, high.freezing_C),
  }
}

function rowAt(row: GlycolRow, temp_C: number): FluidProperties {
  const last = TABLE_TEMPS_C.length - 1
  const place = Math.min(last, Math.max(0, temp_C / 10))
  const left = Math.min(last - 1, Math.floor(place))
  const share = place - left
  const at = (column: readonly number[]) => column[left]! + share * (column[left + 1]! - column[left]!)
  return {
    density_kgm3: at(row.density_kgm3),
    specificHeat_JkgK: at(row.specificHeat_JkgK),
    viscosity_Pas: 1e-3 * Math.exp(at(row.viscosity_mPas.map(Math.log))),
    conductivity_WmK: at(row.conductivity_WmK),
    freezing_C: row.freezing_C,
  }
}
