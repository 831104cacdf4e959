/** Letters that stand for themselves in a string of any quotes, in a script of a page: from the space on, but for these. */
const LEFT_OUT = '\'"`\\$<'
const FIRST = 0x20
/** The two letters from here on begin a pair. */
const PAIRED = 0x7d
const CODES = Array.from({ length: PAIRED - FIRST }, (_, i) => FIRST + i).filter(
  (code) => !LEFT_OUT.includes(String.fromCharCode(code)),
)
const BYTES = 256
/** Bytes that come most in a module, places of variables and instructions on numbers: they have one letter each. */
const PLACES_END = 0x50
const NUMBERS_FROM = 0xa0
const NUMBERS_END = NUMBERS_FROM + CODES.length - PLACES_END

const between = (from: number, to: number): number[] => Array.from({ length: to - from }, (_, i) => from + i)
const ORDER = [
  ...between(0, PLACES_END),
  ...between(NUMBERS_FROM, NUMBERS_END),
  ...between(PLACES_END, NUMBERS_FROM),
  ...between(NUMBERS_END, BYTES),
]

/** Bytes as text that is short when compressed. */
export function textOf(bytes: Uint8Array): string {
  const letter = (code: number): string => String.fromCharCode(code)
  return Array.from(bytes, (byte) => {
    const place = ORDER.indexOf(byte)
    const page = Math.floor(place / CODES.length)
    return (page === 0 ? '' : letter(PAIRED + page - 1)) + letter(CODES[place % CODES.length]!)
  }).join('')
}

/** The bytes of a text by `textOf`. */
export function bytesOf(text: string): Uint8Array {
  const placeOf = new Map(CODES.map((code, place) => [code, place]))
  const bytes: number[] = []
  let page = 0
  for (let i = 0; i < text.length; i++) {
    const code = text.charCodeAt(i)
    if (code >= PAIRED) page = code - PAIRED + 1
    else {
      bytes.push(ORDER[CODES.length * page + placeOf.get(code)!]!)
      page = 0
    }
  }
  return Uint8Array.from(bytes)
}
