import { isTank } from '#model/building/store'
import { FIELDS, machineOf, type GroupName, type Scenario } from '#model/design/scenario'

/** `group.field`, the name of a field everywhere outside the scenario object. */
export type FieldRef = {
  [G in GroupName]: `${G}.${keyof (typeof FIELDS)[G] & string}`
}[GroupName]

/** A part of the description: its groups, and the few fields most people need. The rest opens below them. */
export interface Part {
  readonly id: string
  readonly title: string
  readonly groups: readonly GroupName[]
  readonly first: readonly FieldRef[]
}

export const PARTS: readonly Part[] = [
  { id: 'site', title: 'Site', groups: ['site', 'sky'], first: ['site.terrain', 'site.horizon_deg'] },
  {
    id: 'room',
    title: 'Room',
    groups: ['room'],
    first: [
      'room.length_m',
      'room.width_m',
      'room.height_m',
      'room.wallBuild',
      'room.wallU_Wm2K',
      'room.wallMass_kgm2',
      'room.roofBuild',
      'room.roofU_Wm2K',
      'room.roofMass_kgm2',
      'room.roofReflectance_frac',
      'room.windowFront_m2',
      'room.shading_frac',
      'room.airChange_1h',
      'room.nightVent',
      'room.gains_W',
    ],
  },
  {
    id: 'panel',
    title: 'Coating and panel',
    groups: ['coating', 'cover', 'panel'],
    first: [
      'coating.solarReflectance_frac',
      'coating.windowEmittance_frac',
      'coating.offWindowEmittance_frac',
      'cover.kind',
      'panel.tilt_deg',
      'panel.azimuth_deg',
    ],
  },
  {
    id: 'store',
    title: 'Loop and store',
    groups: ['loop', 'store'],
    first: [
      'loop.fluid',
      'loop.layout',
      'loop.autoFlow',
      'loop.flow_kgsm2',
      'loop.pipeLength_m',
      'store.kind',
      'store.autoVolume',
      'store.volume_m3',
      'store.delivery_WK',
    ],
  },
  {
    id: 'plan',
    title: 'Running plan',
    groups: ['plan'],
    first: ['plan.kind', 'plan.startHour_h', 'plan.endHour_h', 'plan.setpoint_C', 'plan.freeze'],
  },
  {
    id: 'target',
    title: 'Target',
    groups: ['target'],
    first: [
      'target.kind',
      'target.limit_C',
      'target.allowedHours_h',
      'target.allowedDegreeHours_Kh',
      'target.adaptive',
      'target.maxArea_m2',
      'target.autoArea',
      'target.area_m2',
    ],
  },
]

/** Every field of a part that is not among its first ones, in the order of the table. */
export function furtherFields(part: Part): readonly FieldRef[] {
  return part.groups
    .flatMap((group) => Object.keys(FIELDS[group]).map((name) => `${group}.${name}` as FieldRef))
    .filter((at) => !part.first.includes(at))
}

const film = (s: Scenario) => s.cover.kind === 'film'
const tank = (s: Scenario) => isTank(s.store.kind)
const tubes = (s: Scenario) => s.loop.layout !== 'wetted'

/** Fields that mean nothing unless another says so. A field without a row always shows. */
const SHOWN_WHEN: Partial<Record<FieldRef, (scenario: Scenario) => boolean>> = {
  'sky.altitudeTerm': (s) => s.sky.model === 'matsunobuCoimbra2024',
  'room.wallU_Wm2K': (s) => s.room.wallBuild === 'own',
  'room.wallMass_kgm2': (s) => s.room.wallBuild === 'own',
  'room.wallMassPlace': (s) => s.room.wallBuild === 'own',
  'room.roofU_Wm2K': (s) => s.room.roofBuild === 'own',
  'room.roofMass_kgm2': (s) => s.room.roofBuild === 'own',
  'room.roofMassPlace': (s) => s.room.roofBuild === 'own',
  'cover.solarTransmittance_frac': film,
  'cover.windowTransmittance_frac': film,
  'cover.offWindowTransmittance_frac': film,
  'cover.reflectance_frac': film,
  'cover.scattered_frac': film,
  'cover.gap_m': film,
  'cover.flutter_frac': film,
  'cover.life_months': film,
  'panel.azimuth_deg': (s) => s.panel.tilt_deg > 0,
  'loop.glycol_frac': (s) => s.loop.fluid === 'glycol',
  'loop.flow_kgsm2': (s) => !s.loop.autoFlow,
  'loop.tubeSpacing_m': tubes,
  'loop.tubeOuterDiameter_m': tubes,
  'loop.tubeInnerDiameter_m': tubes,
  'loop.pipeInnerDiameter_m': (s) => !s.loop.autoPipe,
  'store.autoVolume': tank,
  'store.volume_m3': (s) => tank(s) && !s.store.autoVolume,
  'store.layers': (s) => s.store.kind === 'layered',
  'store.insulation_m': tank,
  'store.insulationConductivity_WmK': tank,
  'store.fittingsFactor_frac': tank,
  'store.place': tank,
  'store.doorWidth_m': (s) => tank(s) && s.store.place === 'room',
  'store.floorLoad_kgm2': tank,
  'room.nightAirChange_1h': (s) => s.room.nightVent,
  'plan.startHour_h': (s) => s.plan.kind === 'ownHours',
  'plan.endHour_h': (s) => s.plan.kind === 'ownHours',
  'target.limit_C': (s) => s.target.kind !== 'adaptive',
  'target.allowedHours_h': (s) => s.target.kind === 'hours' || s.target.kind === 'adaptive',
  'target.allowedDegreeHours_Kh': (s) => s.target.kind === 'degreeHours',
  'target.adaptive': (s) => s.target.kind === 'adaptive',
  'target.autoArea': (s) => machineOf(s) === 'none',
  'target.area_m2': (s) => !s.target.autoArea && machineOf(s) === 'none',
}

export function isShown(at: FieldRef, scenario: Scenario): boolean {
  return SHOWN_WHEN[at]?.(scenario) ?? true
}

/** The value of a field in a scenario. */
export function valueAt(scenario: Scenario, at: FieldRef): unknown {
  const [group, name] = at.split('.') as [GroupName, string]
  return (scenario[group] as Readonly<Record<string, unknown>>)[name]
}

/** Title of the part in which a field (or a whole group) is; of another name, the name itself. */
export function partTitle(field: string): string {
  const group = field.split('.')[0]!
  return PARTS.find(({ groups }) => (groups as readonly string[]).includes(group))?.title ?? field
}
