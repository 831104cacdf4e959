import type { UnitSystem } from '#model/units/convert.ts'
import type { AreaRangeRun } from '#live/area-range.svelte.ts'
import type { LiveAnswer } from '#live/tasks.ts'
import { shownQuantity } from '#ui/words/quantity.ts'

/** What holds the design back or deserves a look, in sentences. */
export function limitLines(answer: LiveAnswer, range: AreaRangeRun, system: UnitSystem): readonly string[] {
  const { year, sizing } = answer
  const drivers = range.isFor(answer) ? (range.run.result?.drivers ?? []) : []
  const kelvin = shownQuantity('K', system)
  const lines: string[] = []
  if (drivers.length > 0) {
    const names = drivers.slice(0, 3).map(({ label }) => label.toLowerCase())
    lines.push(`What moves the area most, of all that is uncertain: ${names.join(', then ')}.`)
  }
  if (year.dewHeld_h > 0) {
    lines.push(`For ${year.dewHeld_h.toFixed(0)} hours delivery is held back by the dew point indoors.`)
  }
  if (year.freezeRisk_h > 0) {
    lines.push(
      `For ${year.freezeRisk_h.toFixed(0)} hours the plate is below freezing: the freeze protection has to work.`,
    )
  }
  for (const cut of sizing.loadCuts) {
    lines.push(
      `${cut.name}: ${kelvin.text(cut.peakDrop_K)} off the hottest hour${cut.area_m2 === null ? '' : ', and then this area is enough'}.`,
    )
  }
  if (lines.length === 0) lines.push('Nothing stands out: the area does what is asked.')
  return lines
}
