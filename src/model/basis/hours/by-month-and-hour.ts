import { localTime, type Clock } from './clock.ts'

/** Mean and number of the hours that fell into one cell; the mean is NaN where there was none. */
export interface Means {
  readonly mean: Float64Array
  readonly count: Float64Array
}

/** A clock and how many hours it runs. */
type Hours = Clock & { readonly hours: number }

/**
 * Means of a series by month and hour of the day, index month × 24 + hour; hours that are NaN are left out.
 * @param values one a record hour
 * @throws RangeError when the lengths differ
 */
export function meansByMonthAndHour(weather: Hours, values: Float64Array): Means {
  return means(weather, values, 288, ({ month, hourOfDay }) => month * 24 + hourOfDay)
}

/**
 * Means of a series by month, January first, over the hours chosen.
 * @param chosen 1 for the hours that count; all when left out
 * @throws RangeError when the lengths differ
 */
export function meansByMonth(weather: Hours, values: Float64Array, chosen?: Uint8Array): Means {
  return means(weather, values, 12, ({ month }) => month, chosen)
}

function means(
  weather: Hours,
  values: Float64Array,
  cells: number,
  cellOf: (time: ReturnType<typeof localTime>) => number,
  chosen?: Uint8Array,
): Means {
  if (values.length !== weather.hours) {
    throw new RangeError(`means: ${values.length} values for ${weather.hours} hours`)
  }
  const mean = new Float64Array(cells)
  const count = new Float64Array(cells)
  values.forEach((value, hour) => {
    if (Number.isNaN(value) || chosen?.[hour] === 0) return
    const cell = cellOf(localTime(weather, hour))
    mean[cell]! += value
    count[cell]! += 1
  })
  return { mean: mean.map((sum, cell) => sum / count[cell]!), count }
}
