/** What the notice beside the data (`DATA-LICENCE.md`) asks to be shown wherever they are used. */
export const PLACE_CREDITS = [
  'Monthly climate 1961–1990: CRU CL 2.0, Climatic Research Unit, University of East Anglia (New et al. 2002), at weather-station places (GSODRdata, MIT). Quantised.',
  'Towns: GeoNames, CC BY 4.0, shortened.',
] as const
