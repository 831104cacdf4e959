import type { RealFault } from './causes.ts'
import type { Departure } from './departure.ts'
import { hourOfDay } from './hour-of-day.ts'

/** What to do on the roof about a cause, and what the next night would show if it is the true one. */
export interface CauseWords {
  readonly code: string
  /** What to inspect or mend. */
  readonly what: string
  /** The size found, as a sentence. */
  readonly size: (departure: Departure) => string
  /** A test for tomorrow night that separates it from the others. */
  readonly test: string
}

const percent = (share: number) => `${Math.round(100 * share)} %`

/** Words of each cause. @param film  whether the panel has one over it */
export function causeWords(fault: RealFault, film: boolean): CauseWords {
  return { ...WORDS[fault], ...(film && fault === 'dirty' ? FILM_DIRT : {}) }
}

const FILM_DIRT = { what: 'Wash the film; look for clouding, yellowing and water inside.' }

const WORDS: Readonly<Record<RealFault, CauseWords>> = {
  lowFlow: {
    code: 'flow',
    what: 'Check filter, valves, pump speed and air locks, then measure the flow with a bucket and a watch.',
    size: ({ flowLog, meterLog }) =>
      `The panel runs with ${percent(Math.exp(flowLog + meterLog))} of the designed flow: a larger temperature difference, less heat.`,
    test: 'Measure the flow with a bucket and a watch; if it is as designed, it is not the flow.',
  },
  air: {
    code: 'air',
    what: 'Bleed the loop: open the highest vent until no air comes, and look for a sucking joint.',
    size: ({ airy_frac }) =>
      `The outlet jumps from hour to hour as if air kept ${percent(airy_frac)} of the panel from the water, now more and now less.`,
    test: 'Bleed the highest vent at dusk and log again: with air it comes spluttering, and the next hours are steady and colder.',
  },
  deadModule: {
    code: 'deadModule',
    what: 'Feel each module an hour after dark, and clip a sensor on each return: one that stays at rest passes no water. Look for a closed valve, a blocked header, a kinked hose.',
    size: ({ dead_frac }) =>
      `It cools as if ${percent(dead_frac)} of its area did nothing, by day and by night.`,
    test: 'Read the return of each module by hand or clip sensor: a dead module differs from the others, a poor bond is the same on all.',
  },
  poorBond: {
    code: 'poorBond',
    what: 'Measure plate beside tube with the pump running: a tube that has come loose is warmer than its plate by several kelvin. Press it on again with clips, strips and paste.',
    size: ({ bondLog }) =>
      `Heat passes from fluid to plate at ${percent(Math.exp(bondLog))} of the designed conductance.`,
    test: 'Tape one sensor to a tube and one to the plate between two tubes, pump running: more than twice the designed difference is the bond.',
  },
  dirty: {
    code: 'dirt',
    what: 'Wash the coating; look for dust, soot, algae and yellowing.',
    size: ({ soil_frac, veil_frac }) =>
      `It takes in sunlight as if it had lost ${soil_frac.toFixed(2)} of solar reflectance (or of a film’s transmittance), and ${percent(veil_frac)} of its infrared radiation.`,
    test: 'Wash one module and leave the others: on the next sunny day its plate stays cooler if dirt it is.',
  },
  wornFilm: {
    code: 'wornFilm',
    what: 'Look for tears, loose edges and flapping film; mend or replace it.',
    size: ({ torn_frac }) =>
      `It behaves as if ${percent(torn_frac)} of the panel had lost its film: wind reaches the plate.`,
    test: 'On a clear windy night stop the pump for an hour and read the plate: with the film whole it stays several kelvin below the air.',
  },
  wetInsulation: {
    code: 'wetInsulation',
    what: 'Feel behind the panel for wet, slipped or missing insulation; dry it, close the edges, and keep rain out.',
    size: ({ back_Wm2K }) => `Its back loses ${back_Wm2K.toFixed(1)} W/m²K more than designed.`,
    test: 'On a calm clear night stop the pump for two hours and read the plate: too warm at rest with a clean coat and an open sky is the back.',
  },
  shading: {
    code: 'shading',
    what: 'Look for what hides sky or sun: a tree in leaf, a tarpaulin, a new wall, leaves or snow on the panel.',
    size: shadeSize,
    test: 'Lie a fisheye photo or a compass and a protractor on the panel at dusk, and note what rises above the designed horizon.',
  },
  sensorOffset: {
    code: 'sensorOffset',
    what: 'Put both panel sensors in one bucket for ten minutes and compare them; the panel itself may be sound.',
    size: ({ offset_K }) =>
      `The two panel sensors seem to differ by ${Math.abs(offset_K).toFixed(1)} K when they should not: the difference is read too ${offset_K > 0 ? 'large' : 'small'} at every flow and hour.`,
    test: 'Exchange the two sensors and log another night: if the missing heat changes sign with them, it is the sensors.',
  },
  wrongClock: {
    code: 'wrongClock',
    what: 'Compare the logger’s clock with a radio clock, and check summer time; then open the file again with its true times.',
    size: ({ clock_h }) =>
      `The log fits the weather best with its clock ${Math.abs(clock_h).toFixed(1)} h ${clock_h > 0 ? 'ahead' : 'behind'}.`,
    test: 'Cover the outlet sensor with your hand at a noted minute and look for it in the log.',
  },
  warmMixing: {
    code: 'warmMixing',
    what: 'Follow the pipes at the tank: a check valve that leaks or a return beside the panel’s draw brings warm water to the panel in place of the tank’s.',
    size: ({ mixing_frac }) =>
      `What enters the panel is warmer than the tank, as if ${percent(mixing_frac)} of it came from the warm return.`,
    test: 'Close the valve to the load for a night: if inlet and tank then agree, the return mixes in.',
  },
  tankLeak: {
    code: 'tankLeak',
    what: 'Mark the water level tonight and look again in the morning; look under the tank and at overflow and joints.',
    size: ({ leak_1d }) =>
      `The tank swings more for the same heat from day to day, as if it lost ${(100 * leak_1d).toFixed(1)} % of its water a day.`,
    test: 'Mark the level with tape at dusk, pump off, and read it at dawn.',
  },
}

function shadeSize(departure: Departure): string {
  const { dayShade_frac, dayShadeFrom_h, dayShadeTo_h, shade_frac, shadeFrom } = departure
  if (dayShadeTo_h > 0)
    return `Each day from ${hourOfDay(dayShadeFrom_h)} to ${hourOfDay(dayShadeTo_h)} (standard time) about ${percent(dayShade_frac)} of the sun is missing${shade_frac > 0.02 ? `, and ${percent(shade_frac)} of the sky at all hours` : ''}.`
  return `From hour ${shadeFrom + 1} of the log on, about ${percent(shade_frac)} of the sky is missing; before, it was there.`
}
