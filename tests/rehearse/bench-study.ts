import { gaussian, median, seededRandom, type RandomSource } from '#model/basis/numbers'
import { lightBoxResult, pairedReflectance, USUAL_BOARD, warmPlateEmittance } from '#model/panels/readings'
import { expectedRatio } from '#inside/model/panels/readings/light-box.ts'
import { UNDISTURBED } from '#inside/model/panels/readings/reading-errors.ts'
import { restingPlate_C } from '#inside/model/panels/readings/resting-plate.ts'
import { boardSetting, sampleHour, sampleSetting } from '#inside/model/panels/readings/surface-temperature.ts'
import { bandTemperature_C, instrumentSignal } from './instrument.ts'

/** How a method of the bench did on simulated samples of known truth. */
export interface MethodStudy {
  readonly name: string
  readonly of: number
  readonly held: number
  /** Median half width of the 90 % interval, –, and the largest it may be (none for the light box). */
  readonly half: number
  readonly goalHalf: number | null
}

interface Trial {
  readonly truth: number
  readonly low: number
  readonly high: number
}

/** 90 % intervals are to hold so many of 100 truths. */
const COVERAGE_PCT = [87, 93] as const
const times = <T>(n: number, make: () => T) => Array.from({ length: n }, make)
const between = (random: RandomSource, low: number, high: number) => low + (high - low) * random()

/** Simulated samples: warm plate and tape, boards in the sun, light box. */
export function benchStudy(samples: number, seed: number): MethodStudy[] {
  const study = (name: string, goalHalf: number | null, trial: (random: RandomSource) => Trial) => {
    const random = seededRandom(seed)
    const trials = times(samples, () => trial(random))
    return {
      name,
      of: samples,
      held: trials.filter(({ truth, low, high }) => low <= truth && truth <= high).length,
      half: median(trials.map(({ low, high }) => (high - low) / 2)),
      goalHalf,
    }
  }
  return [
    study('emittance, tape on a warm plate', 0.03, warmPlateTrial),
    study('solar reflectance, boards in the sun', 0.015, pairedTrial),
    study('visible reflectance, light box', null, lightBoxTrial),
  ]
}

/** A plate of 60 to 80 °C in a room of 20 °C, five readings of each, through an instrument of 8–14 µm. */
function warmPlateTrial(random: RandomSource): Trial {
  const normal = () => gaussian(random)
  const truth = between(random, 0.8, 0.97)
  const plate_C = between(random, 60, 80)
  const tape = 0.95 + 0.01 * normal()
  const room_C = 20
  const shown = (emittance: number) => {
    // The spots of one plate differ by 0.2 K, the instrument reads to 0.3 K.
    const spot_C = plate_C + 0.2 * normal()
    const signal = emittance * instrumentSignal(spot_C) + (1 - emittance) * instrumentSignal(room_C)
    return bandTemperature_C(signal) + 0.3 * normal()
  }
  const found = warmPlateEmittance({
    tape_C: times(5, () => shown(tape)),
    sample_C: times(5, () => shown(truth)),
    foil_C: [room_C + normal()],
    tapeEmittance_frac: 0.95,
    tapeSd_frac: 0.01,
  })
  return { truth, low: found.low, high: found.high }
}

/** Eight moments near noon by the full plate balance; boards differ in emittance, neighbours in gusts. */
function pairedTrial(random: RandomSource): Trial {
  const normal = () => gaussian(random)
  const truth = between(random, 0.85, 0.97)
  const boards = {
    black_C: { reflects: 0.05 + 0.01 * normal(), emits: 0.9 + 0.015 * normal() },
    white_C: { reflects: 0.85 + 0.005 * normal(), emits: 0.9 + 0.015 * normal() },
    sample_C: { reflects: truth, emits: 0.9 + 0.015 * normal() },
  }
  const setting = boardSetting(USUAL_BOARD)
  const moments = times(8, () => {
    const moment = {
      time: null,
      airTemp_C: between(random, 20, 34),
      dewPoint_C: between(random, 2, 14),
      light: 'sun' as const,
      sun_Wm2: between(random, 800, 1000),
      skyLongwave_Wm2: null,
      cloud_frac: 0,
      wind: 'metered' as const,
      wind_ms: between(random, 0.5, 2.5),
      surfaces: [],
    }
    const shown = ({ reflects, emits }: { reflects: number; emits: number }) => {
      const optics = {
        solarReflectance_frac: reflects,
        windowEmittance_frac: emits,
        offWindowEmittance_frac: emits,
      }
      const sample = sampleSetting(setting, optics, null)
      const gust = { ...UNDISTURBED, windLog: 0.04 * normal() }
      return restingPlate_C(sample, sampleHour(sample, 0, moment, 0, gust), 0) + 0.4 * normal()
    }
    return {
      black_C: shown(boards.black_C),
      white_C: shown(boards.white_C),
      sample_C: shown(boards.sample_C),
    }
  })
  const found = pairedReflectance(moments, {
    blackAbsorptance_frac: 0.95,
    blackSd_frac: 0.01,
    whiteAbsorptance_frac: 0.15,
    whiteSd_frac: 0.005,
  })
  return { truth, low: found.low, high: found.high }
}

/** A port of 1 % in a wall known to ± 0.02, a reference known to 0.01, a meter of 0.5 %. The card's ± is two deviations. */
function lightBoxTrial(random: RandomSource): Trial {
  const normal = () => gaussian(random)
  const truth = between(random, 0.8, 0.97)
  const box = { wallReflectance_frac: 0.93, samplePort_frac: 0.01, otherPorts_frac: 0.03 }
  const wall = { ...box, wallReflectance_frac: box.wallReflectance_frac + 0.01 * normal() }
  const ratio = expectedRatio(wall, truth, 0.95 + 0.01 * normal())
  const gain = () => 1 + 0.005 * normal()
  const { visible_frac, visibleHalfWidth_frac } = lightBoxResult(box, {
    sample: [900 * ratio * gain()],
    reference: [900 * gain()],
    dark: 0,
    referenceReflectance_frac: 0.95,
    referenceUncertainty_frac: 0.01,
  })
  const half = (visibleHalfWidth_frac * 1.645) / 2
  return { truth, low: visible_frac - half, high: visible_frac + half }
}

export const coverage_pct = ({ held, of }: MethodStudy) => (100 * held) / of
export const reachedBy = (study: MethodStudy, slack_pct = 0) =>
  coverage_pct(study) >= COVERAGE_PCT[0] - slack_pct &&
  coverage_pct(study) <= COVERAGE_PCT[1] + slack_pct &&
  (study.goalHalf === null || study.half <= study.goalHalf)

export function studyLine(study: MethodStudy): string {
  const { name, held, of, half, goalHalf } = study
  const wide = `± ${half.toFixed(4)}${goalHalf === null ? '' : ` (goal ≤ ${goalHalf})`}`
  return `${name.padEnd(40)} ${coverage_pct(study).toFixed(1)} % (${held} of ${of}; goal 87 to 93 %), median ${wide} ${reachedBy(study) ? 'reached' : 'MISSED'}`
}
