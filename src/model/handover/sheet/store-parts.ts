import { fluidProperties, LOOP_TEMP_C } from '#model/panels/loop'
import { doorWords } from '#model/design/assembly'
import { count, figure, short, words, type Wording } from '#model/basis/words'
import { partOf, type Part } from './part.ts'
import { inLayers } from './controls.ts'
import { widerThanDoor } from './place-lines.ts'
import type { Plant } from './plant.ts'
import type { Quantities } from './quantities.ts'
import { roomCoil } from './room-coil.ts'
import { tankLevels } from './tank-levels.ts'

const part = partOf('Store')

/** Water over the outlet to P1 at which the pump stops, m (common practice, no source). */
const LOW_m = 0.05

/** What else may be bought in its place. */
function shapes(tank: NonNullable<Plant['tank']>): Wording {
  const door = widerThanDoor(tank)
  return door === null
    ? words` (or another shape of that content and that height at most)`
    : words` (as wide as drawn it does not pass ${doorWords(tank.place)}: a taller, narrower one does, up to ${figure(tank.place.byDoor_m3, 'm3')}; or bring it in before a wall is closed, or ${count(Math.ceil(tank.volume_m3 / tank.place.byDoor_m3))} of that size on one level, joined at the bottom and once more under the water line at rest, every joint of the bore of the outlet to P1: connections, S2 and S8 as listed, in the first)`
}

/** The tank with its connections; nothing where slab or building keep the cold. */
export function storeParts(plant: Plant, amounts: Quantities): Part[] {
  const { tank, answer, loopSpec } = plant
  const { store } = answer.scenario
  if (tank === null) return []
  const water_kg = tank.volume_m3 * fluidProperties('water', 0, LOOP_TEMP_C).density_kgm3
  const levels = tankLevels(plant, tank)
  const pipe = figure(answer.loop.pipeInnerDiameter_m, 'valveSize')
  const parts = [
    part(
      count(1),
      words`open tank of ${figure(tank.volume_m3, 'm3')}, about ${figure(tank.diameter_m, 'span')} wide and ${figure(tank.height_m, 'span')} high${shapes(tank)}, of polyethylene, glass-fibre or coated steel made to stand filled, with a tight, child-proof lid`,
    ),
    part(
      count(1),
      words`tank connector ${pipe} for the outlet to P1, ${figure(levels.outlet_m, 'span')} above the bottom: under the water even while the panels are full`,
    ),
    part(
      count(1),
      words`return ${pipe} over the rim, by a notch of the lid, ending ${figure(levels.end_m, 'span')} above the bottom${inLayers(plant) ? words`, in an upright inlet pipe twice as wide from there to the water line, closed below and with holes all along, out of which the water flows where the tank is as warm (an open end would stir up what is colder: this reckoning does not contain that)` : ''}`,
    ),
    part(
      count(2),
      words`tank connectors ${figure(roomCoil(plant).bore_m, 'valveSize')} for the cooling of the room: out ${figure(levels.end_m, 'span')} above the bottom, back ${figure(levels.outlet_m, 'span')}`,
    ),
    part(
      count(1),
      words`overflow (O1) ${figure(0.025, 'valveSize')} just over the water line at ${figure(levels.water_m, 'span')} with a pipe of that size to a drain or outdoors, drain valve (D2) ${figure(0.02, 'valveSize')} at the bottom, pockets for S2 and S8; float switch (LS) that opens ${short(LOW_m)} over the outlet to P1`,
    ),
    part(
      figure(amounts.tankSkin_m2, 'm2'),
      words`tank insulation ${figure(store.insulation_m, 'board')} all round (${figure(store.insulation_m / store.insulationConductivity_WmK, 'rValue')}), load-bearing below`,
    ),
  ]
  if (loopSpec.fluid === 'glycol')
    parts.push(
      part(
        figure(water_kg * loopSpec.glycol_frac, 'kg'),
        words`more glycol if the tank holds the same mix; none with a heat exchanger, which this reckoning does not contain`,
      ),
    )
  return parts
}
