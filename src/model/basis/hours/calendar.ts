export const DAY_MS = 86_400_000

/** A year without a leap day, for files whose months come from several years. */
export const NOMINAL_YEAR = 2001

/** Milliseconds since 1970 of a date and a time of day, on whatever clock; NaN where there is no such date. */
export function moment_ms(year: number, month: number, day: number, ofDay_ms: number): number {
  if (!(month >= 1 && month <= 12 && day >= 1 && day <= 31) || year !== Math.floor(year)) return NaN
  const date = Date.UTC(year, month - 1, day)
  return new Date(date).getUTCDate() === day ? date + ofDay_ms : NaN
}

export function isLeapYear(year: number): boolean {
  return (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0
}

export function yearOf(ms: number): number {
  return new Date(ms).getUTCFullYear()
}

/** A moment as people write it: 2018-01-31 14:30, on the clock it was given on. */
export function writeMoment(ms: number): string {
  return new Date(ms).toISOString().slice(0, 16).replace('T', ' ')
}
