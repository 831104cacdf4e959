import { AS_DESIGNED, type Departure } from './plant.ts'
import { fieldAt, type Scenario } from '#model/design/scenario'

const RADIANS = Math.PI / 180

/**
 * The scenario with the panel as it was found, to size again with: wind exposure, dirt, veil, shade (as a higher horizon:
 * a level panel sees cos² h of the sky) and, where it departs, the flow. Sensor and sky errors are nobody's property and
 * stay out. Values are held to the fields' own ranges.
 * @param designFlow_kgsm2  flow the prediction was made with
 */
export function asFoundScenario(
  scenario: Scenario,
  departure: Departure,
  designFlow_kgsm2: number,
): Scenario {
  const { coating, cover, panel, site, loop } = scenario
  const film = cover.kind === 'film'
  const clear = 1 - departure.veil_frac
  const flowChanged = departure.flowLog !== AS_DESIGNED.flowLog
  const skySeen = (1 - departure.shade_frac) * Math.cos(site.horizon_deg * RADIANS) ** 2
  return {
    ...scenario,
    panel: {
      ...panel,
      windExposure_frac: held(
        'panel.windExposure_frac',
        panel.windExposure_frac * Math.exp(departure.windLog),
      ),
    },
    site: { ...site, horizon_deg: held('site.horizon_deg', Math.acos(Math.sqrt(skySeen)) / RADIANS) },
    coating: film
      ? coating
      : {
          ...coating,
          solarReflectance_frac: held(
            'coating.solarReflectance_frac',
            coating.solarReflectance_frac - departure.soil_frac,
          ),
          windowEmittance_frac: held('coating.windowEmittance_frac', coating.windowEmittance_frac * clear),
          offWindowEmittance_frac: held(
            'coating.offWindowEmittance_frac',
            coating.offWindowEmittance_frac * clear,
          ),
        },
    cover: film
      ? {
          ...cover,
          solarTransmittance_frac: held(
            'cover.solarTransmittance_frac',
            cover.solarTransmittance_frac - departure.soil_frac,
          ),
          windowTransmittance_frac: held(
            'cover.windowTransmittance_frac',
            cover.windowTransmittance_frac * clear,
          ),
          offWindowTransmittance_frac: held(
            'cover.offWindowTransmittance_frac',
            cover.offWindowTransmittance_frac * clear,
          ),
        }
      : cover,
    loop: flowChanged
      ? {
          ...loop,
          autoFlow: false,
          flow_kgsm2: held('loop.flow_kgsm2', designFlow_kgsm2 * Math.exp(departure.flowLog)),
        }
      : loop,
  }
}

function held(path: string, value: number): number {
  const found = fieldAt(path)
  if (found === null || found.field.type !== 'number') throw new RangeError(`${path} is not a number field`)
  return Math.min(found.field.max, Math.max(found.field.min, value))
}
