/** Open services that give hourly weather for one's own place. From memory: what each gives and on what terms is theirs to say. */
export interface FileSource {
  readonly name: string
  /** What its hourly tables hold that a design here needs. */
  readonly holds: string
  /** What to ask for, and what to say to the reading. */
  readonly pick: string
}

export interface FileRegion {
  readonly region: string
  readonly sources: readonly FileSource[]
}

const STATION = 'air, dew point or humidity, pressure, wind, cloud; radiation at some stations'

export const FILE_REGIONS: readonly FileRegion[] = [
  {
    region: 'Anywhere',
    sources: [
      {
        name: 'Reanalysis by coordinates: Copernicus Climate Data Store (ERA5), open forecast archives, NASA POWER',
        holds: 'everything, every hour, no gaps; hills, coasts and towns are smoothed away',
        pick: 'A recent warm year; CSV or JSON; clock UTC; temperature and dew point at 2 m, wind at 10 m, surface pressure, shortwave, longwave and total cloud.',
      },
      {
        name: 'Airport reports: NOAA Integrated Surface Database',
        holds: 'air, dew point, pressure, wind, cloud of some 10 000 airports and stations; no radiation',
        pick: 'The nearest station at your height, with shortwave of the same year from a satellite service or a reanalysis.',
      },
      {
        name: 'Research sites: Baseline Surface Radiation Network, FLUXNET and its regional networks',
        holds: 'measured longwave beside all the rest, at a few hundred sites',
        pick: 'If one lies near you: nothing else says so much of the night sky.',
      },
    ],
  },
  {
    region: 'Europe',
    sources: [
      { name: 'Germany: DWD Climate Data Center', holds: STATION, pick: 'Hourly tables of one station: air and humidity, wind, solar (its stamps are true solar or UTC time: see the legend).' },
      { name: 'France: Météo-France open data', holds: STATION, pick: 'Hourly base by département; clock UTC; radiation in J/cm².' },
      { name: 'Netherlands: KNMI hourly data', holds: STATION, pick: 'Tenths of units and J/cm², as its legend says; hours 1–24 UTC.' },
      { name: 'United Kingdom: MIDAS Open (CEDA)', holds: STATION, pick: 'Hourly weather and hourly radiation of one station; wind in knots.' },
      { name: 'Switzerland: MeteoSwiss open data; Austria: GeoSphere data hub', holds: STATION, pick: 'Hourly or ten-minute tables with a legend; clock UTC.' },
      { name: 'Spain: AEMET; Italy: regional services; Portugal: IPMA', holds: 'air, humidity, wind; radiation at some', pick: 'Join with shortwave from a satellite service where it is missing.' },
      { name: 'Nordic countries: SMHI, FMI, DMI, MET Norway', holds: STATION, pick: 'One station, one year, by quantity; clock UTC.' },
    ],
  },
  {
    region: 'North America',
    sources: [
      { name: 'United States: National Solar Radiation Database (satellite), SURFRAD sites', holds: 'everything by half hour; SURFRAD also longwave measured', pick: 'A single year, not the typical one, for the hottest week as it was; local standard time.' },
      { name: 'United States: state farm networks (California, Arizona, Pacific Northwest and others)', holds: 'air, humidity or vapour pressure, wind at 2 m, shortwave', pick: 'Hourly, with the legend: Ly/day, °F and mph are common; wind is at 2 m there.' },
      { name: 'Canada: Environment and Climate Change Canada', holds: 'air, dew point, pressure, wind in km/h', pick: 'Local standard time; shortwave from a satellite service.' },
    ],
  },
  {
    region: 'Latin America',
    sources: [
      { name: 'Brazil: INMET automatic stations', holds: 'air, dew point, pressure, wind, shortwave in kJ/m²', pick: 'A year of one station; decimal comma, clock UTC.' },
      { name: 'Chile, Argentina, Colombia, Mexico: national services and farm networks', holds: 'air, humidity, wind; shortwave at farm stations', pick: 'Where hours are missing, a reanalysis by coordinates.' },
    ],
  },
  {
    region: 'Asia',
    sources: [
      { name: 'Korea: KMA open data portal', holds: 'air, humidity, vapour pressure, wind, sunshine, shortwave in MJ/m², cloud in tenths', pick: 'Hourly surface table of one station; local time.' },
      { name: 'Japan: JMA past data', holds: 'air, humidity, wind, shortwave in MJ/m² at some stations', pick: 'Ten-minute or hourly; local time.' },
      { name: 'Taiwan: Central Weather Administration', holds: STATION, pick: 'Daily pages of hours; local time.' },
      { name: 'India, China, South-East Asia, the Gulf', holds: 'airport reports; little open radiation', pick: 'A reanalysis by coordinates, held against the nearest airport.' },
    ],
  },
  {
    region: 'Oceania and Africa',
    sources: [
      { name: 'Australia: Bureau of Meteorology, state farm networks', holds: STATION, pick: 'Satellite shortwave with the nearest station; local standard time, not daylight saving.' },
      { name: 'New Zealand: national climate database', holds: STATION, pick: 'One station, one year, hourly.' },
      { name: 'Southern Africa: SASSCAL WeatherNet; elsewhere in Africa: TAHMO', holds: 'air, humidity, wind, shortwave', pick: 'One station; fill from a reanalysis by coordinates.' },
    ],
  },
] // prettier-ignore
