import { count, figure, words, type Wording } from '#model/basis/words'
import type { Candidate, SizingResult } from '#model/design/sizing'

/** What rounding a sized design to whole modules and a tank that is sold gives; null where nothing was rounded. */
export function roundingWords(sizing: SizingResult, built: Candidate): Wording | null {
  const { beforeRounding, withPanels, modules } = sizing
  if (beforeRounding === null) return null
  const tank = (volume_m3: number): Wording =>
    volume_m3 > 0 ? words` and ${figure(volume_m3, 'm3')} of tank` : words``
  const does = ({ hours_h, peak_C }: SizingResult['withPanels']): Wording =>
    words`${count(hours_h)} h above the limit, hottest hour ${figure(peak_C, 'C')}`
  return words`the sizing asks for ${figure(sizing.area_m2, 'm2')}${tank(sizing.storeVolume_m3)} (${does(beforeRounding)}); ${count(modules)} whole ${modules === 1 ? 'module makes' : 'modules make'} ${figure(built.area_m2, 'm2')}${built.storeVolume_m3 > 0 ? words`, the tank sold is ${figure(built.storeVolume_m3, 'm3')}` : ''}: ${does(withPanels)}.`
}
