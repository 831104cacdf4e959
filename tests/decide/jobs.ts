/**
 * Three jobs that an engineer answered, with invented names, buildings and climates: what the engineer put first, in kind,
 * and why. The tool's first way should be of that kind.
 */
import { defaultScenario, withUsualTarget, type PartialScenario, type Scenario } from '#model/design/scenario'
import type { Combination } from '#studies/decide-trial.ts'

export interface Job {
  readonly id: string
  readonly name: string
  readonly climate: string
  readonly scenario: Scenario
  /** The engineer's answer, in kind. */
  readonly engineer: string
  readonly because: string
  readonly agrees: (first: Combination) => boolean
}

const withParts = (base: Scenario, parts: PartialScenario): Scenario => {
  const groups = Object.entries(parts).map(([group, values]) => [
    group,
    { ...base[group as keyof Scenario], ...values },
  ])
  return { ...base, ...Object.fromEntries(groups) } as Scenario
}

/** Watts in the hours from `from` to `until`, `rest_W` in the others. */
const day = (rest_W: number, from: number, until: number, watts: number): readonly number[] =>
  Array.from({ length: 24 }, (_, hour) => (hour >= from && hour < until ? watts : rest_W))

const metalWorkshop = withParts(defaultScenario(), {
  room: {
    length_m: 10,
    width_m: 6,
    height_m: 3.5,
    roofU_Wm2K: 5.5,
    wallU_Wm2K: 4.5,
    roofReflectance_frac: 0.35,
    roofEmittance_frac: 0.6,
    wallReflectance_frac: 0.4,
    windowFront_m2: 3,
    windowBack_m2: 2,
    windowRight_m2: 0,
    windowLeft_m2: 0,
    windowU_Wm2K: 5.7,
    windowGain_frac: 0.82,
    shading_frac: 0.7,
    airChange_1h: 1.5,
    airChangeWind_1hms: 0.2,
    gains_W: day(50, 8, 17, 1600),
    moisture_kgh: 0.15,
    contents_Jm2K: 60000,
    wallBuild: 'own',
    wallMass_kgm2: 10,
    wallMassPlace: 'bothSides',
    roofBuild: 'own',
    roofMass_kgm2: 8,
    roofMassPlace: 'bothSides',
    slabThickness_m: 0.12,
    slabInsulation_m2KW: 0,
  },
  target: { limit_C: 27, allowedHours_h: 60, occupiedFrom_h: 8, occupiedUntil_h: 17 },
})

const humidStudio = withParts(withUsualTarget(defaultScenario(), 'awake'), {
  room: {
    length_m: 6,
    width_m: 4,
    height_m: 2.6,
    roofU_Wm2K: 0.4,
    wallU_Wm2K: 0.6,
    windowFront_m2: 3,
    windowBack_m2: 1,
    windowU_Wm2K: 2.8,
    windowGain_frac: 0.7,
    shading_frac: 0.6,
    airChange_1h: 0.7,
    airChangeWind_1hms: 0.08,
    gains_W: day(40, 9, 19, 350),
    moisture_kgh: 0.1,
  },
})

const timberCabin = withParts(withUsualTarget(defaultScenario(), 'awake'), {
  room: {
    length_m: 8,
    width_m: 5,
    height_m: 2.5,
    roofU_Wm2K: 0.16,
    wallU_Wm2K: 0.18,
    roofReflectance_frac: 0.3,
    wallReflectance_frac: 0.4,
    windowFront_m2: 6,
    windowRight_m2: 1,
    windowBack_m2: 1,
    windowLeft_m2: 1,
    windowU_Wm2K: 1.2,
    windowGain_frac: 0.55,
    shading_frac: 0.85,
    airChange_1h: 0.3,
    airChangeWind_1hms: 0.03,
    gains_W: day(150, 8, 22, 400),
    moisture_kgh: 0.2,
    contents_Jm2K: 20000,
    wallBuild: 'own',
    wallMass_kgm2: 25,
    wallMassPlace: 'inside',
    roofBuild: 'own',
    roofMass_kgm2: 20,
    roofMassPlace: 'inside',
  },
  // the owner asks for a summer as hot as the last ones, too
  site: { hotSpell_K: 4 },
  target: { limit_C: 25 },
})

const without = (first: Combination): boolean => first.plant !== 'panels'

export const JOBS: readonly Job[] = [
  {
    id: 'workshop',
    name: 'Metal workshop at Corven Flat',
    climate: 'high-dry-plateau',
    scenario: metalWorkshop,
    engineer: 'an evaporative cooler',
    because:
      'dew points near 3 °C in the hottest hours: a direct cooler blows in air near 20 °C, and hot work under a sheet roof outruns shade and night air',
    agrees: (first) => first.plant === 'direct' || first.plant === 'indirect',
  },
  {
    id: 'studio',
    name: 'Studio at Mossard',
    climate: 'humid-subtropical',
    scenario: humidStudio,
    engineer: 'not panels',
    because: 'dew points over 23 °C close the window to the sky and forbid cold surfaces; nights stay warm',
    agrees: without,
  },
  {
    id: 'cabin',
    name: 'Timber cabin at Pennor Head',
    climate: 'mild-ocean-coast',
    scenario: timberCabin,
    engineer: 'shade, night air and a fan',
    because:
      'outdoor air is under 25 °C nearly always: sun through the glass is what heats it, and the night is cool',
    agrees: ({ plant, measures }) =>
      plant === 'none' &&
      measures.includes('shade') &&
      measures.some((id) => id === 'nightOpening' || id === 'nightFan' || id === 'ceilingFan'),
  },
]
