/** The few relations of psychrolib that the checks use; the library ships no types. */
declare module 'psychrolib' {
  const psychrolib: {
    readonly SI: number
    SetUnitSystem(system: number): void
    /** Pa from °C. */
    GetSatVapPres(temp_C: number): number
    GetVapPresFromTDewPoint(dew_C: number): number
    /** °C from °C and 0…1. */
    GetTDewPointFromRelHum(temp_C: number, humidity_frac: number): number
  }
  export default psychrolib
}
