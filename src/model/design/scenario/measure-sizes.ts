/** What one full amount of each measure is, for the description, its price and the builder's sheet alike. */
export const MEASURE_SIZES = {
  /** Insulation that is added, m and W/m·K; its U-value follows from both (common practice, no source). */
  insulation_m: 0.1,
  insulation_WmK: 0.035,
  /** Sunlight left by an outside blind (DIN 4108-2: 0.25–0.30, from memory) and by reflective film. */
  blind_frac: 0.27,
  film_frac: 0.6,
  /** Resistance of a second pane, m²K/W. */
  secondPane_m2KW: 0.17,
  /** Water jars or masonry, heat capacity per m² of floor, J/m²K (50 kg of water; common practice, no source). */
  jars_Jm2K: 209_000,
  jars_kgm2: 50,
  /** Share of gains and of leaks that can be had away (common practice, no source). */
  gainsAway_frac: 0.3,
  leaksAway_frac: 0.5,
  /** Clear opening for each m² of floor, its height, m, and what mesh and bars leave of the flow (common practice, no source). */
  opening_m2m2: 0.05,
  openingHeight_m: 1,
  mesh_frac: 0.6,
  /** Air changes of a night fan, and what one fan moves, m³/h (common practice, no source). */
  fanChanges_1h: 8,
  oneFan_m3h: 500,
  /** One ceiling fan for so much floor, m², and the speed of its air at people, m/s (common practice, no source). */
  ceilingFan_m2: 20,
  ceilingFan_ms: 0.6,
} as const
