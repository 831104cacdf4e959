import { AS_DESIGNED, type Departure } from './departure.ts'
import { fieldAt, type Scenario } from '#model/design/scenario'

const RADIANS = Math.PI / 180
/** A film gone from more than this share of the panel counts as no film. */
const MOSTLY_GONE = 0.5

/** A bond's share of the designed exchange, at a usual slope of the plate's loss, W/m²K. */
const USUAL_SLOPE_WM2K = 8

/**
 * The scenario with the panel as it was found, to size again with: wind exposure, dirt, veil, back, shade (as a higher
 * horizon: a level panel sees cos² h of the sky), area without fluid and poor bond (as a lower field factor), a film
 * mostly gone and, where it departs, the flow. Errors of sensors, clock and sky, and faults of the tank, are not the
 * panel's and stay out. Values are held to the fields' own ranges.
 * @param designed  flow and fluid-to-plate conductance the prediction was made with
 */
export function asFoundScenario(
  scenario: Scenario,
  departure: Departure,
  designed: { readonly flow_kgsm2: number; readonly fluidToPlate_Wm2K: number },
): Scenario {
  const { panel, site, loop } = scenario
  const flowLog = departure.flowLog + departure.meterLog
  const flowChanged = flowLog !== AS_DESIGNED.flowLog
  const working = (1 - departure.dead_frac) * (1 - departure.airy_frac)
  const passing = (bond: number) => 1 / (1 + USUAL_SLOPE_WM2K / (bond * designed.fluidToPlate_Wm2K))
  const exchange = (working * passing(Math.exp(departure.bondLog))) / passing(1)
  const skySeen = (1 - departure.shade_frac) * Math.cos(site.horizon_deg * RADIANS) ** 2
  return {
    ...scenario,
    panel: {
      ...panel,
      windExposure_frac: held(
        'panel.windExposure_frac',
        panel.windExposure_frac * Math.exp(departure.windLog),
      ),
      backLoss_Wm2K: held('panel.backLoss_Wm2K', panel.backLoss_Wm2K + departure.back_Wm2K),
      fieldFactor_frac: held('panel.fieldFactor_frac', panel.fieldFactor_frac * exchange),
    },
    site: { ...site, horizon_deg: held('site.horizon_deg', Math.acos(Math.sqrt(skySeen)) / RADIANS) },
    ...departedOptics(scenario, departure),
    loop: flowChanged
      ? {
          ...loop,
          autoFlow: false,
          flow_kgsm2: held('loop.flow_kgsm2', designed.flow_kgsm2 * Math.exp(flowLog)),
        }
      : loop,
  }
}

/** Coating or, where there is one, film as found. */
function departedOptics(
  { coating, cover }: Scenario,
  departure: Departure,
): Pick<Scenario, 'coating' | 'cover'> {
  const film = cover.kind === 'film'
  const clear = 1 - departure.veil_frac
  return {
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
          kind: departure.torn_frac > MOSTLY_GONE ? ('bare' as const) : cover.kind,
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
  }
}

function held(path: string, value: number): number {
  const found = fieldAt(path)
  if (found === null || found.field.type !== 'number') throw new RangeError(`${path} is not a number field`)
  return Math.min(found.field.max, Math.max(found.field.min, value))
}
