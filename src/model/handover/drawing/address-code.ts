import { encode } from 'uqr'

/** A QR code as one path of unit squares, its white border in. */
export interface AddressCode {
  /** Side with the border, in modules. */
  readonly side: number
  readonly path: string
  /** Side on paper, mm. */
  readonly side_mm: number
}

/** White modules round the code (ISO/IEC 18004). */
const BORDER = 4
/** A module is printed no smaller, mm, and the whole code no larger: phones read both at arm’s length (common practice, no source). */
const LEAST_mm = 0.42
const USUAL_mm = 0.5
const LARGEST_mm = 46
/** Largest version whose modules are large enough in that: 17 + 4 a version. */
const MOST_VERSION = Math.floor((LARGEST_mm / LEAST_mm - 2 * BORDER - 17) / 4)

/** The code of an address; null for one too long for a code that is easily read. */
export function addressCode(address: string): AddressCode | null {
  try {
    const { size, data } = encode(address, { ecc: 'L', border: 0, maxVersion: MOST_VERSION })
    const side = size + 2 * BORDER
    const runs = data.flatMap((row, y) =>
      runsOf(row).map(([x, n]) => `M${x + BORDER} ${y + BORDER}h${n}v1h-${n}z`),
    )
    return { side, path: runs.join(''), side_mm: Math.min(LARGEST_mm, side * USUAL_mm) }
  } catch (error) {
    if (error instanceof RangeError) return null
    throw error
  }
}

/** Where black runs of a row begin, and how long they are. */
function runsOf(row: readonly boolean[]): [number, number][] {
  const runs: [number, number][] = []
  row.forEach((black, x) => {
    if (!black) return
    const last = runs.at(-1)
    if (last !== undefined && last[0] + last[1] === x) last[1]++
    else runs.push([x, 1])
  })
  return runs
}

/** The same as a picture of its own: black on white, whatever is around it. */
export function addressCodeSvg({ side, path, side_mm }: AddressCode): string {
  return `<svg xmlns="http://www.w3.org/2000/svg" class="qr" role="img" aria-label="QR code of the address of this design" viewBox="0 0 ${side} ${side}" width="${side_mm}mm" height="${side_mm}mm" shape-rendering="crispEdges"><path fill="#fff" d="M0 0h${side}v${side}h-${side}z"/><path fill="#000" d="${path}"/></svg>`
}
