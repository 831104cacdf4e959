import { columnsByHeader, numberIn, tableAt, type Layout } from './layout.ts'

const COLUMNS = {
  YEAR: 'year count',
  MO: 'month count',
  DY: 'day count',
  HR: 'hour count',
  T2M: 'airTemp C',
  T2MDEW: 'dewPoint C',
  RH2M: 'relativeHumidity %',
  PS: 'pressure kPa',
  WS10M: 'windSpeed m/s',
  WD10M: 'windDirection deg',
  ALLSKY_SFC_SW_DWN: 'globalHorizontal W/m2',
  ALLSKY_SFC_SW_DNI: 'directNormal W/m2',
  ALLSKY_SFC_SW_DIFF: 'diffuseHorizontal W/m2',
  ALLSKY_SFC_LW_DWN: 'skyLongwave W/m2',
  CLOUD_AMT: 'totalCloud %',
} as const

/**
 * Hourly CSV of global reanalysis services: a preamble between BEGIN HEADER and END HEADER, −999 for missing,
 * rows that cover the hour that begins at the stamp, in UTC or in local solar time as the preamble says.
 */
export const reanalysisHourly: Layout = {
  id: 'reanalysis-hourly',
  label: 'Global reanalysis, hourly table',
  recognise(lines) {
    const end = lines.findIndex((line) => /^-?END HEADER-?/i.test(line))
    const header = lines.findIndex((line, at) => at > end && /^YEAR,MO,DY,HR,/.test(line))
    if (end < 0 || header < 0) return null
    const preamble = lines.slice(0, end).join('\n')
    const place = /Latitude\s+(-?[\d.]+)\s+Longitude\s+(-?[\d.]+)/i.exec(preamble)
    const latitude_deg = Number(place?.[1] ?? NaN)
    const longitude_deg = Number(place?.[2] ?? NaN)
    const utc = /\bin UTC\b/i.test(preamble)
    const altitude_m = numberIn(/elevation[^\n]*=\s*(-?[\d.]+)/i.exec(preamble)?.[1])
    const table = tableAt(lines, header, ',')
    return {
      table,
      columns: columnsByHeader(table.headers, COLUMNS),
      missing: [-999],
      time: {
        clockOffset_h: utc ? 0 : Math.round(longitude_deg / 15),
        stamp: 'beginning',
        radiationOffset_h: null,
        shift_h: 0,
      },
      site: {
        name: `Reanalysis cell at ${latitude_deg}, ${longitude_deg}`,
        ...(Number.isNaN(latitude_deg) ? {} : { latitude_deg, longitude_deg }),
        ...(Number.isNaN(altitude_m) ? {} : { altitude_m }),
      },
      basis: 'Global reanalysis, hourly: a model fed with observations, not a measurement at the site.',
    }
  },
}
