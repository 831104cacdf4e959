/**
 * Reads a printed code as a camera does once it has found the squares: an implementation of its own beside the one that draws, after
 * ISO/IEC 18004 (tables of level L from memory, proved by the syndromes of every block being 0). Level L, byte mode.
 */
export function readCode(black: readonly (readonly boolean[])[]): string {
  const side = black.length
  const version = (side - 17) / 4
  const at = (x: number, y: number): boolean => black[y]![x]!
  const format = formatBits(at)
  if (format >> 13 !== 0b01) throw new Error('not of level L')
  const mask = MASKS[(format >> 10) & 7]!
  const reserved = reservedOf(version, side)
  const bits: number[] = []
  for (let right = side - 1, up = true; right > 0; right -= 2, up = !up) {
    if (right === 6) right--
    for (let i = 0; i < side; i++) {
      const y = up ? side - 1 - i : i
      for (const x of [right, right - 1]) if (!reserved(x, y)) bits.push(at(x, y) !== mask(x, y) ? 1 : 0)
    }
  }
  const words = Array.from({ length: Math.floor(bits.length / 8) }, (_, i) =>
    bits.slice(8 * i, 8 * i + 8).reduce((sum, bit) => 2 * sum + bit, 0),
  )
  return textOf(dataOf(words, version), version)
}

const MASKS: readonly ((x: number, y: number) => boolean)[] = [
  (x, y) => (x + y) % 2 === 0,
  (_, y) => y % 2 === 0,
  (x) => x % 3 === 0,
  (x, y) => (x + y) % 3 === 0,
  (x, y) => (Math.floor(x / 3) + Math.floor(y / 2)) % 2 === 0,
  (x, y) => ((x * y) % 2) + ((x * y) % 3) === 0,
  (x, y) => (((x * y) % 2) + ((x * y) % 3)) % 2 === 0,
  (x, y) => (((x + y) % 2) + ((x * y) % 3)) % 2 === 0,
]

/** The fifteen bits beside the upper left square, proved by their own check bits. */
function formatBits(at: (x: number, y: number) => boolean): number {
  const spots: [number, number][] = [
    ...[0, 1, 2, 3, 4, 5, 7, 8].map((x): [number, number] => [x, 8]),
    ...[7, 5, 4, 3, 2, 1, 0].map((y): [number, number] => [8, y]),
  ]
  const bits = spots.reduce((sum, [x, y]) => 2 * sum + (at(x, y) ? 1 : 0), 0) ^ 0x5412
  let rest = bits
  for (let i = 14; i >= 10; i--) if ((rest >> i) & 1) rest ^= 0x537 << (i - 10)
  if (rest !== 0) throw new Error('format bits do not check')
  return bits
}

/** Modules that carry no data. */
function reservedOf(version: number, side: number): (x: number, y: number) => boolean {
  const count = version === 1 ? 0 : Math.floor(version / 7) + 2
  const step = count < 2 ? 0 : 2 * Math.ceil((side - 13) / (2 * count - 2))
  const centres = Array.from({ length: count }, (_, i) => (i === 0 ? 6 : side - 7 - (count - 1 - i) * step))
  return (x, y) => {
    if (x === 6 || y === 6) return true
    const corner = (cx: number, cy: number): boolean => x >= cx && x < cx + 9 && y >= cy && y < cy + 9
    if (corner(0, 0) || corner(side - 8, 0) || corner(0, side - 8)) return true
    if (version >= 7 && ((x >= side - 11 && y < 6) || (y >= side - 11 && x < 6))) return true
    return centres.some((cy, j) =>
      centres.some((cx, i) => {
        const inCorner = (i === 0 && j === 0) || (i === 0 && j === count - 1) || (i === count - 1 && j === 0)
        return !inCorner && Math.abs(x - cx) <= 2 && Math.abs(y - cy) <= 2
      }),
    )
  }
}

/** Level L, by version from 1: check words of a block, and blocks. */
const CHECKS = [7, 10, 15, 20, 26, 18, 20, 24, 30, 18, 20, 24, 26, 30, 22, 24, 28, 30, 28, 28, 28]
const BLOCKS = [1, 1, 1, 1, 1, 2, 2, 2, 2, 4, 4, 4, 4, 4, 6, 6, 6, 6, 7, 8, 8]

/** Data words in order; every block's syndromes must be 0. */
function dataOf(words: readonly number[], version: number): number[] {
  const [checks, blocks] = [CHECKS[version - 1]!, BLOCKS[version - 1]!]
  const short = Math.floor(words.length / blocks) - checks
  const long = words.length % blocks
  const sizes = Array.from({ length: blocks }, (_, b) => short + (b >= blocks - long ? 1 : 0))
  const data: number[][] = sizes.map(() => [])
  let at = 0
  for (let i = 0; i <= short; i++)
    for (let b = 0; b < blocks; b++) if (i < sizes[b]!) data[b]!.push(words[at++]!)
  const check: number[][] = sizes.map(() => [])
  for (let i = 0; i < checks; i++) for (let b = 0; b < blocks; b++) check[b]!.push(words[at++]!)
  data.forEach((block, b) => {
    const whole = [...block, ...check[b]!]
    for (let i = 0, x = 1; i < checks; i++, x = times(x, 2))
      if (whole.reduce((sum, word) => times(sum, x) ^ word, 0) !== 0)
        throw new Error(`block ${b} does not check`)
  })
  return data.flat()
}

/** Product in the field of 256 elements, by x⁸ + x⁴ + x³ + x² + 1. */
function times(a: number, b: number): number {
  let product = 0
  for (let i = 7; i >= 0; i--) product = (product << 1) ^ ((product >> 7) * 0x11d) ^ (((b >> i) & 1) * a)
  return product
}

function textOf(words: readonly number[], version: number): string {
  const bits = words.flatMap((word) => Array.from({ length: 8 }, (_, i) => (word >> (7 - i)) & 1))
  let at = 0
  const take = (n: number): number => bits.slice(at, (at += n)).reduce((sum, bit) => 2 * sum + bit, 0)
  if (take(4) !== 0b0100) throw new Error('not in byte mode')
  const length = take(version < 10 ? 8 : 16)
  return new TextDecoder().decode(Uint8Array.from({ length }, () => take(8)))
}

/** The modules of a printed picture, its border left away, whatever runs it is drawn of. */
export function modulesOf(svg: string): boolean[][] {
  const side = Number(/viewBox="0 0 (\d+)/.exec(svg)![1])
  const black = Array.from({ length: side }, () => Array.from({ length: side }, () => false))
  for (const [, x, y, n] of /fill="#000" d="([^"]+)"/.exec(svg)![1]!.matchAll(/M(\d+) (\d+)h(\d+)/g))
    for (let i = 0; i < +n!; i++) black[+y!]![+x! + i] = true
  return black.slice(4, -4).map((row) => row.slice(4, -4))
}
