import { figure, short, words, type Text } from '#model/basis/words'
import type { Drawing } from '../shapes.ts'
import { layersDrawing, type Layer } from './layers.ts'
import type { WayFacts } from './way-facts.ts'

/** Layers of what was chosen: coats, insulation, panes, opening, fan. */
export function detailsOf(facts: WayFacts): Drawing[] {
  const { paint, roofInsulation, wallInsulation, opening, fan } = facts
  return [
    ...(paint === null ? [] : [paintLayers(paint)]),
    ...(roofInsulation === null ? [] : [insulationLayers('roof', roofInsulation.what, paint !== null)]),
    ...(wallInsulation === null ? [] : [insulationLayers('wall', wallInsulation.what, false)]),
    ...(facts.glazing ? [glazingLayers()] : []),
    ...(opening === null ? [] : [openingLayers(opening)]),
    ...(fan === null ? [] : [fanLayers(fan), ventLayers(fan)]),
  ]
}

function paintLayers({
  coats,
  wetCoat,
  wetAll,
  dry,
  litres,
  primer,
}: NonNullable<WayFacts['paint']>): Drawing {
  const coat = (i: number): Layer => ({
    name: words`coat ${String(coats - i)}: ${litres}, ${wetCoat} wet${i % 2 === 0 ? '' : ', across the one below'}`,
    drawn: 3,
    fill: i % 2 === 0 ? 'pale' : 'grey',
  })
  return layersDrawing({
    id: 'way-paint',
    title: 'Coating of the roof, from the sky down',
    above: 'sky',
    below: 'room',
    layers: [
      ...Array.from({ length: coats }, (_, i) => coat(i)),
      { name: words`primer for what the roof is made of: ${primer}`, drawn: 2, fill: 'grey' },
      { name: 'the roof as it is: mended, washed, dry', drawn: 7, fill: 'none' },
    ],
    notes: [
      words`All coats together ${wetAll} wet and ${dry} once dry: the water leaves, solids and the pores between them stay. The volumes have the losses in them, the thicknesses have not. Each coat is dry before the next: some four hours in dry air at ${figure(20, 'C')}, or what the binder’s sheet says (common practice, no source).`,
    ],
  })
}

function insulationLayers(where: 'roof' | 'wall', what: Text, painted: boolean): Drawing {
  const board = (name: Text): Layer => ({ name, drawn: 7, fill: 'pale', inside: 'joints' })
  return layersDrawing({
    id: `way-insulation-${where}`,
    title:
      where === 'roof'
        ? 'Insulation of the roof, from the sky down'
        : 'Insulation of the walls, from outdoors in',
    above: where === 'roof' ? 'sky' : 'outdoors',
    below: 'room',
    layers: [
      {
        name: painted
          ? 'weather-tight outer layer: the coating goes on this'
          : 'weather-tight outer layer on battens',
        drawn: 2.4,
        fill: 'grey',
      },
      board('insulation, outer of two layers'),
      board('insulation, inner layer: joints apart from the outer’s'),
      { name: where === 'roof' ? 'the roof as it is' : 'the wall as it is', drawn: 7, fill: 'none' },
      { name: 'vapour barrier where there is none, on the warm side', drawn: 1.2, fill: 'ink' },
    ],
    notes: [
      words`${what}, both layers together. Inside instead: the wall or roof, then insulation, then the barrier, then the lining; the barrier unbroken and taped at every cable and edge.`,
    ],
  })
}

const glazingLayers = (): Drawing =>
  layersDrawing({
    id: 'way-glazing',
    title: 'Window with film and second pane, from outdoors in',
    above: 'outdoors',
    below: 'room',
    layers: [
      { name: 'solar film for outside use, on the glass', drawn: 1.2, fill: 'ink' },
      { name: 'the glass that is there', drawn: 3, fill: 'grey' },
      {
        name: words`still air, ${short(0.012, 2)} to ${short(0.02, 2)}, small hole outwards`,
        drawn: 6,
        fill: 'none',
      },
      { name: 'second pane in a tight frame', drawn: 3, fill: 'grey' },
    ],
    notes: ['Ask the maker of double or wired glass before film goes on it: it can crack.'],
  })

const louvre: Layer = {
  name: 'rain louvre or hood, slats falling outwards',
  drawn: 6,
  fill: 'none',
  inside: 'slats',
}
const mesh: Layer = {
  name: 'insect mesh, in a frame that comes out for washing',
  drawn: 2.4,
  fill: 'none',
  inside: 'mesh',
}

function openingLayers({ each_m2, height_m }: NonNullable<WayFacts['opening']>): Drawing {
  return layersDrawing({
    id: 'way-opening',
    title: 'Night openings N1 and N2, from outdoors in',
    above: 'outdoors',
    below: 'room',
    layers: [
      louvre,
      {
        name: words`bars ${short(0.1, 2)} apart against burglars; open from inside`,
        drawn: 4,
        fill: 'none',
        inside: 'bars',
      },
      mesh,
      { name: 'flap or window with a seal, moved by hand or motor', drawn: 3.6, fill: 'pale' },
      { name: 'motor: battery or spring shuts it in a power cut', drawn: 2.4, fill: 'grey' },
    ],
    notes: [
      words`Each opening is ${figure(each_m2, 'm2', 2)} free (${figure(each_m2 / height_m, 'span', 2)} wide, ${figure(height_m, 'span', 2)} high): what louvre, bars and mesh cover comes on top.`,
      'Opens when all of these hold: the clock says night, outdoors is colder than the room, no rain; else it is shut. One clock with thermostat and rain sensor serves both openings.',
    ],
  })
}

function fanLayers({ each, stopsAt }: NonNullable<WayFacts['fan']>): Drawing {
  return layersDrawing({
    id: 'way-fan',
    title: 'Night fan F, from outdoors in',
    above: 'outdoors',
    below: 'room',
    layers: [
      { ...louvre, name: 'gravity shutter: its air opens it, and it falls shut' },
      { name: words`fan blowing out, ${each} each, sealed into the wall`, drawn: 7, fill: 'grey' },
      { name: 'guard that fingers do not pass', drawn: 2, fill: 'none', inside: 'mesh' },
    ],
    notes: [
      words`Runs while the clock says night and outdoors is ${figure(2, 'K')} colder than the room, until the difference is ${figure(1, 'K')}, or the room has come down to ${stopsAt}. Switch within reach.`,
    ],
  })
}

function ventLayers({ inlet_m2, hole_m2 }: NonNullable<WayFacts['fan']>): Drawing {
  return layersDrawing({
    id: 'way-vent',
    title: 'Vent V1 for the air that the fan draws in, from outdoors in',
    above: 'outdoors',
    below: 'room',
    layers: [
      louvre,
      mesh,
      { name: 'gravity shutter: the fan’s draught opens it, no motor', drawn: 3, fill: 'pale' },
    ],
    notes: [
      words`A hole of ${figure(hole_m2, 'm2', 2)}, of which louvre and mesh leave ${figure(inlet_m2, 'm2', 2)} free.`,
    ],
  })
}
