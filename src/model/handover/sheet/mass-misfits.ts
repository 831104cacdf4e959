import { figure, said, short, words, type Problem, type Wording } from '#model/basis/words'
import { massLoop } from './mass-loop.ts'
import type { Plant } from './plant.ts'

/** Concrete above and below what is laid in it, together, m (common practice, no source). */
const COVER_m = 0.05
/** Wall of a pipe or duct, both sides together, m (common practice, no source). */
const WALLS_m = 0.004

/** A duct is laid in a slab in one run no longer than this, m (common practice, no source). */
export const LONGEST_DUCT_m = 30

/** Pipes or ducts that have no place in the mass they are to cool. */
export function massMisfits(plant: Plant): Problem[] {
  const mass = massLoop(plant)
  if (mass === null) return []
  const { room, store } = plant.answer.scenario
  const name = `${plant.names.pipe}s`
  const misfits: Problem[] = []
  if (store.kind === 'slab' && mass.inner_m + WALLS_m + COVER_m > room.slabThickness_m)
    misfits.push(
      misfit(
        'mass-too-thin',
        words`The ${name} in the slab are ${short(mass.inner_m)} wide inside, the slab is ${short(room.slabThickness_m)} thick: with ${short(COVER_m)} of cover it takes none wider than ${short(Math.max(0, room.slabThickness_m - COVER_m - WALLS_m))}.`,
        'Make the slab thicker, choose a narrower pipe, or use water in place of air.',
        'room.slabThickness_m',
      ),
    )
  if (mass.kind === 'duct' && mass.length_m > LONGEST_DUCT_m)
    misfits.push(
      misfit(
        'mass-duct-long',
        words`${figure(store.delivery_WK, 'WK')} between air and ${store.kind === 'slab' ? 'slab' : 'ceiling'} take ${figure(mass.length_m, 'm', 2)} of duct ${short(mass.inner_m)} inside; in one run no more than ${figure(LONGEST_DUCT_m, 'm')} are laid, which carry ${figure((store.delivery_WK * LONGEST_DUCT_m) / mass.length_m, 'WK', 2)}.`,
        'Use water in place of air, or give a delivery that such a run carries.',
        'store.delivery_WK',
      ),
    )
  const floor_m2 = room.length_m * room.width_m
  const taken_m2 = mass.length_m * mass.spacing_m
  if (taken_m2 > floor_m2)
    misfits.push(
      misfit(
        'mass-too-small',
        words`${figure(mass.length_m, 'm', 2)} of ${plant.names.pipe}, ${short(mass.spacing_m)} apart, take ${figure(taken_m2, 'm2', 2)}; floor or ceiling has ${figure(floor_m2, 'm2', 2)}.`,
        'Give a smaller delivery, or lay the turns closer than the figures of the sheet.',
        'store.delivery_WK',
      ),
    )
  return misfits
}

function misfit(
  code: string,
  text: Wording,
  remedy: string,
  field: NonNullable<NonNullable<Problem['place']>['field']>,
): Problem {
  return { code, severity: 'warning', ...said(text), place: { field }, remedy }
}
