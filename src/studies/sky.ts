import type { Stages } from './stages.ts'
import { STEFAN_BOLTZMANN } from '#model/outdoors/air'
import { skyOptionsOf } from '#model/design/assembly'
import { judgeSky, type SkyJudgement, type SkyHours } from '#model/outdoors/sky'
import type { SunHours } from '#model/outdoors/sun'
import { KELVIN_OFFSET } from '#model/basis/units'
import type { Asked, Study } from './study.ts'

export interface SkyReport {
  readonly sun: SunHours
  readonly sky: SkyHours
  /** Temperature of a black sky with the same longwave, °C per hour. */
  readonly skyTemp_C: Float64Array
  /** The model against what was measured; null where the measured column is used. */
  readonly judgement: SkyJudgement | null
}

/** Longwave from the sky; with `ignoreMeasured` by the formula even where it was measured, and judged by that. */

export function* sky(
  stages: Stages,
  { scenario, weather, ignoreMeasured = false }: Asked & { readonly ignoreMeasured?: boolean },
): Study<SkyReport> {
  const useMeasured = !ignoreMeasured && scenario.sky.useMeasured
  const asked = { ...scenario, sky: { ...scenario.sky, useMeasured } }
  const found = stages.skyOf(asked, weather)
  return {
    result: {
      sun: found.sun,
      sky: found.sky,
      skyTemp_C: found.sky.total_Wm2.map((flux) => (flux / STEFAN_BOLTZMANN) ** 0.25 - KELVIN_OFFSET),
      judgement: useMeasured ? null : judgeSky(weather, found.sun, skyOptionsOf(scenario)),
    },
    remarks: [],
  }
}
