/** An hour of the day as a clock shows it, 24 hours. */
export function hourOfDay(hour: number): string {
  return `${String(Math.floor(hour)).padStart(2, '0')}:00`
}
