import { drainsBack } from '#model/handover/drawing'
import { count, figure, words } from '#model/basis/words'
import { factsOf } from './facts-of.ts'
import { massName } from './pump-duty.ts'
import { partOf, type Part } from './part.ts'
import type { Plant } from './plant.ts'
import { vesselOf, type Quantities } from './quantities.ts'

const part = partOf('Panel loop')

/** What is filled into the loop, and the vessels that take it: drained back, or expanded. */
export function fluidParts(plant: Plant, amounts: Quantities): Part[] {
  const { loopSpec, fluid } = plant
  const parts: Part[] = []
  const whole_m3 = amounts.loopVolume_m3 + amounts.massVolume_m3
  const content = figure(amounts.loopVolume_m3, 'content', 2)
  if (plant.tank === null && drainsBack(factsOf(plant)))
    parts.push(
      part(
        count(1),
        words`drain-back vessel (DV), closed but for an air filter in its lid: ${figure(vesselOf(amounts).content_m3, 'content', 2)} for the ${content} of panels and pipes; the return comes in over its water, its outlet ${figure(plant.answer.loop.pipeInnerDiameter_m, 'valveSize')} leaves at the bottom to ${massName(plant)}; on a bracket that carries ${figure(1.2 * vesselOf(amounts).content_m3 * fluid.density_kgm3, 'kg', 2)}`,
      ),
    )
  if (loopSpec.fluid === 'glycol' && plant.tank === null)
    parts.push(
      part(
        count(1),
        words`diaphragm expansion vessel (EX) of ${figure(EXPANSION_SHARE * whole_m3, 'content', 2)} or the next larger, charged to ${figure(EXPANSION_CHARGE_Pa, 'gauge')}, for ${figure(whole_m3, 'content', 2)} of mix`,
      ),
      part(
        count(1),
        words`relief valve ${figure(0.015, 'valveSize')}, ${figure(RELIEF_Pa, 'gauge')}, piped to a can (RV)`,
      ),
    )
  if (loopSpec.fluid === 'glycol')
    parts.push(
      part(
        figure(whole_m3 * fluid.density_kgm3 * loopSpec.glycol_frac, 'kg'),
        words`inhibited propylene glycol for the loop alone`,
      ),
    )
  return parts
}

/** Share of a mix's volume that an expansion vessel has; its charge and the relief pressure, Pa (common practice, no source). */
const EXPANSION_SHARE = 0.3
const EXPANSION_CHARGE_Pa = 100_000
const RELIEF_Pa = 300_000
