import type { BenchMoment, BenchReadings } from './reading.ts'
import { ProblemError, said, type Problem, figure, words, type Text } from '#model/basis/words'

/** What each number of a moment may be; outside it the field notes hold a slip of the pen. */
const RANGES = {
  airTemp_C: [-40, 60],
  dewPoint_C: [-50, 40],
  sun_Wm2: [0, 1500],
  skyLongwave_Wm2: [80, 600],
  cloud_frac: [0, 1],
  wind_ms: [0, 30],
} as const

/**
 * Checks field notes before they are fitted.
 * @throws ProblemError with every problem found, each naming its moment (1-based line) and field
 */
export function checkReadings(readings: BenchReadings): void {
  const problems: Problem[] = []
  if (readings.samples.length === 0)
    problems.push(problem('no samples', 'Name at least one coating.', 0, 'samples'))
  if (readings.moments.length === 0)
    problems.push(problem('no readings', 'Type at least one reading.', 0, 'moments'))
  if (!(readings.infraredSetting_frac > 0.05 && readings.infraredSetting_frac <= 1)) {
    problems.push(
      problem(
        `an infrared emissivity setting of ${readings.infraredSetting_frac}`,
        'It lies between 0.05 and 1; most instruments are fixed at 0.95.',
        0,
        'infraredSetting_frac',
      ),
    )
  }
  readings.samples.forEach((sample, i) => {
    const known = sample.known
    if (known === null) return
    const inside = [known.solarReflectance_frac, known.emittance_frac].every((v) => v >= 0 && v <= 1)
    const spread = known.solarReflectanceSd_frac > 0 && known.emittanceSd_frac > 0
    if (!inside || !spread || known.emittance_frac === 0) {
      problems.push(
        problem(
          `reference “${sample.name}” with optics outside 0…1 or an uncertainty of zero`,
          'Give reflectance and emittance as shares with an uncertainty above 0.',
          i + 1,
          'samples',
        ),
      )
    }
  })
  readings.moments.forEach((moment, i) => problems.push(...momentProblems(readings, moment, i + 1)))
  if (problems.length > 0) throw new ProblemError(problems)
}

function momentProblems(readings: BenchReadings, moment: BenchMoment, line: number): Problem[] {
  const found: Problem[] = []
  for (const [field, [min, max]] of Object.entries(RANGES)) {
    const value = moment[field as keyof typeof RANGES]
    if (value !== null && !(value >= min && value <= max)) {
      found.push(problem(`${field} of ${value}`, `It must lie between ${min} and ${max}.`, line, field))
    }
  }
  if (moment.dewPoint_C > moment.airTemp_C + 0.05) {
    found.push(
      problem(
        words`a dew point of ${figure(moment.dewPoint_C, 'C')} above the air at ${figure(moment.airTemp_C, 'C')}`,
        'Check which is which, or type the relative humidity.',
        line,
        'dewPoint_C',
      ),
    )
  }
  if (moment.wind === 'metered' && moment.wind_ms === null) {
    found.push(
      problem('a metered wind without a value', 'Type m/s, or choose calm or breezy.', line, 'wind_ms'),
    )
  }
  if (moment.surfaces.length === 0) {
    found.push(problem('no surface temperature', 'Type at least one.', line, 'surfaces'))
  }
  for (const surface of moment.surfaces) found.push(...surfaceProblems(readings, surface, line))
  return found
}

function surfaceProblems(
  readings: BenchReadings,
  surface: BenchMoment['surfaces'][number],
  line: number,
): Problem[] {
  const found: Problem[] = []
  const name = readings.samples[surface.sample]?.name
  if (name === undefined) {
    return [
      problem(`sample number ${surface.sample + 1}`, 'No such sample is on the board.', line, 'surfaces'),
    ]
  }
  if (!(surface.shown_C >= -60 && surface.shown_C <= 120)) {
    found.push(
      problem(
        words`${name} at ${figure(surface.shown_C, 'C')}`,
        'It must lie between −60 °C and 120 °C.',
        line,
        'shown_C',
      ),
    )
  }
  if (surface.cover === 'film' && readings.board.film === null) {
    found.push(problem(`${name} under a film`, 'Describe the film of the board first.', line, 'cover'))
  }
  if (surface.cover === 'film' && surface.thermometer === 'infrared') {
    found.push(
      problem(
        `${name} read by infrared through a film`,
        'The instrument sees the film, not the paint: use a contact probe under the film, or leave this reading out.',
        line,
        'thermometer',
      ),
    )
  }
  return found
}

function problem(what: Text, remedy: string, line: number, field: string): Problem {
  return {
    code: 'bench-reading',
    severity: 'error',
    ...said(words`The readings have ${what}.`),
    remedy,
    place: line > 0 ? { line, field } : { field },
  }
}
