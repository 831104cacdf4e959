import { existsSync, readFileSync } from 'node:fs'
import { type SunHours, sunHours } from '#model/outdoors/sun'
import { openWeather } from '#model/outdoors/intake'
import type { Site, WeatherRecord } from '#model/outdoors/weather'

/** An open file with measured longwave, as the project reads it: the hours that the `sky` subcommand reports on. */
export interface MeasuredFile {
  readonly name: string
  readonly weather: WeatherRecord
  readonly sun: SunHours
}

const DATA = new URL('../../../../../shared/data/', import.meta.url)

function measured(name: string, file: string, site: Partial<Site> = {}): MeasuredFile | null {
  const url = new URL(file, DATA)
  if (!existsSync(url)) {
    console.log(`../shared/data/${file} is not there: its longwave is not compared.`)
    return null
  }
  const weather = openWeather(readFileSync(url, 'utf8'), { file, site, acceptLongGaps: true }).record
  if (weather === null) throw new Error(`${file} could not be opened`)
  const { start_utcMs, hours, radiationMiddle_h } = weather
  const { latitude_deg, longitude_deg } = weather.site
  return { name, weather, sun: sunHours(start_utcMs, hours, radiationMiddle_h, latitude_deg, longitude_deg) }
}

export const surfradDay = () => measured('SURFRAD station day', 'surfrad-slv16001.dat')

export const tropicalShip = () => measured('Ship, tropical Atlantic', 'ship-tropical-atlantic.txt')

export const alpineWinter = () =>
  measured('Mountain station, winter', 'alpine-winter-47N-9E.txt', {
    latitude_deg: 47.05,
    longitude_deg: 8.72,
    altitude_m: 1200,
  })
