import { LOOP_TEMP_C } from '#model/loop/duty.ts'
import { fluidProperties } from '#model/loop/fluid.ts'
import type { Options } from '../options.ts'

/** Density of the scenario's fluid, kg/m³: turns a metered volume into mass. */
export function fluidDensity_kgm3({ scenario }: Options): number {
  return fluidProperties(scenario.loop.fluid, scenario.loop.glycol_frac, LOOP_TEMP_C).density_kgm3
}
