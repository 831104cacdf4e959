/** A value kept between two ends. */
export const within = (value: number, least: number, most: number): number =>
  Math.min(most, Math.max(least, value))
