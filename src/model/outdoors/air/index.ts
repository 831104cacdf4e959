export {
  AIR_SPECIFIC_HEAT_JKGK,
  GRAVITY_MS2,
  LEWIS_FACTOR,
  airConductivity_WmK,
  airDensity_kgm3,
  airViscosity_Pas,
  rayleighGroup,
} from './air-properties.ts'
export {
  OFF_WINDOW_EMISSION,
  STEFAN_BOLTZMANN,
  WINDOW_EMISSION,
  blackbody_Wm2,
  emissionBelow_frac,
} from './blackbody.ts'
export {
  type FreeFactors,
  type GapTilt,
  STILL_SPAN_K,
  WIND_SLOPES,
  exposedConvection_Wm2K,
  forcedConvection_Wm2K,
  freeFactors,
  gapTilt,
  hollandsNusselt,
  joinedLaws,
} from './convection.ts'
export {
  EVAPORATION_HEAT_FALL_JKGK,
  EVAPORATION_HEAT_JKG,
  SEA_LEVEL_PRESSURE_PA,
  SUBLIMATION_HEAT_JKG,
  WATER_AIR_MOLAR_RATIO,
  dewPointFromHumidity_C,
  dewPoint_C,
  evaporationHeat_Jkg,
  humidityRatio_frac,
  relativeHumidity_frac,
  saturationPressure_Pa,
  standardPressure_Pa,
  vapourPressure_Pa,
} from './moist-air.ts'
export { LOWEST_C, SATURATION_PA, SEGMENTS, STEPS_PER_K } from './saturation-table.ts'
export { LN_6310, STILL_RAYLEIGH, type UprightGap, coldBelowNusselt, uprightGap } from './upright-gap.ts'
export { WIND_TERRAINS, windFactor_frac } from './wind.ts'
export { smallPlateConvection_Wm2K } from './small-plate.ts'
