import { likePlaces } from '#model/basis/words'
import { damaged, running, startsWith } from './pack.ts'

/** A town of at least 15 000 people. Source: GeoNames, CC BY 4.0, shortened. */
export interface Town {
  /** In Latin letters. */
  readonly name: string
  /** As written there, where that differs. */
  readonly nativeName: string | null
  /** Country code of two letters. */
  readonly country: string
  readonly latitude_deg: number
  readonly longitude_deg: number
  /** null: the source holds none that can be (it marks a missing one by a depth of the sea). */
  readonly altitude_m: number | null
  /** Name of the time zone, as in the tz database. */
  readonly zone: string
  readonly people_count: number
}

const HEADER_B = 16
/** The lowest ground on Earth, the shore of the Dead Sea, m: lower than that no town lies. */
const LOWEST_m = -430
const heightHeld_m = (height_m: number): number | null => (height_m < LOWEST_m ? null : height_m)

/**
 * All towns unpacked from `towns.bin`.
 * @param decoded  turns UTF-8 into text: the platform's own, for the model has none
 * @throws ProblemError when the bytes are not this file
 */
export function readTowns(bytes: Uint8Array, decoded: (bytes: Uint8Array) => string): Town[] {
  if (bytes.length < HEADER_B || !startsWith(bytes, 'DBT1')) throw damaged('towns.bin')
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  const [count, zones_B, names_B] = [4, 8, 12].map((at) => view.getUint32(at, true)) as [
    number,
    number,
    number,
  ]
  if (bytes.length !== HEADER_B + zones_B + names_B + 9 * count) throw damaged('towns.bin')
  const text = (from: number, to: number): string => decoded(bytes.subarray(from, to))
  const zones = text(HEADER_B, HEADER_B + zones_B).split('\n')
  let at = HEADER_B + zones_B + names_B
  const column = (): Uint8Array => bytes.subarray(at, (at += count))
  const pair = (): Uint16Array => running(column(), column())
  const [latitude, longitude, altitude, zone] = [pair(), pair(), pair(), pair()]
  const size = column()
  const towns: Town[] = []
  for (const line of text(HEADER_B + zones_B, HEADER_B + zones_B + names_B).split('\n')) {
    const [country, ...names] = line.split('\t')
    for (const both of names) {
      const [name, nativeName] = both.split('|')
      const i = towns.length
      towns.push({
        name: name!,
        nativeName: nativeName ?? null,
        country: country!,
        latitude_deg: latitude[i]! / 100 - 90,
        longitude_deg: longitude[i]! / 100 - 180,
        altitude_m: heightHeld_m(altitude[i]! * 5 - 500),
        zone: zones[zone[i]!]!,
        people_count: Math.round(1000 * 10 ** (size[i]! / 20)),
      })
    }
  }
  if (towns.length !== count) throw damaged('towns.bin')
  return towns
}

/** A name without case, accents, apostrophes and hyphens, so that a plain keyboard finds it. */
export function plainName(name: string): string {
  return name
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/ł/g, 'l')
    .replace(/[øö]/g, 'o')
    .replace(/đ|ð/g, 'd')
    .replace(/ß/g, 'ss')
    .replace(/æ/g, 'ae')
    .replace(/ı/g, 'i')
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim()
}

/** Towns ready to be searched: their plain names are worked out once. */
export interface TownIndex {
  readonly towns: readonly Town[]
  readonly plain: readonly string[]
  readonly plainNative: readonly string[]
}

export function indexTowns(towns: readonly Town[]): TownIndex {
  return {
    towns,
    plain: towns.map(({ name }) => plainName(name)),
    plainNative: towns.map(({ nativeName }) => (nativeName === null ? '' : plainName(nativeName))),
  }
}

/**
 * Towns by name, the whole name before its beginning before a word within, larger towns first. A country code after a
 * comma narrows it: "Cordoba, AR".
 * @param most  how many are wanted
 */
export function townsNamed(index: TownIndex, asked: string, most = 8): Town[] {
  const [name = '', country = ''] = asked.split(',').map((part) => part.trim())
  const plain = plainName(name)
  if (plain === '') return []
  const wanted = country.toUpperCase()
  const found: { town: Town; rank: number }[] = []
  index.towns.forEach((town, i) => {
    const rank = Math.min(rankOf(index.plain[i]!, plain), rankOf(index.plainNative[i]!, plain))
    if (rank < NO_MATCH && (wanted === '' || town.country === wanted)) found.push({ town, rank })
  })
  return found
    .toSorted((a, b) => a.rank - b.rank || b.town.people_count - a.town.people_count)
    .slice(0, most)
    .map(({ town }) => town)
}

const NO_MATCH = 3
function rankOf(name: string, asked: string): number {
  if (name === asked) return 0
  if (name.startsWith(asked)) return 1
  return name.includes(` ${asked}`) ? 2 : NO_MATCH
}

/** Names most like one that was not found, by letters that differ, at most a third of them; of equals the larger town first. */
export function townsLike(index: TownIndex, asked: string, most = 5): Town[] {
  return likePlaces(plainName(asked.split(',')[0] ?? ''), index.plain)
    .map(({ at, off }) => ({ town: index.towns[at]!, off }))
    .toSorted((a, b) => a.off - b.off || b.town.people_count - a.town.people_count)
    .slice(0, most)
    .map(({ town }) => town)
}
