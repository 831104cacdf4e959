import { figure, line, said, type Problem, type SheetLine, words, type Wording } from '#model/basis/words'
import { doorWords, freeArea_m2, judgedLoad_kgm2, loadWords, modulesThatFit } from '#model/design/assembly'
import type { Plant } from './plant.ts'
import { headFigure } from './figures.ts'
import { START_SPARE_m, startDuty } from './pump-duty.ts'
import { startLift_m } from './start-lift.ts'

/** Small circulators give about so much head at no flow, m (common practice, no source). */
const SMALL_PUMP_m = 7

/** What the plant must find a place in: as given or worked out, and what follows from it. */
export function placeLines(plant: Plant): SheetLine[] {
  return [line('Room for panels', panelWords(plant)), ...tankLines(plant), ...liftLines(plant)]
}

function panelWords({ answer }: Plant): Wording {
  const { scenario } = answer
  const free_m2 = freeArea_m2(scenario)
  const from = scenario.panel.freeArea_m2 > 0 ? 'given' : 'worked out: the room’s own roof'
  return words`${figure(free_m2, 'm2')} (${from}): at most ${modulesThatFit(scenario).words}`
}

function tankLines({ tank, answer }: Plant): SheetLine[] {
  if (tank === null) return []
  const { place, volume_m3 } = tank
  const most = words`at most ${figure(place.most_m3, 'm3')} of tank${place.doorGiven ? '' : ' once it is inside'}`
  const height = words`${figure(answer.scenario.room.height_m, 'span')} of room height`
  const load = words`carries the ${loadWords(place)}; the tank loads it with ${figure(judgedLoad_kgm2(volume_m3, tank), 'kgm2')}, its weight full on its footprint or on ${figure(1, 'm2')}, whichever is more. A licensed engineer decides`
  return [
    place.inRoom
      ? line('Tank’s way in', words`${wayIn(tank)}, ${height}: ${most}`)
      : line('Tank’s place', 'outdoors: no door and no ceiling limits it'),
    line('Floor under it', load),
  ]
}

function wayIn({ place, diameter_m }: Tank): Wording {
  if (place.doorGiven) return words`${doorWords(place)} (given)`
  const passes = diameter_m <= place.door_m ? 'passes' : 'does not pass'
  return words`not given; the tank ${passes} ${doorWords(place)}`
}

type Tank = NonNullable<Plant['tank']>

/** An ordinary door that a tank is wider than where nobody has said how wide its own is, m; null where it passes. */
export function widerThanDoor({ place, diameter_m }: Tank): number | null {
  return place.inRoom && !place.doorGiven && diameter_m > place.door_m ? place.door_m : null
}

/** A tank wider than an ordinary door where nobody has said how wide its own is. */
export function wayInRemarks({ tank }: Plant): Problem[] {
  if (tank === null || widerThanDoor(tank) === null) return []
  return [
    {
      code: 'tank-wider-than-door',
      severity: 'warning',
      ...said(
        words`The tank is ${figure(tank.diameter_m, 'span')} wide and does not pass ${doorWords(tank.place)}; a taller, narrower one does, up to ${figure(tank.place.byDoor_m3, 'm3')}.`,
      ),
      remedy:
        'Take a narrower one, bring it in before a wall is closed, join several smaller tanks, or give the width of its way in: the sizing then keeps to it.',
      place: { field: 'store.doorWidth_m' },
    },
  ]
}

function liftLines(plant: Plant): SheetLine[] {
  const lift_m = startLift_m(plant)
  if (lift_m === null) return []
  const from =
    plant.answer.scenario.loop.lift_m >= lift_m
      ? 'given'
      : 'worked out: from the water in the store to the top of the panels'
  return [
    line(
      'Lift',
      words`${figure(lift_m, 'm')} (${from}): the pump must give ${headFigure(plant, startDuty(plant)!.greatest_Pa)} at no flow`,
    ),
  ]
}

/** A lift that the pumps usual in such loops do not fill panels against. */
export function liftRemarks(plant: Plant): Problem[] {
  const lift_m = startLift_m(plant)
  if (lift_m === null || lift_m + START_SPARE_m <= SMALL_PUMP_m) return []
  return [
    {
      code: 'lift-beyond-small-pumps',
      severity: 'warning',
      ...said(
        words`The pump lifts water ${figure(lift_m, 'm')} into drained panels each time it starts; small circulators give about ${figure(SMALL_PUMP_m, 'm')} at no flow.`,
      ),
      remedy:
        'Buy a pump of more head, hang a vessel for the water nearer the panels, or choose a glycol loop that stays full.',
      place: { field: 'loop.lift_m' },
    },
  ]
}
