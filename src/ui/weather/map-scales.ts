import type { ClimateSeries } from '#studies/climate-series.ts'
import { shownQuantity, type ShownQuantity } from '#ui/words/quantity.ts'
import type { UnitSystem } from '#model/basis/units'

type Colour = readonly [number, number, number]

/** What a picture of the nights can show: the question it answers, its values and its colours, pale to dark. */
export interface MapKind {
  readonly label: string
  readonly question: string
  /** One sentence on how to read it. */
  readonly lead: string
  readonly values: (series: ClimateSeries) => Float64Array
  readonly quantity: (system: UnitSystem) => ShownQuantity
  readonly pale: Colour
  readonly dark: Colour
}

const percentOf = (): ShownQuantity => {
  const text = (value: number) => `${Math.round(value * 100)} %`
  return {
    symbol: '%',
    toShown: (value) => value * 100,
    toSi: (shown) => shown / 100,
    rounded: (value) => Math.round(value * 100),
    fixed: (value, decimals) => (value * 100).toFixed(decimals),
    bare: (value) => String(Math.round(value * 100)),
    text,
  }
}

export const MAP_KINDS = {
  air: {
    label: 'Temperature',
    question: 'how warm are they?',
    lead: 'Darker is hotter.',
    values: ({ weather }) => weather.airTemp_C,
    quantity: (system) => shownQuantity('C', system),
    pale: [250, 244, 224],
    dark: [120, 38, 20],
  },
  dew: {
    label: 'Dew point',
    question: 'how dry are they?',
    lead: 'Darker is damper: no surface in the room may go below the dew point of its air.',
    values: ({ weather }) => weather.dewPoint_C,
    quantity: (system) => shownQuantity('C', system),
    pale: [244, 244, 232],
    dark: [24, 72, 66],
  },
  wind: {
    label: 'Wind',
    question: 'how windy are they?',
    lead: 'Darker is windier: wind warms a plate that is colder than the air.',
    values: ({ weather }) => weather.wind_ms,
    quantity: (system) => shownQuantity('ms', system),
    pale: [244, 243, 238],
    dark: [74, 52, 96],
  },
  sky: {
    label: 'Sky',
    question: 'how clear are they?',
    lead: 'Darker is colder: what a black plate at air temperature loses to the sky, day and night, sunlight left out.',
    values: ({ black_Wm2 }) => black_Wm2,
    quantity: (system) => shownQuantity('Wm2', system),
    pale: [240, 240, 236],
    dark: [30, 36, 74],
  },
  humidity: {
    label: 'Humidity',
    question: 'how humid are they?',
    lead: 'Darker is more humid.',
    values: ({ humidity_frac }) => humidity_frac,
    quantity: percentOf,
    pale: [248, 246, 236],
    dark: [28, 74, 92],
  },
} as const satisfies Record<string, MapKind>

export type MapName = keyof typeof MAP_KINDS

/** One step of a map's colours: values from `from` (inclusive) on. */
export interface MapStep {
  readonly from: number
  readonly to: number
  readonly colour: Colour
}

/** Steps of a round width that cover the values, at most fourteen, each darker than the one before. */
export function mapSteps(
  values: ArrayLike<number>,
  { toShown, toSi }: ShownQuantity,
  kind: MapKind,
): MapStep[] {
  let low = Infinity
  let high = -Infinity
  for (let i = 0; i < values.length; i += 1) {
    const shown = toShown(values[i]!)
    if (shown < low) low = shown
    if (shown > high) high = shown
  }
  if (!(high > low)) return [{ from: toSi(low), to: toSi(high), colour: kind.pale }]
  const width = roundWidth((high - low) / 12)
  const first = Math.floor(low / width)
  const count = Math.floor(high / width) - first + 1
  return Array.from({ length: count }, (_, step) => ({
    from: toSi((first + step) * width),
    to: toSi((first + step + 1) * width),
    colour: blend(kind, count === 1 ? 0 : step / (count - 1)),
  }))
}

/** Place of a value among the steps; −1 for no value. */
export function stepAt(steps: readonly MapStep[], value: number): number {
  if (Number.isNaN(value)) return -1
  let at = 0
  while (at + 1 < steps.length && value >= steps[at + 1]!.from) at += 1
  return at
}

/** 1, 2, 2.5 or 5 times a power of ten, at least the width wanted. */
function roundWidth(least: number): number {
  const power = 10 ** Math.floor(Math.log10(least))
  return power * (([1, 2, 2.5, 5, 10] as const).find((factor) => factor * power >= least) ?? 10)
}

function blend({ pale, dark }: MapKind, share: number): Colour {
  const mix = (i: 0 | 1 | 2) => Math.round(pale[i] + (dark[i] - pale[i]) * share)
  return [mix(0), mix(1), mix(2)]
}
