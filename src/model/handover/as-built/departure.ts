/** How the built panel, its logger and its tank may differ from the design; all 0 is as designed. */
export interface Departure {
  /** Natural logarithm of true over designed wind exposure. */
  readonly windLog: number
  /** Added to the sky's longwave in every hour, W/m². */
  readonly sky_Wm2: number
  /** Added to the temperature difference (in − out) by the pair of sensors, K. */
  readonly offset_K: number
  /** Natural logarithm of true over designed (or metered) flow. */
  readonly flowLog: number
  /** Natural logarithm of the flow kept by pump and valves over the designed, as a meter shows it. */
  readonly meterLog: number
  /** Solar reflectance lost to dirt (a film loses this much solar transmittance). */
  readonly soil_frac: number
  /** Share of infrared emittance (of a film: transmittance) lost. */
  readonly veil_frac: number
  /** Share of sky and sun hidden from hour `shadeFrom` on. */
  readonly shade_frac: number
  readonly shadeFrom: number
  /** Share of sunlight hidden each day between two hours of local standard time. */
  readonly dayShade_frac: number
  readonly dayShadeFrom_h: number
  readonly dayShadeTo_h: number
  /** Share of sunlight more than recorded. */
  readonly sunGain_frac: number
  /** Share of the area that no fluid passes; the whole flow goes through the rest. */
  readonly dead_frac: number
  /** Share of the area that air keeps from the fluid, on average: it comes and goes from hour to hour. */
  readonly airy_frac: number
  /** Natural logarithm of true over designed conductance from fluid to plate. */
  readonly bondLog: number
  /** Heat loss through the back beyond the designed, W/m²K. */
  readonly back_Wm2K: number
  /** Share of the panel whose film is gone. */
  readonly torn_frac: number
  /** Hours by which the logger's clock is ahead of the weather's. */
  readonly clock_h: number
  /** Plate sensor against the plate, K. */
  readonly plateSensor_K: number
  /** Share of warm water (as warm as the room) in what is drawn from the tank to the panel. */
  readonly mixing_frac: number
  /** Share of the tank's first content lost a day. */
  readonly leak_1d: number
  /** Natural logarithm of the tank's heat capacity over its first estimate. */
  readonly tankLog: number
  /** Warming of the tank by load and surroundings while the panel runs by night, K/h. */
  readonly tankWarming_Kh: number
  /** Panel inlet over the tank's sensor: pipe, pump, sensors, K. */
  readonly inletOverTank_K: number
}

export const AS_DESIGNED: Departure = {
  windLog: 0,
  sky_Wm2: 0,
  offset_K: 0,
  flowLog: 0,
  meterLog: 0,
  soil_frac: 0,
  veil_frac: 0,
  shade_frac: 0,
  shadeFrom: 0,
  dayShade_frac: 0,
  dayShadeFrom_h: 0,
  dayShadeTo_h: 0,
  sunGain_frac: 0,
  dead_frac: 0,
  airy_frac: 0,
  bondLog: 0,
  back_Wm2K: 0,
  torn_frac: 0,
  clock_h: 0,
  plateSensor_K: 0,
  mixing_frac: 0,
  leak_1d: 0,
  tankLog: 0,
  tankWarming_Kh: 0,
  inletOverTank_K: 0,
}
