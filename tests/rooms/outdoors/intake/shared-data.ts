import { existsSync, readFileSync } from 'node:fs'
import { describe } from 'vitest'
import { openWeather } from '#model/outdoors/intake'
import type { OpenedWeather, OpenOptions } from '#inside/model/outdoors/intake/open.ts'

const FOLDER = new URL('../../../../../shared/data/', import.meta.url)
const present = existsSync(new URL('typical-year-36N-80W.csv', FOLDER))
if (!present)
  console.warn('weather tests: ../shared/data is not there, so the checks against open data are left out')

/** Tests that read the open data files; left out, with a printed reason, where these are absent. */
export const describeWithData = present ? describe : describe.skip

/** What must be said of a file beside its own text: the mountain table has no site, the ship's series has long gaps. */
export const FILES: Readonly<Record<string, Omit<OpenOptions, 'file'>>> = {
  'typical-year-36N-80W.csv': {},
  'typical-year-45N-8E.csv': {},
  'half-hourly-41N-109W-2017.csv': {},
  'surfrad-slv16001.dat': {},
  'ship-tropical-atlantic.txt': { acceptLongGaps: true },
  'alpine-winter-47N-9E.txt': { site: { latitude_deg: 47.05, longitude_deg: 8.72, altitude_m: 1200 } },
}

export function textOf(file: string): string {
  return readFileSync(new URL(file, FOLDER), 'utf8')
}

/** A file opened as a user would, with what FILES says and anything more. */
export function opened(file: string, more: Omit<OpenOptions, 'file'> = {}): OpenedWeather {
  const own = FILES[file] ?? {}
  return openWeather(textOf(file), {
    ...{ file, ...own, ...more },
    site: { ...own.site, ...more.site },
    time: { ...own.time, ...more.time },
  })
}
