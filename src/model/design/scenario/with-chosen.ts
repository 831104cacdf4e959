import { ROOF_BUILDS, WALL_BUILDS, type Build } from '#model/building/construction'
import { FIELDS, type GroupName, type Scenario } from './fields.ts'

/** Fields that say what a part is made of, its builds, and the fields of its outer face. */
const BUILT = {
  'room.wallBuild': { builds: WALL_BUILDS, reflectance: 'wallReflectance_frac', emittance: null },
  'room.roofBuild': {
    builds: ROOF_BUILDS,
    reflectance: 'roofReflectance_frac',
    emittance: 'roofEmittance_frac',
  },
} as const

/**
 * A description with one field chosen by hand. What walls or a roof are made of brings its outer face along, unless that has been
 * given otherwise: dark felt takes up more sun than weathered sheet.
 * @param value  one the field's input accepted
 */
export function withChosen(scenario: Scenario, path: `${GroupName}.${string}`, value: unknown): Scenario {
  const [group, name] = path.split('.') as [GroupName, string]
  const chosen = { ...scenario, [group]: { ...scenario[group], [name]: value } }
  if (path !== 'room.wallBuild' && path !== 'room.roofBuild') return chosen
  const { builds, reflectance, emittance } = BUILT[path]
  const known: Readonly<Record<string, Build | undefined>> = builds
  const face = (id: unknown): number =>
    known[String(id)]?.reflectance_frac ?? FIELDS.room[reflectance].default
  const before = scenario.room[path === 'room.wallBuild' ? 'wallBuild' : 'roofBuild']
  if (value === 'own' || scenario.room[reflectance] !== face(before)) return chosen
  const emits = emittance === null ? {} : { [emittance]: FIELDS.room[emittance].default }
  return { ...chosen, room: { ...chosen.room, [reflectance]: face(value), ...emits } }
}
