import { figure, said, words, type Problem, type Text, type Wording } from '#model/basis/words'
import { fullTank_kg } from '#model/building/store'
import type { Scenario } from '#model/design/scenario'
import {
  HEADROOM_m,
  PLACE_FIELDS,
  judgedLoad_kgm2,
  shapeInPlace,
  tankPlaceOf,
  type TankPlace,
} from './tank-place.ts'

/** What a tank of so much has no place for; empty where it fits. */
export function tankMisfits(scenario: Scenario, volume_m3: number): Problem[] {
  const place = tankPlaceOf(scenario)
  if (place === null || volume_m3 <= place.most_m3 * (1 + 1e-9)) return []
  return [place.limit === 'load' ? tooHeavy(place, volume_m3) : tooLarge(scenario, place, volume_m3)]
}

function tooLarge({ room }: Scenario, place: TankPlace, volume_m3: number): Problem {
  const most = place.most_m3 > 0 ? words`: at most ${figure(place.most_m3, 'm3')} fit` : words`: no tank fits`
  return misfit(
    PLACE_FIELDS[place.limit],
    words`A tank of ${figure(volume_m3, 'm3')} has no place in this room, with ${place.doorGiven ? words`${doorWords(place)}, ` : ''}${figure(room.height_m, 'm')} of height of which ${figure(HEADROOM_m, 'm')} stay free above it, and a fifth of the floor at most${most}.`,
    'Say how wide its way in is, stand it outdoors, use several smaller tanks, choose a smaller volume yourself, or keep the cold in the floor slab.',
  )
}

function tooHeavy(place: TankPlace, volume_m3: number): Problem {
  const load_kgm2 = judgedLoad_kgm2(volume_m3, shapeInPlace(volume_m3, place))
  const most = place.most_m3 > 0 ? words`; at most ${figure(place.most_m3, 'm3')} may stand there` : words``
  return misfit(
    PLACE_FIELDS.load,
    words`A tank of ${figure(volume_m3, 'm3')} weighs ${figure(fullTank_kg(volume_m3), 'kg')} full and loads its floor with ${figure(load_kgm2, 'kgm2')}, more than the ${loadWords(place)}${most}.`,
    'Stand it on firm ground, have the floor checked by a licensed engineer and give what it carries, or use several smaller tanks apart.',
  )
}

/** The narrowest door, and whether it was given. */
export function doorWords({ door_m, doorGiven }: TankPlace): Wording {
  return doorGiven
    ? words`a way in of ${figure(door_m, 'span')}`
    : words`an ordinary door of ${figure(door_m, 'span')}`
}

/** What limits the tank, in a few words. */
export function limitName(place: TankPlace): Wording {
  switch (place.limit) {
    case 'door':
      return doorWords(place)
    case 'floor':
      return words`a fifth of the floor`
    case 'height':
      return words`the height of the room`
    case 'load':
      return words`a floor that carries the ${loadWords(place)}`
  }
}

/** What the floor under the tank carries, and whether it was given. */
export function loadWords({ load_kgm2, loadGiven, inRoom }: TankPlace): Wording {
  const load = figure(load_kgm2, 'kgm2')
  if (loadGiven) return words`${load} that are given for it`
  return inRoom ? words`${load} taken for such a floor` : words`${load} taken for firm ground`
}

function misfit(field: string, message: Text, remedy: string): Problem {
  return { code: 'tank-does-not-fit', severity: 'warning', ...said(message), remedy, place: { field } }
}
