import { floor_m2, volume_m3, type Measure } from '#model/design/measures'
import { MEASURE_SIZES, type Scenario } from '#model/design/scenario'
import type { WayFacts, WayWindow } from '#model/handover/drawing'
import { ventStop_C } from '#model/design/assembly'
import { batchQuantities } from '#model/panels/paint'
import { figure, words } from '#model/basis/words'
import { BLADES_m, FACE_ms, FREE_frac, HANGS_m } from './air-work.ts'
import { FILLED_frac, JAR_m3 } from './building-work.ts'
import { airOf, type MachineSpec } from './machine-work.ts'
import { PAST_m, windowsOf } from './shade-work.ts'
import { PRIMER_m2L } from './paint-work.ts'
import type { WayBuilt } from './way-asked.ts'

const HOUR_s = 3600
const LITRE_m3 = 0.001
/** Across the blades of a ceiling fan, and a wall fan, m (common practice, no source). */
const CEILING_FAN_m = 1.2
const WALL_FAN_m = 0.45
/** A window is drawn no longer and no higher than so much of its wall. */
const OF_WALL = 0.9

/** What of a way without panels is drawn. */
export function wayFactsOf(asked: WayBuilt): WayFacts {
  const { scenario, measures, machine } = asked
  const { room } = scenario
  const has = (id: Measure['id']): boolean => measures.includes(id)
  const when = <T>(id: Measure['id'], made: () => T): T | null => (has(id) ? made() : null)
  const insulation = {
    thickness_m: MEASURE_SIZES.insulation_m,
    what: words`${figure(MEASURE_SIZES.insulation_m, 'board', 2)} of ${figure(MEASURE_SIZES.insulation_WmK, 'WmK')} (${figure(MEASURE_SIZES.insulation_m / MEASURE_SIZES.insulation_WmK, 'rValue')})`,
  }
  return {
    length_m: room.length_m,
    width_m: room.width_m,
    height_m: room.height_m,
    azimuth_deg: room.azimuth_deg,
    windows: windowsOf(scenario).map((pane) => windowOf(pane, scenario)),
    paint: when('paintRoof', () => paintOf(asked)),
    roofInsulation: when('insulateRoof', () => insulation),
    wallInsulation: when('insulateWalls', () => insulation),
    shade: when('shade', () => ({
      past_m: PAST_m,
      sunLeft: words`${figure(100 * MEASURE_SIZES.blind_frac, 'count', 2)} %`,
    })),
    glazing: has('glazing'),
    opening: when('nightOpening', () => ({
      each_m2: (MEASURE_SIZES.opening_m2m2 * floor_m2(scenario)) / 2,
      height_m: MEASURE_SIZES.openingHeight_m,
    })),
    fan: when('nightFan', () => fanOf(scenario)),
    ceilingFan: when('ceilingFan', () => ceilingFanOf(scenario)),
    jars: when('mass', () => jarsOf(scenario)),
    sealed: has('airtight'),
    ...machineOf(machine),
  }
}

/** One square pane, or as much of it as its wall takes. */
function windowOf(pane: Pick<WayWindow, 'side' | 'faces_deg' | 'area_m2'>, { room }: Scenario): WayWindow {
  const wall_m = pane.side === 'front' || pane.side === 'back' ? room.length_m : room.width_m
  const height_m = Math.min(Math.sqrt(pane.area_m2), OF_WALL * room.height_m)
  return { ...pane, width_m: Math.min(pane.area_m2 / height_m, OF_WALL * wall_m), height_m }
}

function paintOf({ scenario, recipe, coat }: WayBuilt): NonNullable<WayFacts['paint']> {
  const area_m2 = floor_m2(scenario)
  const batch = batchQuantities(recipe, { ...coat, area_m2 })
  return {
    coats: coat.coats,
    wetCoat: words`${figure(batch.wetPerCoat_m, 'coatThickness', 2)}`,
    wetAll: words`${figure(coat.coats * batch.wetPerCoat_m, 'coatThickness', 2)}`,
    dry: words`${figure(coat.dryThickness_m, 'coatThickness')}`,
    litres: words`${figure((batch.wet_L / coat.coats) * LITRE_m3, 'content', 2)}`,
    primer: words`${figure((area_m2 / PRIMER_m2L) * LITRE_m3, 'content', 2)}`,
  }
}

function fanOf(scenario: Scenario): NonNullable<WayFacts['fan']> {
  const flow_m3h = MEASURE_SIZES.fanChanges_1h * volume_m3(scenario)
  const fans = Math.ceil(flow_m3h / MEASURE_SIZES.oneFan_m3h)
  return {
    fans,
    each: figure(flow_m3h / fans / HOUR_s, 'airFlow'),
    inlet_m2: flow_m3h / HOUR_s / FACE_ms,
    hole_m2: flow_m3h / HOUR_s / FACE_ms / FREE_frac,
    stopsAt: words`${figure(ventStop_C(scenario), 'C')}`,
  }
}

function ceilingFanOf(scenario: Scenario): NonNullable<WayFacts['ceilingFan']> {
  const blades_m = scenario.room.height_m - HANGS_m
  const ceiling = blades_m >= BLADES_m
  return {
    fans: Math.max(1, Math.round(floor_m2(scenario) / MEASURE_SIZES.ceilingFan_m2)),
    across_m: ceiling ? CEILING_FAN_m : WALL_FAN_m,
    blades_m,
    ceiling,
    least_m: BLADES_m,
  }
}

function jarsOf(scenario: Scenario): NonNullable<WayFacts['jars']> {
  const mass_kg = MEASURE_SIZES.jars_kgm2 * floor_m2(scenario)
  return {
    jars: Math.ceil(mass_kg / (1000 * JAR_m3 * FILLED_frac)),
    mass: words`${figure(mass_kg, 'kg', 2)}`,
  }
}

function machineOf(spec: MachineSpec | null): Pick<WayFacts, 'cooler' | 'conditioner'> {
  if (spec === null) return { cooler: null, conditioner: null }
  if (spec.kind === 'airConditioner')
    return {
      cooler: null,
      conditioner: {
        cooling: words`${figure(spec.total_W, 'heat', 2)}`,
        electric: words`${figure(spec.total_W / spec.ratedCop_frac, 'W', 2)}`,
        drain: words`${figure(0.02, 'valveSize')}`,
      },
    }
  const { flow_m3s, duct_m, leaving_m2 } = airOf(spec)
  return {
    conditioner: null,
    cooler: {
      direct: spec.kind === 'direct',
      flow: words`${figure(flow_m3s, 'airFlow')}`,
      duct_m,
      leaving_m2,
      water: words`${figure(spec.mostWater_kgh * LITRE_m3, 'content', 2)}`,
      bled: words`${figure(100 * spec.bled_frac, 'count', 2)} %`,
      mostHumid: words`${figure(100 * spec.mostHumid_frac, 'count', 2)} %`,
      feed: words`${figure(0.015, 'valveSize')}`,
      drain: words`${figure(0.02, 'valveSize')}`,
    },
  }
}
