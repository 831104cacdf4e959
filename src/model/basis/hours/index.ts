export { meansByMonth, meansByMonthAndHour } from './by-month-and-hour.ts'
export { DAY_MS, NOMINAL_YEAR, isLeapYear, moment_ms, writeMoment, yearOf } from './calendar.ts'
export { HOUR_MS, HOUR_S, J_PER_KWH, YEAR_HOURS, localHour } from './clock.ts'
export {
  MONTH_DAYS,
  MONTH_STARTS,
  YEAR_DAYS,
  dayMeans,
  dayRanges,
  hourlyFromDays,
  monthMeans,
  monthOfDay,
  seasonal,
} from './months-of-year.ts'
export { RingPart } from './ring-part.ts'
