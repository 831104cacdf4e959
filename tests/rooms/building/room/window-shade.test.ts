import { describe, expect, test } from 'vitest'
import { diffuseShares, litShare_frac, type WindowShade } from '#inside/model/building/room/window-shade.ts'

const SHADE: WindowShade = {
  overhang_m: 0.8,
  overhangAbove_m: 0.3,
  reveal_m: 0.2,
  height_m: 1.2,
  width_m: 1.5,
}

/** The sun as a direction seen from the pane: x to its right, y up, z out of the wall. */
const towards = (altitude_deg: number, side_deg: number) => {
  const [a, s] = [(altitude_deg * Math.PI) / 180, (side_deg * Math.PI) / 180]
  return { x: Math.cos(a) * Math.sin(s), y: Math.sin(a), z: Math.cos(a) * Math.cos(s) }
}

/** Does a ray from a point of the pane leave the reveal, and pass the endless overhang? */
function free(
  shade: WindowShade,
  x_m: number,
  y_m: number,
  ray: { x: number; y: number; z: number },
): boolean {
  if (ray.z <= 0) return false
  const atFace = shade.reveal_m / ray.z
  const [x, y] = [x_m + ray.x * atFace, y_m + ray.y * atFace]
  if (x < 0 || x > shade.width_m || y < 0 || y > shade.height_m) return false
  if (shade.overhang_m === 0) return true
  const edge = (shade.overhang_m + shade.reveal_m) / ray.z
  return y_m + ray.y * edge <= shade.height_m + shade.overhangAbove_m
}

/** Share of a fine grid of points on the pane for which the ray is free. */
function gridShare(shade: WindowShade, ray: { x: number; y: number; z: number }, n = 200): number {
  let lit = 0
  for (let i = 0; i < n; i++)
    for (let j = 0; j < n; j++)
      if (free(shade, ((i + 0.5) / n) * shade.width_m, ((j + 0.5) / n) * shade.height_m, ray)) lit++
  return lit / (n * n)
}

describe('sun on a shaded window', () => {
  test.each([
    [10, 0],
    [35, 20],
    [50, -40],
    [65, 10],
    [25, 70],
    [80, 0],
  ])('altitude %d°, %d° to the side: as a grid of rays finds (second implementation)', (altitude, side) => {
    const ray = towards(altitude, side)
    expect(litShare_frac(SHADE, ray.y, ray.z)).toBeCloseTo(gridShare(SHADE, ray), 1.7)
    const bare = { ...SHADE, overhang_m: 0 }
    expect(litShare_frac(bare, ray.y, ray.z)).toBeCloseTo(gridShare(bare, ray), 1.7)
  })

  test('nothing before the window: the sun is whole', () => {
    const open = { ...SHADE, overhang_m: 0, reveal_m: 0 }
    expect(litShare_frac(open, 0.9, 0.1)).toBe(1)
    expect(diffuseShares(open)).toEqual({ sky_frac: 1, ground_frac: 1 })
  })

  test('more overhang never lets more in', () => {
    const ray = towards(55, 15)
    let before = 2
    for (let overhang_m = 0; overhang_m <= 3; overhang_m += 0.1) {
      const lit = litShare_frac({ ...SHADE, overhang_m }, ray.y, ray.z)
      expect(lit).toBeLessThanOrEqual(before)
      before = lit
    }
    expect(before).toBe(0)
  })
})

describe('light of the sky on a shaded window', () => {
  /** Even sky, by angles: share of ∫ cos i over the upper quarter that is free, mean over the pane's points. */
  function skyShare(shade: WindowShade): number {
    const n = 60
    let got = 0
    let all = 0
    for (let i = 0; i < n; i++)
      for (let j = 0; j < n; j++) {
        // Even in sin² of the angle from the normal: each ray weighs the same.
        const from = Math.asin(Math.sqrt((i + 0.5) / n))
        const round = ((j + 0.5) / n) * Math.PI
        const ray = {
          x: Math.sin(from) * Math.cos(round),
          y: Math.sin(from) * Math.sin(round),
          z: Math.cos(from),
        }
        got += gridShare(shade, ray, 12)
        all++
      }
    return got / all
  }
  test('an overhang alone: as even rays find (second implementation), within 2 %', () => {
    const wide = { ...SHADE, reveal_m: 0 }
    expect(diffuseShares(wide).sky_frac).toBeCloseTo(skyShare(wide), 1.7)
    expect(diffuseShares(wide).ground_frac).toBe(1)
  })
  test('a reveal alone: within 5 %, for its sides and head are taken one after the other', () => {
    const deep = { ...SHADE, overhang_m: 0 }
    expect(Math.abs(diffuseShares(deep).sky_frac - skyShare(deep))).toBeLessThan(0.05)
  })
})
