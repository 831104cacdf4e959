/**
 * Clear glass at a slant, worked out apart from the model's table: Fresnel's equations by polarisation, index 1.526,
 * 4 mm, extinction 18 /m, all reflections between the faces (Duffie & Beckman, ch. 5). Light that a pane absorbs goes
 * inward by the share of the window's resistance that lies outside the pane: films of 0.13 and 0.04 m²K/W, gap of two
 * panes 0.17.
 */
interface Pane {
  readonly passes: number
  readonly reflects: number
  readonly absorbs: number
}

const INDEX = 1.526
const THROUGH = 18 * 0.004
const GAP = 0.17

function panes(angle: number): Pane[] {
  const inside = Math.asin(Math.sin(angle) / INDEX)
  const upright = ((INDEX - 1) / (INDEX + 1)) ** 2
  const faces =
    angle < 1e-9
      ? [upright, upright]
      : [
          (Math.sin(inside - angle) / Math.sin(inside + angle)) ** 2,
          (Math.tan(inside - angle) / Math.tan(inside + angle)) ** 2,
        ]
  const clear = Math.exp(-THROUGH / Math.cos(inside))
  return faces.map((face) => {
    const passes = (clear * (1 - face) ** 2) / (1 - (face * clear) ** 2)
    const reflects = face * (1 + clear * passes)
    return { passes, reflects, absorbs: 1 - passes - reflects }
  })
}

function gain(angle: number, count: 1 | 2): number {
  const sum = panes(angle).reduce((total, { passes, reflects, absorbs }) => {
    if (count === 1) return total + passes + (0.04 / 0.17) * absorbs
    const between = 1 / (1 - reflects * reflects)
    const outer = absorbs * (1 + passes * reflects * between)
    const inner = absorbs * passes * between
    const whole = 0.17 + GAP
    return total + passes * passes * between + (0.04 * outer + (0.04 + GAP) * inner) / whole
  }, 0)
  return sum / 2
}

/** Solar gain at an angle over that at normal incidence, –. */
export function gainAtAngle(deg: number, count: 1 | 2): number {
  return gain((deg * Math.PI) / 180, count) / gain(0, count)
}

/** The same for light from all over a hemisphere. */
export function gainOfHemisphere(count: 1 | 2): number {
  const n = 2000
  let sum = 0
  for (let i = 0; i < n; i++) {
    const angle = (((i + 0.5) / n) * Math.PI) / 2
    sum += (gain(angle, count) * Math.sin(2 * angle) * Math.PI) / 2 / n
  }
  return sum / gain(0, count)
}
