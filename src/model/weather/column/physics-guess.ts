import type { Quantity, Unit } from '#model/weather/column/quantity.ts'
import { guessMoist } from '#model/weather/column/physics-moist.ts'
import {
  guessClouds,
  guessDirection,
  guessLongwave,
  guessPressure,
  guessWind,
} from '#model/weather/column/physics-rest.ts'
import { guessSolar } from '#model/weather/column/physics-solar.ts'
import type { Profile } from '#model/weather/column/profile.ts'
import type { Sample } from '#model/weather/column/sample.ts'
import { conversion } from '#model/weather/column/unit.ts'

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
  const used = new Set(taken)
  const found: Guessed[] = []
  const open = (quantity: Quantity): boolean =>
    !known.has(quantity) && !found.some((one) => one.quantity === quantity)
  const take = (
    quantity: Quantity,
    column: { index: number; unit: Unit } | null,
    confidence: number,
  ): void => {
    if (column === null || !open(quantity) || used.has(column.index) || confidence < 0.15) return
    used.add(column.index)
    found.push({ index: column.index, unit: column.unit, quantity, confidence, basis: 'physics' })
  }
  const free = (): readonly (Profile | null)[] =>
    profiles.map((profile, index) => (used.has(index) ? null : profile))
  if (open('globalHorizontal') && open('directNormal')) {
    const sun = guessSolar(sample, free())
    const column = (index: number | null) => (index === null ? null : { index, unit: 'W/m2' as const })
    if (sun !== null) {
      take('globalHorizontal', column(sun.globalHorizontal), sun.confidence)
      take('directNormal', column(sun.directNormal), sun.confidence)
      take('diffuseHorizontal', column(sun.diffuseHorizontal), sun.confidence)
    }
  }
  if (open('airTemp')) {
    const moist = guessMoist(sample, profiles, used)
    if (moist !== null) {
      take('airTemp', moist.airTemp, moist.confidence)
      take('dewPoint', moist.dewPoint, moist.confidence)
      take('relativeHumidity', moist.relativeHumidity, moist.confidence)
    }
  }
  take('pressure', ...scored(open('pressure') ? guessPressure(profiles, used) : null))
  const values = (quantity: Quantity): Float64Array | null => {
    const column = known.get(quantity) ?? found.find((one) => one.quantity === quantity)
    if (column === undefined) return null
    const { factor, offset } = conversion(quantity, column.unit)
    return sample.columns[column.index]!.map((value) => value * factor + offset)
  }
  const air = values('airTemp')
  if (air !== null && open('skyLongwave'))
    take('skyLongwave', ...scored(guessLongwave(sample, profiles, used, air)))
  take('windDirection', ...scored(open('windDirection') ? guessDirection(profiles, used) : null))
  if (open('opaqueCloud') && open('totalCloud')) {
    const { opaque, total } = guessClouds(sample, profiles, used, values('globalHorizontal'))
    take('opaqueCloud', ...scored(opaque))
    take('totalCloud', ...scored(total))
  }
  take('windSpeed', ...scored(open('windSpeed') ? guessWind(profiles, used) : null))
  return found
}

function scored(
  column: { index: number; unit: Unit; score: number } | null,
): [{ index: number; unit: Unit } | null, number] {
  return [column, column?.score ?? 0]
}
