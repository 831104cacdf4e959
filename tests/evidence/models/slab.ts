/** Exact slab with adiabatic back and convection on its face: first eigenvalues, Carslaw & Jaeger 1959, §3.11. */
export interface SlabCase {
  readonly thickness_m: number
  readonly conductivity_WmK: number
  readonly capacity_Jm3K: number
  readonly surface_Wm2K: number
}

/** Mean temperature excess left after `time_h`, as a share of the first. */
export function slabMean(slab: SlabCase, time_h: number): number {
  const biot = (slab.surface_Wm2K * slab.thickness_m) / slab.conductivity_WmK
  const fourier = ((slab.conductivity_WmK / slab.capacity_Jm3K) * time_h * 3600) / slab.thickness_m ** 2
  let mean = 0
  for (let n = 0; n < 40; n++) {
    const z = eigenvalue(biot, n)
    const weight = (4 * Math.sin(z)) / (2 * z + Math.sin(2 * z))
    mean += weight * Math.exp(-z * z * fourier) * (Math.sin(z) / z)
  }
  return mean
}

/** Root of z tan z = Bi in (nπ, nπ + π/2). */
function eigenvalue(biot: number, n: number): number {
  let [low, high] = [n * Math.PI + 1e-12, n * Math.PI + Math.PI / 2 - 1e-12]
  for (let i = 0; i < 100; i++) {
    const z = (low + high) / 2
    if (z * Math.tan(z) < biot) low = z
    else high = z
  }
  return (low + high) / 2
}
