/** Where the heat of the panel goes, hour by hour, at plate temperatures that a year gave. */
import { panelSpecOf } from '#model/design/assembly'
import { emptyPanelHour, panelParts, panelSetting, readPanelHour, type PanelParts } from '#model/panels/plate'
import { planeIrradiance } from '#model/outdoors/sun'
import type { Stages } from './stages.ts'
import type { Asked, Study } from './study.ts'

/** The question: from which hour on, and what plate (°C) and water on it (kg/m²) were in each. */
export interface PanelNight extends Asked {
  readonly from_h: number
  readonly plate_C: readonly number[]
  readonly water_kgm2: readonly number[]
}

export function* panelNight(
  stages: Stages,
  { scenario, weather: record, from_h, plate_C, water_kgm2 }: PanelNight,
): Study<readonly PanelParts[]> {
  const { weather, sun, sky } = stages.skyOf(scenario, record)
  const spec = panelSpecOf(scenario)
  const { tilt_deg, azimuth_deg, groundAlbedo_frac, horizon_deg } = spec
  const onPanel = planeIrradiance(sun, weather, tilt_deg, azimuth_deg, groundAlbedo_frac, horizon_deg)
  const setting = panelSetting(spec)
  const hour = emptyPanelHour()
  const result = plate_C.map((plate, i) => {
    readPanelHour(setting, weather, sky, onPanel, from_h + i, hour)
    return panelParts(setting, hour, plate, water_kgm2[i]!)
  })
  return { result, remarks: [] }
}
