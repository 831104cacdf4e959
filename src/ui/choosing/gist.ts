import { describedRoom, FIELDS, type Scenario } from '#model/design/scenario'
import type { UnitSystem } from '#model/basis/units'
import { shownQuantity } from '#ui/words/quantity.ts'

/** What a folded part of the description holds, in a few words. */
export function gistOf(part: string, s: Scenario, system: UnitSystem): string {
  const m = shownQuantity('m', system)
  const u = shownQuantity('Wm2K', system)
  const t = shownQuantity('C', system)
  const label = (field: { optionLabels: object }, value: string) =>
    (field.optionLabels as Record<string, string>)[value]!.toLowerCase()
  switch (part) {
    case 'site':
      return `${label(FIELDS.site.terrain, s.site.terrain)}, horizon ${s.site.horizon_deg}°`
    case 'room':
      return `${m.bare(s.room.length_m)} × ${m.bare(s.room.width_m)} × ${m.text(s.room.height_m)}, roof ${u.text(describedRoom(s.room).roofU_Wm2K)}`
    case 'panel':
      return `${label(FIELDS.cover.kind, s.cover.kind)}, tilt ${s.panel.tilt_deg}°, emittance ${s.coating.windowEmittance_frac}`
    case 'store':
      return `${label(FIELDS.loop.fluid, s.loop.fluid)}, ${label(FIELDS.store.kind, s.store.kind)}`
    case 'plan':
      return label(FIELDS.plan.kind, s.plan.kind)
    case 'target':
      return s.target.kind === 'adaptive'
        ? label(FIELDS.target.kind, s.target.kind)
        : `${label(FIELDS.target.kind, s.target.kind)} ${t.text(s.target.limit_C)}`
    default:
      return ''
  }
}
