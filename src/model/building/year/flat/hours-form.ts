import type { HoursForm } from './run-setting.ts'
import { inWebAssembly } from './wasm-run.ts'

let chosen: HoursForm | null | undefined

/** The form that runs are stepped in: WebAssembly where there is any, else what `useForm` was given last; null: none. */
export function hoursForm(): HoursForm | null {
  if (chosen === undefined) chosen = inWebAssembly()
  return chosen
}

/** Has runs stepped in this form from now on. */
export function useForm(form: HoursForm | null): void {
  chosen = form
}
