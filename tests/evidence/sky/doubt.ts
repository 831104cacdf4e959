import { SHIPPED } from './choice.ts'
import { nightMeans } from './nights.ts'
import { skySites } from './sites.ts'

/** Nights of a hot spell: what decides a size. */
const SPELL = 5
/** Fewer nights than this are too short a record for a spread of spells. */
const ENOUGH_NIGHTS = 100

/** Modelled less measured sky over the mean of five nights at one place, as it is shipped. */
export interface SpellDoubt {
  readonly place: string
  readonly nights: number
  /** Root of the mean square over all runs of five nights, the place's bias with it, W/m². */
  readonly rms_Wm2: number
  /** What the sky lacks to black in the mean, as measured, W/m². */
  readonly lack_Wm2: number
}

const meanOf = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length

/** The places with nights enough. Five nights follow one another in the record, gaps left out. */
export function spellDoubts(): SpellDoubt[] {
  return skySites()
    .map((site) => {
      const nights = nightMeans(site, SHIPPED.rule, SHIPPED.clearHours, SHIPPED.formula)
      const off = nights.map(({ modelled_Wm2, measured_Wm2 }) => modelled_Wm2 - measured_Wm2)
      const spells = off.slice(SPELL - 1).map((_, k) => meanOf(off.slice(k, k + SPELL)))
      return {
        place: site.name,
        nights: nights.length,
        rms_Wm2: Math.sqrt(meanOf(spells.map((value) => value ** 2))),
        lack_Wm2: meanOf(nights.map(({ lack_Wm2 }) => lack_Wm2)),
      }
    })
    .filter(({ nights }) => nights >= ENOUGH_NIGHTS)
}

/** Part of `npm run -s evidence -- sky`. */
export function printSpellDoubts(): void {
  console.log(
    '\nMean of five nights, as shipped: root mean square of model − measured, and its share of what the sky lacks to black',
  )
  for (const { place, nights, rms_Wm2, lack_Wm2 } of spellDoubts())
    console.log(
      `  ${place.padEnd(20)} ${nights} nights: ${rms_Wm2.toFixed(1)} of ${lack_Wm2.toFixed(0)} W/m², ${(rms_Wm2 / lack_Wm2).toFixed(2)}`,
    )
}
