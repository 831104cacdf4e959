import { FIELDS } from '#model/design/scenario'
import { tankShape } from '#model/building/store'
import { targetWords } from '#model/design/target'
import { flowFigure, headFigure } from './figures.ts'
import { tankLevels } from './tank-levels.ts'
import type { Plant, SheetAnswer } from './plant.ts'
import type { Quantities } from './quantities.ts'
import { PANEL_kgm2 } from './cautions.ts'
import { moneyLines, plantBill } from './money.ts'
import { massName, powerFigures } from './pump-duty.ts'
import { startLift_m } from './start-lift.ts'
import { count, figure, words, type Wording, line, type SheetLine } from '#model/basis/words'

/** The way taken, and the room before it. */
function wayLines(way: SheetAnswer['way']): SheetLine[] {
  if (way === null) return []
  const { hours_h, peak_C } = way.asItIs
  return [
    line('Way taken', way.names.join(' + ')),
    line(
      'The room as it is, without all that',
      words`${count(Math.round(hours_h))} h above the limit, hottest hour ${figure(peak_C, 'C')}`,
    ),
  ]
}

/** Target and what the sized design does about it. */
export function jobLines(plant: Plant): SheetLine[] {
  const { answer } = plant
  const { sizing } = answer
  const { withPanels, doNothing } = sizing
  const { target } = answer.scenario
  const standard = FIELDS.target.adaptive.optionLabels[target.adaptive]
  return [
    ...wayLines(answer.way),
    line('Target', targetWords(target, words`${standard} (a guide: made for rooms without cooling)`)),
    line(
      'Hottest hour',
      words`${figure(withPanels.peak_C, 'C')}; ${figure(doNothing.peak_C, 'C')} without panels`,
    ),
    line('Hours above the limit', words`${count(withPanels.hours_h)}; ${count(doNothing.hours_h)} without`),
    ...(answer.rounding === null ? [] : [line('As it is sold', answer.rounding)]),
    line(
      'Hot days held',
      words`${count(withPanels.hotDaysHeld)} of ${count(withPanels.hotDays)}; ${count(doNothing.hotDaysHeld)} without`,
    ),
    ...moneyLines(plantBill(plant)),
  ]
}

const COMPASS = ['north', 'north-east', 'east', 'south-east', 'south', 'south-west', 'west', 'north-west']

export function panelLines(plant: Plant): SheetLine[] {
  const { answer, layout, modulesArea_m2, names } = plant
  const { panel } = answer.scenario
  const size = words`${figure(panel.moduleLength_m, 'span')} along the ${names.passage}s × ${figure(panel.moduleWidth_m, 'span')}`
  const lines = [
    line('Panels', words`${count(layout.modules)} of ${size}`),
    line(
      'Weight',
      words`about ${figure((PANEL_kgm2[1] * modulesArea_m2) / layout.modules, 'kg', 2)} a panel with its fluid and its share of the frame: two people carry one`,
    ),
    line(
      'Tilt',
      words`${figure(panel.tilt_deg, 'deg')} from flat${panel.tilt_deg > 0 ? words`, facing ${figure(panel.azimuth_deg, 'deg')} (${COMPASS[Math.round(panel.azimuth_deg / 45) % 8]!})` : words``}`,
    ),
    line('Height', words`${figure(panel.height_m, 'span')} above ground`),
  ]
  if (Math.abs(modulesArea_m2 - answer.area_m2) > 1e-6 * modulesArea_m2)
    lines.splice(
      1,
      0,
      line(
        'Note',
        words`the numbers are for ${figure(answer.area_m2, 'm2')}; whole modules make ${figure(modulesArea_m2, 'm2')}`,
      ),
    )
  return lines
}

export function loopLines(plant: Plant, amounts: Quantities): SheetLine[] {
  const { answer, names, layout, loopSpec } = plant
  const { loop } = answer
  return [
    line(
      'Fluid',
      loopSpec.fluid === 'air'
        ? names.fluid
        : words`${names.fluid}; ${figure(amounts.loopVolume_m3, 'content', 2)} in panels and pipes${amounts.massVolume_m3 > 0 ? words`, ${figure(amounts.massVolume_m3, 'content', 2)} in ${massName(plant)}` : words``}`,
    ),
    line('Flow', words`${flowFigure(plant)} in all; ${flowFigure(plant, 1 / layout.modules)} a panel`),
    line('Pressure', pressureWords(plant)),
    line(
      names.mover === 'pump' ? 'Pump' : 'Fan',
      words`${flowFigure(plant)} against ${headFigure(plant, loop.pressureDrop_Pa)}: ${figure(loop.pumpPower_W, 'W', 2)}${startWords(plant)}`,
    ),
    line(
      'Runs',
      words`${count(Math.round(sum(answer.months.map((month) => month.pumpRun_h))))} h a year, ${figure(sum(answer.months.map((month) => month.electric_J)), 'J', 2)} with the room’s cooling`,
    ),
  ]
}

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0)

/** What a pump of a loop that drains has to do beside its duty. */
function startWords(plant: Plant): Wording {
  const lift_m = startLift_m(plant)
  return lift_m === null
    ? words``
    : words`, as the year counts it, with full pipes; ${powerFigures(plant)}: it lifts the water ${figure(lift_m, 'm')} into empty panels (see the assumptions)`
}

function pressureWords(plant: Plant): Wording {
  const { loop } = plant.answer
  const lift = loop.liftLoss_Pa > 0 ? words`, lift ${headFigure(plant, loop.liftLoss_Pa)}` : words``
  return words`${headFigure(plant, loop.pressureDrop_Pa)}: ${plant.names.pipe}s ${headFigure(plant, loop.pipeLoss_Pa)}, headers ${headFigure(plant, loop.headerLoss_Pa)}, ${plant.names.passage}s ${headFigure(plant, loop.riserLoss_Pa)}${lift}`
}

/** As high as wide, or why not. */
function shapeWords({
  diameter_m,
  height_m,
  side_m2,
  end_m2,
  volume_m3,
}: NonNullable<Plant['tank']>): Wording {
  if (Math.abs(height_m - diameter_m) < 1e-6 * height_m) return words` and as high as wide`
  const usual = tankShape(volume_m3)
  const more_frac = (side_m2 + 2 * end_m2) / (usual.side_m2 + 2 * usual.end_m2) - 1
  return words`, to go into its place; the year is reckoned with one as high as wide, which has ${count(Math.round(100 * more_frac))} % less skin`
}

export function storeLines(plant: Plant): SheetLine[] {
  const { answer, tank } = plant
  const { store, room } = answer.scenario
  if (tank === null) {
    const slab = store.kind === 'slab'
    return [
      line(
        'Store',
        slab
          ? words`the floor slab, ${figure(room.slabThickness_m, 'span')} thick`
          : words`the building’s own mass`,
      ),
      line('Pipes to mass', words`${figure(store.delivery_WK, 'WK')}`),
    ]
  }
  const { load } = tank
  const levels = tankLevels(plant, tank)
  return [
    line(
      'Tank',
      words`${figure(tank.volume_m3, 'm3')}, ${FIELDS.store.kind.optionLabels[store.kind].toLowerCase()}, ${FIELDS.store.place.optionLabels[store.place].toLowerCase()}`,
    ),
    line(
      'Size',
      words`${figure(tank.diameter_m, 'span')} wide, ${figure(tank.height_m, 'span')} high if round${shapeWords(tank)}`,
    ),
    line(
      'Weight full',
      words`${figure(load.full_kg, 'kg')} full to the rim, ${figure(answer.store.waterMass_kg, 'kg')} of it water (what it loads its floor with: see “Floor under it”); ${figure((answer.store.waterMass_kg * levels.water_m) / tank.height_m, 'kg')} of water when filled to its water line`,
    ),
    line(
      'Water line',
      startLift_m(plant) === null
        ? words`fill to ${figure(levels.water_m, 'span')} above the bottom; the loop is filled apart and stays full`
        : words`fill to ${figure(levels.water_m, 'span')} above the bottom with the panels empty; ${figure(levels.running_m, 'span')} while they are full`,
    ),
  ]
}
