import type { Scenario } from './fields.ts'
import { defaultScenario } from './schema.ts'

/** Some fields of some groups. */
export type PartialScenario = { readonly [G in keyof Scenario]?: Partial<Scenario[G]> }

/** A typical building to start from: every value invented, none measured. */
export interface Preset {
  readonly id: 'shed' | 'workshop' | 'bedroom' | 'coldStore' | 'smallHouse'
  readonly name: string
  /** One sentence that says what was assumed. */
  readonly about: string
  readonly values: PartialScenario
}

/** Watts in each hour of a day from spans `[from hour, until hour, W]`; outside them `rest_W`. */
function day(rest_W: number, ...spans: readonly (readonly [number, number, number])[]): readonly number[] {
  return Array.from({ length: 24 }, (_, hour) => {
    const span = spans.find(([from, until]) => hour >= from && hour < until)
    return span === undefined ? rest_W : span[2]
  })
}

const SHED: Preset = {
  id: 'shed',
  name: 'Garden shed',
  about:
    'Invented: 4 × 3 m timber shed lined with 25 mm of foam, dark felt roof, window a third shaded, concrete base, used now and then.',
  values: {
    room: {
      length_m: 4,
      width_m: 3,
      height_m: 2.2,
      roofU_Wm2K: 1,
      wallU_Wm2K: 1.1,
      roofReflectance_frac: 0.15,
      roofEmittance_frac: 0.9,
      wallReflectance_frac: 0.35,
      windowFront_m2: 0.8,
      windowRight_m2: 0,
      windowBack_m2: 0,
      windowLeft_m2: 0,
      windowU_Wm2K: 5.7,
      windowGain_frac: 0.82,
      shading_frac: 0.7,
      airChange_1h: 1,
      airChangeWind_1hms: 0.15,
      gains_W: day(0, [9, 12, 80], [15, 18, 80]),
      moisture_kgh: 0.02,
      contents_Jm2K: 20000,
      wallBuild: 'own',
      wallMass_kgm2: 18,
      wallMassPlace: 'bothSides',
      roofBuild: 'own',
      roofMass_kgm2: 15,
      roofMassPlace: 'bothSides',
      slabThickness_m: 0.1,
      slabInsulation_m2KW: 0,
    },
    store: { delivery_WK: 120 },
    plan: { setpoint_C: 24 },
    target: { kind: 'hours', limit_C: 30, allowedHours_h: 60 },
  },
}

/** What the page opens with is this room: nothing in it differs but the name. */
const USUAL = defaultScenario()

const WORKSHOP: Preset = {
  id: 'workshop',
  name: 'Workshop room',
  about:
    'Invented: 5 × 4 m insulated workshop on a slab, weathered roof, windows half shaded, a person with tools.',
  values: {
    room: {
      length_m: 5,
      width_m: 4,
      height_m: 2.4,
      roofU_Wm2K: 0.35,
      wallU_Wm2K: 0.45,
      roofReflectance_frac: 0.3,
      wallReflectance_frac: 0.4,
      windowFront_m2: 1.2,
      windowBack_m2: 0.6,
      windowU_Wm2K: 2.8,
      windowGain_frac: 0.7,
      shading_frac: 0.5,
      airChange_1h: 0.6,
      airChangeWind_1hms: 0.08,
      gains_W: USUAL.room.gains_W,
      moisture_kgh: 0.05,
      contents_Jm2K: 15000,
      wallBuild: 'own',
      wallMass_kgm2: 30,
      wallMassPlace: 'inside',
      roofBuild: 'own',
      roofMass_kgm2: 25,
      roofMassPlace: 'inside',
      slabThickness_m: 0.1,
      slabInsulation_m2KW: 0,
    },
    store: { delivery_WK: USUAL.store.delivery_WK },
    plan: { setpoint_C: 22 },
    target: { kind: 'hours', limit_C: 26, allowedHours_h: 40 },
  },
}

const BEDROOM: Preset = {
  id: 'bedroom',
  name: 'Bedroom under the roof',
  about: 'Invented: 4 × 3.5 m bedroom on an insulated timber floor, dark tiles, two sleepers, shade.',
  values: {
    room: {
      length_m: 4,
      width_m: 3.5,
      height_m: 2.4,
      roofU_Wm2K: 0.25,
      wallU_Wm2K: 0.35,
      roofReflectance_frac: 0.2,
      wallReflectance_frac: 0.6,
      windowFront_m2: 1.8,
      windowBack_m2: 0,
      windowU_Wm2K: 1.4,
      windowGain_frac: 0.55,
      shading_frac: 0.4,
      airChange_1h: 0.5,
      airChangeWind_1hms: 0.05,
      gains_W: day(15, [0, 7, 140], [7, 8, 200], [21, 24, 160]),
      moisture_kgh: 0.06,
      contents_Jm2K: 25000,
      wallBuild: 'own',
      wallMass_kgm2: 40,
      wallMassPlace: 'bothSides',
      roofBuild: 'own',
      roofMass_kgm2: 30,
      roofMassPlace: 'bothSides',
      slabThickness_m: 0.05,
      slabConductivity_WmK: 0.13,
      slabDensity_kgm3: 500,
      slabSpecificHeat_JkgK: 1600,
      slabInsulation_m2KW: 2,
    },
    store: { delivery_WK: 90 },
    plan: { setpoint_C: 21 },
    target: { kind: 'hours', limit_C: 25, allowedHours_h: 60, occupiedFrom_h: 21, occupiedUntil_h: 8 },
  },
}

const COLD_STORE: Preset = {
  id: 'coldStore',
  name: 'Cold-store shed',
  about:
    'Invented: 4 × 3 m windowless shed in 150 mm foam for roots and fruit, white roof, goods that breathe heat.',
  values: {
    room: {
      length_m: 4,
      width_m: 3,
      height_m: 2.4,
      roofU_Wm2K: 0.17,
      wallU_Wm2K: 0.2,
      roofReflectance_frac: 0.8,
      roofEmittance_frac: 0.9,
      wallReflectance_frac: 0.7,
      windowFront_m2: 0,
      windowBack_m2: 0,
      airChange_1h: 0.2,
      airChangeWind_1hms: 0.02,
      gains_W: day(40),
      moisture_kgh: 0.08,
      contents_Jm2K: 250000,
      wallBuild: 'own',
      wallMass_kgm2: 12,
      wallMassPlace: 'bothSides',
      roofBuild: 'own',
      roofMass_kgm2: 12,
      roofMassPlace: 'bothSides',
      slabThickness_m: 0.12,
      slabInsulation_m2KW: 3,
    },
    store: { delivery_WK: 150, dewMargin_K: 0 },
    plan: { setpoint_C: 10, lowestStore_C: 3, seasonGate_C: 5 },
    target: { kind: 'hours', limit_C: 18, allowedHours_h: 100 },
  },
}

const SMALL_HOUSE: Preset = {
  id: 'smallHouse',
  name: 'Small house',
  about:
    'Invented: 9 × 7 m single-storey house on an insulated slab, three people, windows mostly to the front.',
  values: {
    room: {
      length_m: 9,
      width_m: 7,
      height_m: 2.5,
      roofU_Wm2K: 0.2,
      wallU_Wm2K: 0.3,
      roofReflectance_frac: 0.3,
      wallReflectance_frac: 0.6,
      windowFront_m2: 6,
      windowRight_m2: 1.5,
      windowBack_m2: 2.5,
      windowLeft_m2: 1.5,
      windowU_Wm2K: 1.3,
      windowGain_frac: 0.55,
      shading_frac: 0.4,
      airChange_1h: 0.4,
      airChangeWind_1hms: 0.05,
      gains_W: day(180, [6, 9, 420], [12, 14, 350], [17, 23, 520]),
      moisture_kgh: 0.3,
      contents_Jm2K: 25000,
      wallBuild: 'own',
      wallMass_kgm2: 90,
      wallMassPlace: 'bothSides',
      roofBuild: 'own',
      roofMass_kgm2: 40,
      roofMassPlace: 'bothSides',
      slabThickness_m: 0.12,
      slabInsulation_m2KW: 2.5,
    },
    store: { delivery_WK: 500 },
    plan: { setpoint_C: 22 },
    target: { kind: 'hours', limit_C: 26, allowedHours_h: 60, maxArea_m2: 120 },
  },
}

export const PRESETS: readonly Preset[] = [SHED, WORKSHOP, BEDROOM, COLD_STORE, SMALL_HOUSE]

/** Fields of other groups that presets set: each preset says all of them, by its own value or the usual one. */
const SHARED_GROUPS = ['store', 'plan'] as const

/**
 * The scenario with the building of a preset in place of its own: room and target whole, what presets set of store and plan,
 * and the name. Whatever was there before makes no difference to these. Coating, panel, loop, site and prices stay.
 */
export function withPreset(scenario: Scenario, { name, values }: Preset): Scenario {
  const usual = defaultScenario()
  const shared = SHARED_GROUPS.map((group) => {
    const set = new Set(PRESETS.flatMap((preset) => Object.keys(preset.values[group] ?? {})))
    const back = Object.entries(usual[group]).filter(([field]) => set.has(field))
    return [group, { ...scenario[group], ...Object.fromEntries(back), ...values[group] }]
  })
  return {
    ...scenario,
    ...Object.fromEntries(shared),
    job: { ...usual.job, name },
    room: { ...usual.room, ...values.room },
    target: { ...usual.target, ...values.target },
  }
}
