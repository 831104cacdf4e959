import { flatHours } from './hours.ts'
import type { HoursForm } from './run-setting.ts'

/** The hours as functions in TypeScript. */
export const inTypeScript: HoursForm =
  ({ columns, whole, numbers }) =>
  () =>
    flatHours(columns, whole, numbers)
