import { stop } from '#model/basis/words'

/** The five monthly quantities of the packed climate, with step and lowest value of a stored number. */
const QUANTITIES = [
  { name: 'airTemp_C', step: 0.25, lowest: -60 },
  { name: 'dailyRange_K', step: 0.2, lowest: 0 },
  { name: 'humidity_pct', step: 1, lowest: 0 },
  { name: 'sunshine_pct', step: 1, lowest: 0 },
  { name: 'wind_ms', step: 0.1, lowest: 0 },
] as const
export type PackedQuantity = (typeof QUANTITIES)[number]['name']

const HEADER_B = 8
const MONTHS = 12

/** Monthly climate 1961–1990 at places on land; arrays of one entry a place. */
export interface ClimatePlaces {
  readonly count: number
  readonly latitude_deg: Float32Array
  readonly longitude_deg: Float32Array
  readonly altitude_m: Float32Array
  /** Twelve columns each, January first. */
  readonly months: Readonly<Record<PackedQuantity, readonly Float32Array[]>>
}

/**
 * Monthly climate unpacked from `climate-places.bin`: columns of bytes, differences from a prediction by the place before
 * and the month before. Source of the data: CRU CL 2.0 (New, Lister, Hulme & Makin 2002, Climate Research 21, 1–25).
 * @throws ProblemError when the bytes are not this file
 */
export function readClimatePlaces(bytes: Uint8Array): ClimatePlaces {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  const count = bytes.length >= HEADER_B && startsWith(bytes, 'DBC1') ? view.getUint32(4, true) : 0
  // Three running columns of two bytes, January's temperature in two, and the other 59 months in one.
  if (count === 0 || bytes.length !== HEADER_B + count * (6 + 2 + 59)) throw damaged('climate-places.bin')
  let at = HEADER_B
  const column = (): Uint8Array => bytes.subarray(at, (at += count))
  const pair = (): Uint16Array => running(column(), column())
  const scaled = (values: ArrayLike<number>, step: number, lowest: number): Float32Array =>
    Float32Array.from(values, (value) => value * step + lowest)
  const latitude_deg = scaled(pair(), 0.01, -90)
  const longitude_deg = scaled(pair(), 0.01, -180)
  const altitude_m = scaled(pair(), 5, -500)
  const months = QUANTITIES.map(({ name, step, lowest }) => {
    const stored: Int32Array[] = name === 'airTemp_C' ? [Int32Array.from(pair())] : []
    while (stored.length < MONTHS)
      stored.push(predicted(column(), stored.at(-1) ?? null, name === 'airTemp_C'))
    return [name, stored.map((values) => scaled(values, step, lowest))] as const
  })
  return {
    count,
    latitude_deg,
    longitude_deg,
    altitude_m,
    months: Object.fromEntries(months) as unknown as ClimatePlaces['months'],
  }
}

/** Running sum of 16-bit steps, modulo 65536. */
export function running(low: Uint8Array, high: Uint8Array): Uint16Array {
  const sums = new Uint16Array(low.length)
  let sum = 0
  for (let i = 0; i < low.length; i++) sums[i] = sum = (sum + low[i]! + 256 * high[i]!) & 0xffff
  return sums
}

/** A month from its differences: predicted as the month before here plus that step at the place before. */
function predicted(differences: Uint8Array, before: Int32Array | null, signed: boolean): Int32Array {
  const now = new Int32Array(differences.length)
  for (let i = 0; i < now.length; i++) {
    const guess =
      before === null ? (i > 0 ? now[i - 1]! : 0) : before[i]! + (i > 0 ? now[i - 1]! - before[i - 1]! : 0)
    now[i] = signed ? guess + ((differences[i]! << 24) >> 24) : (guess + differences[i]!) & 0xff
  }
  return now
}

export const startsWith = (bytes: Uint8Array, word: string): boolean =>
  [...word].every((letter, i) => bytes[i] === letter.charCodeAt(0))

export const damaged = (file: string) =>
  stop(
    'places-damaged',
    `${file} is not the file that belongs here, or it is damaged.`,
    'Load the page again, or install the program again.',
    { file },
  )
