/** The few relations of psychrolib that the checks use; the library ships no types. */
declare module 'psychrolib' {
  const psychrolib: {
    readonly SI: number
    SetUnitSystem(system: number): void
    /** Pa from °C. */
    GetSatVapPres(temp_C: number): number
    GetVapPresFromTDewPoint(dew_C: number): number
    /** °C from °C, 0…1 and Pa: the thermodynamic wet bulb. */
    GetTWetBulbFromRelHum(temp_C: number, humidity_frac: number, pressure_Pa: number): number
    /** Humidity ratio from vapour pressure and pressure, Pa. */
    GetHumRatioFromVapPres(vapour_Pa: number, pressure_Pa: number): number
    /** °C from °C and 0…1. */
    GetTDewPointFromRelHum(temp_C: number, humidity_frac: number): number
  }
  export default psychrolib
}
