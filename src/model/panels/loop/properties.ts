/** What a fluid is like at one temperature and sea-level pressure. */
export interface FluidProperties {
  readonly density_kgm3: number
  readonly specificHeat_JkgK: number
  /** Dynamic viscosity, Pa s. */
  readonly viscosity_Pas: number
  readonly conductivity_WmK: number
  /** Where it begins to freeze, °C; −Infinity for air. */
  readonly freezing_C: number
}
