import type { Cover, Light, Thermometer, WindClass } from '#model/panels/readings'

export const LIGHT_WORDS: Readonly<Record<Light, string>> = {
  sun: 'Full sun',
  shade: 'Open shade',
  night: 'Night',
}
export const WIND_WORDS: Readonly<Record<WindClass, string>> = {
  metered: 'Metered',
  calm: 'Calm',
  breezy: 'Breezy',
}
export const COVER_WORDS: Readonly<Record<Cover, string>> = { bare: 'Bare', film: 'Under film' }
export const THERMOMETER_WORDS: Readonly<Record<Thermometer, string>> = {
  contact: 'Probe',
  infrared: 'Infrared',
}

/** A share to three decimals. */
export const share = (value: number) => value.toFixed(3)
/** `0.930 (0.912–0.948)`. */
export const withInterval = ({ value, low, high }: { value: number; low: number; high: number }) =>
  `${share(value)} (${share(low)}–${share(high)})`
/** A difference with its sign. */
export const signed = (value: number, decimals = 3) =>
  `${value > 0 ? '+' : value < 0 ? '−' : ''}${Math.abs(value).toFixed(decimals)}`
