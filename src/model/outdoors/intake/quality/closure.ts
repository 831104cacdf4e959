import type { SunHours } from '#model/outdoors/sun'
import type { Finding } from './report.ts'
import { nameHour, type HourlySeries, type HourNames } from './series.ts'

/** Sun heights at which the closure is looked at, degrees, and how far it may be off: W/m² and share of global. */
const SUN_DEG = 15
const TOLERANCE_WM2 = 50
const TOLERANCE_FRAC = 0.15

/** Global against direct · sin(altitude) + diffuse, while the sun is well up; and diffuse above global. Reported only. */
export function findClosure(series: HourlySeries, sun: SunHours, names: HourNames): Finding[] {
  const { globalHorizontal: global, directNormal: direct, diffuseHorizontal: diffuse } = series
  const findings: Finding[] = []
  if (global && diffuse) {
    const more = hoursOf(global, (i) => diffuse[i]! > global[i]! * 1.1 + 20)
    if (more.length > 0) {
      findings.push({
        ...{ kind: 'pair', quantity: 'diffuseHorizontal', hours: more.length, firstHour: more[0]! },
        sentence: `Diffuse is more than global in ${more.length} h, first ${nameHour(names, more[0]!)}; left as it is.`,
      })
    }
  }
  if (!global || !direct || !diffuse) return findings
  let lit = 0
  let square = 0
  const open = hoursOf(global, (i) => {
    const altitude = sun.altitude_deg[i]!
    const rest = global[i]! - direct[i]! * Math.sin((altitude * Math.PI) / 180) - diffuse[i]!
    if (altitude < SUN_DEG || rest !== rest) return false
    lit += 1
    square += rest * rest
    return Math.abs(rest) > Math.max(TOLERANCE_WM2, TOLERANCE_FRAC * global[i]!)
  })
  if (open.length === 0) return findings
  findings.push({
    ...{ kind: 'closure', quantity: 'globalHorizontal', hours: open.length, firstHour: open[0]! },
    sentence: `Global differs from direct × sin(sun height) + diffuse by more than ${TOLERANCE_WM2} W/m² and 15 % in ${open.length} of ${lit} h with the sun above ${SUN_DEG}° (root mean square ${Math.sqrt(square / lit).toFixed(0)} W/m²), first ${nameHour(names, open[0]!)}; left as it is.`,
  })
  return findings
}

function hoursOf(values: Float64Array, wrong: (hour: number) => boolean): number[] {
  const hours: number[] = []
  for (let i = 0; i < values.length; i += 1) if (wrong(i)) hours.push(i)
  return hours
}
