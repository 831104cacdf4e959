import { stressedLongwave } from './stressed-longwave.ts'
import { hotSpellWeights, type WeatherRecord } from '#model/outdoors/weather'

/** Cooler hot spells than this are no longer the same climate, K. */
const COOLEST_K = -5

/** How a year is made harder (or, with cooler spells, milder). */
export interface WeatherStress {
  /** Added to the temperature and the dew point of every hour, K; −5 to 5. */
  readonly wholeYear_K: number
  /** Added to the hottest spells, K; negative for a mild year, not below −5. */
  readonly hotSpell_K: number
  /** Added to every dew point, K, ≥ 0; never above the air. */
  readonly moreHumid_K: number
  /** Multiplies the wind, ≥ 0. */
  readonly windFactor_frac: number
}

/**
 * The same weather made harder: hotter (or cooler) spells, damper air, less (or more) wind. Dew points stay as they are
 * under hotter spells, so relative humidity falls; sunlight, cloud and pressure are left alone. A measured
 * longwave column is scaled by the change of the modelled one and the change is noted.
 * @returns the record itself when nothing is changed
 * @throws RangeError when a stress is out of its range or not a number
 */
export function stressWeather(record: WeatherRecord, stress: WeatherStress): WeatherRecord {
  checkStress(stress)
  const { wholeYear_K, hotSpell_K, moreHumid_K, windFactor_frac } = stress
  if (wholeYear_K === 0 && hotSpell_K === 0 && moreHumid_K === 0 && windFactor_frac === 1) return record
  const weight = hotSpellWeights(record.airTemp_C)
  const airTemp_C = record.airTemp_C.map((air_C, hour) => air_C + wholeYear_K + hotSpell_K * weight[hour]!)
  const dewPoint_C = record.dewPoint_C.map((dew_C, hour) =>
    Math.min(dew_C + wholeYear_K + moreHumid_K, airTemp_C[hour]!),
  )
  const harder: WeatherRecord = {
    ...record,
    airTemp_C,
    dewPoint_C,
    wind_ms: record.wind_ms.map((wind) => wind * windFactor_frac),
    basis: `${record.basis} ${stressNote(stress)}`,
  }
  return stressedLongwave(record, harder)
}

/** What was changed, in one sentence for people. */
export function stressNote({ wholeYear_K, hotSpell_K, moreHumid_K, windFactor_frac }: WeatherStress): string {
  const changes = [
    wholeYear_K === 0 ? '' : `all hours ${wholeYear_K > 0 ? '+' : '−'} ${Math.abs(wholeYear_K)} K`,
    hotSpell_K === 0 ? '' : `hottest spells ${hotSpell_K > 0 ? '+' : '−'} ${Math.abs(hotSpell_K)} K`,
    moreHumid_K === 0 ? '' : `dew points + ${moreHumid_K} K, never above the air`,
    windFactor_frac === 1 ? '' : `wind × ${windFactor_frac}`,
  ].filter((change) => change !== '')
  return `Made harder: ${changes.join('; ')}.`
}

function checkStress(stress: WeatherStress): void {
  for (const [name, value] of Object.entries(stress)) {
    const least = name === 'hotSpell_K' || name === 'wholeYear_K' ? COOLEST_K : 0
    if (!(Number.isFinite(value) && value >= least)) {
      throw new RangeError(`stressWeather: ${name} is ${value}, must be a number ≥ ${least}`)
    }
  }
}
