import { type SunHours, LOW_SUN_DEG, splitGlobal } from '#model/outdoors/sun'
import type { HourlySeries } from '../quality/series.ts'

/** The three irradiances of a record and how each came to be. */
export interface Irradiances {
  readonly global: Float64Array
  readonly direct: Float64Array
  readonly diffuse: Float64Array
  readonly notes: { readonly global?: string; readonly direct?: string; readonly diffuse?: string }
}

const CLOSURE = 'global = direct normal · sin(sun altitude) + diffuse'

/**
 * Global, direct normal and diffuse from whatever the file has, by the closure of the three or, from global alone,
 * by the Erbs 1982 split. Null when there is too little. A note is beside each one that was worked out.
 */
export function deriveRadiation(series: HourlySeries, sun: SunHours): Irradiances | null {
  const sine = sun.altitude_deg.map((altitude) => Math.max(0, Math.sin((altitude * Math.PI) / 180)))
  const { globalHorizontal: global, directNormal: direct, diffuseHorizontal: diffuse } = series
  const flat = series.directHorizontal
  if (global && direct && diffuse) return { global, direct, diffuse, notes: {} }
  if (direct && diffuse) {
    const sum = diffuse.map((d, i) => d + direct[i]! * sine[i]!)
    return { global: sum, direct, diffuse, notes: { global: `Worked out: ${CLOSURE}.` } }
  }
  if (flat && (diffuse || global)) return fromFlatDirect(flat, global, diffuse, sun, sine)
  if (global && diffuse) {
    const beam = global.map((g, i) =>
      sun.altitude_deg[i]! < LOW_SUN_DEG ? 0 : Math.max(0, g - diffuse[i]!) / sine[i]!,
    )
    return {
      global,
      direct: beam,
      diffuse,
      notes: { direct: `Worked out: ${CLOSURE}; 0 below ${LOW_SUN_DEG}°.` },
    }
  }
  if (global && direct) {
    const rest = global.map((g, i) => Math.max(0, g - direct[i]! * sine[i]!))
    return { global, direct, diffuse: rest, notes: { diffuse: `Worked out: ${CLOSURE}.` } }
  }
  return global ? split(global, sun) : null
}

function fromFlatDirect(
  flat: Float64Array,
  global: Float64Array | undefined,
  diffuse: Float64Array | undefined,
  sun: SunHours,
  sine: Float64Array,
): Irradiances {
  const sum = global ?? flat.map((f, i) => f + diffuse![i]!)
  const rest = diffuse ?? sum.map((g, i) => Math.max(0, g - flat[i]!))
  return {
    global: sum,
    direct: flat.map((f, i) => (sun.altitude_deg[i]! < LOW_SUN_DEG ? 0 : f / sine[i]!)),
    diffuse: rest,
    notes: {
      direct: `Worked out: direct on the horizontal ÷ sin(sun altitude); 0 below ${LOW_SUN_DEG}°.`,
      ...(global ? {} : { global: 'Worked out: direct on the horizontal + diffuse.' }),
      ...(diffuse ? {} : { diffuse: 'Worked out: global − direct on the horizontal.' }),
    },
  }
}

function split(global: Float64Array, sun: SunHours): Irradiances {
  const direct = new Float64Array(global.length)
  const diffuse = new Float64Array(global.length)
  for (let i = 0; i < global.length; i += 1) {
    const parts = splitGlobal(global[i]!, sun.altitude_deg[i]!, sun.extraterrestrial_Wm2[i]!)
    direct[i] = parts.directNormal_Wm2
    diffuse[i] = parts.diffuseHorizontal_Wm2
  }
  const note = 'Worked out from global: diffuse share by clearness, Erbs, Klein & Duffie 1982.'
  return { global, direct, diffuse, notes: { direct: note, diffuse: note } }
}
