import { gaussian, seededRandom } from '#model/basis/numbers'
import { asBuiltInputs, emptyLog } from './inputs.ts'
import type { Fault } from './causes.ts'
import type { Departure } from './departure.ts'
import { rehearsalLog } from './rehearsal.ts'
import { weatherSpan } from './span.ts'
import { writeLog } from './write.ts'
import type { Scenario } from '#model/design/scenario'
import type { WeatherRecord } from '#model/outdoors/weather'

/** Which logger file to invent. */
export interface InventedLog {
  readonly fault: Fault
  /** First day of the weather record (0 first) and number of days. */
  readonly firstDay: number
  readonly days: number
  /** Whole number that fixes its errors. */
  readonly seed: number
  readonly area_m2: number
  /** Density of the fluid, kg/m³. */
  readonly fluidDensity_kgm3: number
}

/** An invented logger file, as text, of a panel with a known fault in this weather: to rehearse the check with. */
export function inventedLogFile(scenario: Scenario, weather: WeatherRecord, wanted: InventedLog): string {
  const span = {
    logFrom: 0,
    weatherFrom: 24 * Math.floor(wanted.firstDay),
    hours: 24 * Math.floor(wanted.days),
  }
  const part = weatherSpan(weather, span)
  const inputs = asBuiltInputs(scenario, part, emptyLog(part.hours), wanted.area_m2)
  const random = seededRandom(wanted.seed)
  const log = rehearsalLog(inputs, {
    fault: plantedFault(wanted.fault, span.hours),
    normal: () => gaussian(random),
    runs: 'thirdDays',
    flowMeter: true,
    plateSensor: true,
    inlet: 'tank',
  })
  return writeLog(log, part, wanted.fluidDensity_kgm3)
}

/** A usual size of each fault, to rehearse with. */
function plantedFault(fault: Fault, hours: number): Partial<Departure> {
  switch (fault) {
    case 'none':
      return {}
    case 'lowFlow':
      return { meterLog: Math.log(0.5) }
    case 'air':
      return { airy_frac: 0.35 }
    case 'deadModule':
      return { dead_frac: 1 / 3 }
    case 'poorBond':
      return { bondLog: Math.log(0.12) }
    case 'dirty':
      return { soil_frac: 0.1, veil_frac: 0.08 }
    case 'wornFilm':
      return { torn_frac: 0.5 }
    case 'wetInsulation':
      return { back_Wm2K: 6 }
    case 'shading':
      return { shade_frac: 0.7, shadeFrom: Math.floor(hours / 2) }
    case 'sensorOffset':
      return { offset_K: -1 }
    case 'wrongClock':
      return { clock_h: 2 }
    case 'warmMixing':
      return { mixing_frac: 0.3 }
    case 'tankLeak':
      return { leak_1d: 0.03 }
  }
}
