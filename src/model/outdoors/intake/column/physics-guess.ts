import type { Quantity, Unit } from './quantity.ts'
import { guessMoist } from './physics-moist.ts'
import {
  guessClouds,
  guessDirection,
  guessLongwave,
  guessPressure,
  guessWind,
  type ScoredColumn,
} from './physics-rest.ts'
import { guessSolar } from './physics-solar.ts'
import type { Profile } from './profile.ts'
import type { Sample } from './sample.ts'
import { conversion } from './unit.ts'

export interface Guessed {
  readonly index: number
  readonly quantity: Quantity
  readonly unit: Unit
  readonly confidence: number
  readonly basis: 'header' | 'physics'
}

/**
 * Recognises what headers left open by how the values behave together, the surest relations first: the closure of the
 * three irradiances, air with its humidity, then pressure, longwave, cloud and wind.
 * @param known what the headers gave
 * @param taken columns that are no longer free
 */
export function guessByPhysics(
  sample: Sample,
  profiles: readonly (Profile | null)[],
  known: ReadonlyMap<Quantity, Guessed>,
  taken: ReadonlySet<number>,
): readonly Guessed[] {
  const board = new Board(sample, profiles, known, taken)
  guessSunlight(board)
  guessAir(board)
  if (board.open('pressure')) board.takeScored('pressure', guessPressure(profiles, board.used))
  const air_C = board.values('airTemp')
  if (air_C !== null && board.open('skyLongwave')) {
    board.takeScored('skyLongwave', guessLongwave(sample, profiles, board.used, air_C))
  }
  if (board.open('windDirection')) board.takeScored('windDirection', guessDirection(profiles, board.used))
  if (board.open('opaqueCloud') && board.open('totalCloud')) {
    const { opaque, total } = guessClouds(sample, profiles, board.used, board.values('globalHorizontal'))
    board.takeScored('opaqueCloud', opaque)
    board.takeScored('totalCloud', total)
  }
  if (board.open('windSpeed')) board.takeScored('windSpeed', guessWind(profiles, board.used))
  return board.found
}

/** Less sure than this is no guess. */
const LEAST_CONFIDENCE = 0.15

/** What has been found so far and which columns are still free. */
class Board {
  readonly found: Guessed[] = []
  readonly used: Set<number>
  readonly sample: Sample
  readonly profiles: readonly (Profile | null)[]
  readonly #known: ReadonlyMap<Quantity, Guessed>

  constructor(
    sample: Sample,
    profiles: readonly (Profile | null)[],
    known: ReadonlyMap<Quantity, Guessed>,
    taken: ReadonlySet<number>,
  ) {
    this.sample = sample
    this.profiles = profiles
    this.#known = known
    this.used = new Set(taken)
  }

  open(quantity: Quantity): boolean {
    return this.#column(quantity) === undefined
  }

  take(
    quantity: Quantity,
    column: { readonly index: number; readonly unit: Unit } | null,
    confidence: number,
  ): void {
    if (
      column === null ||
      !this.open(quantity) ||
      this.used.has(column.index) ||
      confidence < LEAST_CONFIDENCE
    )
      return
    this.used.add(column.index)
    this.found.push({ index: column.index, unit: column.unit, quantity, confidence, basis: 'physics' })
  }

  takeScored(quantity: Quantity, column: ScoredColumn | null): void {
    this.take(quantity, column, column?.score ?? 0)
  }

  /** A found column's sampled values in our unit, or null. */
  values(quantity: Quantity): Float64Array | null {
    const column = this.#column(quantity)
    if (column === undefined) return null
    const { factor, offset } = conversion(quantity, column.unit)
    return this.sample.columns[column.index]!.map((value) => value * factor + offset)
  }

  #column(quantity: Quantity): Guessed | undefined {
    return this.#known.get(quantity) ?? this.found.find((one) => one.quantity === quantity)
  }
}

function guessSunlight(board: Board): void {
  if (!board.open('globalHorizontal') || !board.open('directNormal')) return
  const free = board.profiles.map((profile, index) => (board.used.has(index) ? null : profile))
  const sun = guessSolar(board.sample, free)
  if (sun === null) return
  for (const quantity of ['globalHorizontal', 'directNormal', 'diffuseHorizontal'] as const) {
    const index = sun[quantity]
    board.take(quantity, index === null ? null : { index, unit: 'W/m2' }, sun.confidence)
  }
}

function guessAir(board: Board): void {
  if (!board.open('airTemp')) return
  const moist = guessMoist(board.sample, board.profiles, board.used)
  if (moist === null) return
  for (const quantity of ['airTemp', 'dewPoint', 'relativeHumidity'] as const) {
    board.take(quantity, moist[quantity], moist.confidence)
  }
}
