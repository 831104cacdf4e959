import type { Stages } from './stages.ts'
import { panelAtTemperature, type HeldPanel, type PanelHours } from '#model/panels/plate'
import type { Asked, Study } from './study.ts'

export interface PlateReport {
  readonly hours: PanelHours
  readonly held: HeldPanel
}

/** The plate at rest and held at one temperature (°C) through the record. */

export function* plate(
  stages: Stages,
  { scenario, weather, plate_C }: Asked & { readonly plate_C: number },
): Study<PlateReport> {
  const { panel: hours } = stages.panelOf(scenario, weather)
  return { result: { hours, held: panelAtTemperature(hours, plate_C) }, remarks: [] }
}
