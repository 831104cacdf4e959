import { Face, type PanelHours } from '#model/panels/plate'
import type { ConvectionCurve } from '#inside/model/panels/plate/hours.ts'

const one = Float64Array.of(1)
const none = Float64Array.of(0)
const curve: ConvectionCurve = { constant: one, first: none, second: none, third: none, span_K: 40 }
const gain = { plate_Wm2: none, film_Wm2: none }

/** A wet face over dry air with h = 1 W/m²K and one kilogram a pascal: what evaporates is the saturation pressure it reads. */
const face = new Face()
face.set(
  {
    air_C: none,
    vapour_Pa: none,
    massTransfer: one,
    cold: curve,
    hot: curve,
    dryGain: gain,
    wetGain: gain,
    gap: null,
  } as PanelHours,
  0,
)
face.limit_kgm2s = Infinity

/** Saturation pressure as the hour loop reads it from its table, Pa. */
export function faceSaturation_Pa(temp_C: number): number {
  face.temp_C = temp_C
  face.convect()
  face.evaporate()
  return face.evaporation_kgm2s
}

/** Slope of that, Pa/K. */
export function faceSaturationSlope_PaK(temp_C: number): number {
  faceSaturation_Pa(temp_C)
  return face.evaporationSlope_kgm2sK
}
