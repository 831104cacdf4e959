import { J_PER_KWH } from '#model/basis/hours'
import type { DesignMap, MapKind } from '#model/design/sizing'
import type { UnitSystem } from '#model/basis/units'
import type { TableOf } from '#ui/chart/DataTable.svelte'
import { shownQuantity, type ShownQuantity } from '#ui/words/quantity.ts'

/** A crossing of the map. */
export interface Mark {
  readonly column: number
  readonly row: number
}

/** What the rising axis shows. */
export function otherQuantity(kind: MapKind, system: UnitSystem): ShownQuantity {
  return shownQuantity(kind === 'store' ? 'm3' : 'kgsm2', system)
}

export function otherName(kind: MapKind): string {
  return kind === 'store' ? 'store volume' : 'flow per panel area'
}

/** `10.5 m² with 0.9 m³: hottest hour 27.6 °C, 35 h above the limit, meets the target.` */
export function markWords(
  map: DesignMap,
  { column, row }: Mark,
  price: string | null,
  system: UnitSystem,
  fits = true,
): string {
  const { axes } = map
  const i = row * axes.area_m2.length + column
  const area = shownQuantity('m2', system).text(axes.area_m2[column]!)
  const other = otherQuantity(axes.kind, system).text(axes.other[row]!)
  const place = axes.kind === 'store' ? `${area} with ${other}` : `${area} at ${other}`
  if (Number.isNaN(map.measure[i]!)) return `${place}: not simulated yet.`
  const about = map.known[i] === 1 ? '' : 'read between simulated designs, '
  const peak = shownQuantity('C', system).text(map.peak_C[i]!)
  const met = map.measure[i]! <= 0 ? 'meets the target' : 'misses the target'
  const cost = price === null ? '' : `, price ${price}`
  return `${place}: ${about}${met}, ${map.hours_h[i]!.toFixed(0)} h above the limit, hottest hour ${peak}${cost}${fits ? '' : '; it does not fit'}.`
}

/** How far what is not simulated was off where it was looked at; empty where all of it is. */
export function readWords({ known, miss, electricMiss_J }: DesignMap, system: UnitSystem): string {
  const parts: string[] = []
  if (miss !== null) {
    const simulated = known.reduce((sum, one) => sum + one, 0)
    parts.push(
      `${simulated} of ${known.length} crossings are simulated, all that lie beside the edge of the target among them; the others are read between. At ${miss.looks} simulated ones that were left out, the reading was off by ${shownQuantity('K', system).text(miss.peak_K)} and ${miss.hours_h.toFixed(0)} h at most.`,
    )
  }
  if (electricMiss_J !== null)
    parts.push(
      `The electricity in a price is read between some whole years; at others it was off by ${(electricMiss_J / J_PER_KWH).toFixed(1)} kWh a year at most.`,
    )
  return parts.join(' ')
}

/** Every simulated design of the map, area after area. */
export function mapTable(map: DesignMap, system: UnitSystem, price: ((i: number) => string) | null): TableOf {
  const { axes } = map
  const area = shownQuantity('m2', system)
  const other = otherQuantity(axes.kind, system)
  const t = shownQuantity('C', system)
  const columns = axes.area_m2.length
  const rows = axes.other.flatMap((value, row) =>
    axes.area_m2.flatMap((area_m2, column) => {
      const i = row * columns + column
      if (map.known[i] !== 1) return []
      const cells = [
        area.bare(area_m2),
        other.bare(value),
        map.hours_h[i]!.toFixed(0),
        t.fixed(map.peak_C[i]!, 1),
        map.measure[i]! <= 0 ? 'yes' : 'no',
      ]
      return [price === null ? cells : [...cells, price(i)]]
    }),
  )
  const name = axes.kind === 'store' ? 'Store' : 'Flow'
  const heads = [
    `Area, ${area.symbol}`,
    `${name}, ${other.symbol}`,
    'Above the limit, h',
    `Hottest, ${t.symbol}`,
    'Meets it',
  ]
  return {
    caption: 'Every simulated design of the map',
    columns: price === null ? heads : [...heads, 'Price'],
    rows,
  }
}
