import { choice, number, onOff } from './field.ts'
import { figure, words } from '#model/basis/words'

/** Store and delivery. Ranges, words and defaults: see `fields.ts`. */
export const STORE_FIELDS = {
  kind: choice(
    {
      mixed: 'Tank, mixed',
      layered: 'Tank, layered',
      slab: 'Pipes in the floor slab',
      building: 'The building itself',
    },
    'mixed',
    'Store',
    'Where the cold is kept until the heat of the day.',
  ),
  autoVolume: onOff(true, 'Choose the volume', 'At the knee where more tank hardly saves panel.'),
  volume_m3: number(
    'm3',
    { min: 0.02, max: 200, default: 1, usual: [0.1, 10], step: 0.1 },
    'Tank volume',
    words`${figure(1, 'm3')} of water holds 1.16 kWh for each ${figure(1, 'K')} and weighs ${figure(1000, 'kg')}.`,
    'Too small and it is warm by noon; too large and it never gets cold.',
  ),
  layers: number(
    'count',
    { min: 2, max: 8, default: 4, usual: [2, 8], step: 1 },
    'Layers',
    'Only for a layered tank. What comes back from the panels is let in where the tank is as warm.',
  ),
  insulation_m: number(
    'm',
    { min: 0, max: 0.5, default: 0.08, usual: [0.02, 0.2], step: 0.01 },
    'Tank insulation',
    'Thickness all round.',
  ),
  insulationConductivity_WmK: number(
    'WmK',
    { min: 0.015, max: 0.2, default: 0.035, usual: [0.022, 0.06], step: 0.001 },
    'Insulation conductivity',
    words`Foam and wool ${figure(0.022, 'WmK')} to ${figure(0.045, 'WmK')}.`,
  ),
  fittingsFactor_frac: number(
    'frac',
    { min: 1, max: 4, default: 1.7, usual: [1, 2.5], step: 0.1 },
    'Fittings factor',
    'Real tanks lose 1.5–2.5 times the ideal.',
  ),
  place: choice(
    { room: 'In the room', outside: 'Outdoors, shaded' },
    'room',
    'Tank stands',
    'Its leak goes to the room or to the outdoors.',
  ),
  doorWidth_m: number(
    'm',
    { min: 0, max: 6, default: 0, usual: [0, 2.5], step: 0.05 },
    'Tank’s way in',
    words`Clear width of the narrowest door that it has to pass. 0: not given, and it limits no tank; an ordinary door has ${figure(0.813, 'm')}. Only for a tank in the room.`,
    'The largest tank that passes a given door, has headroom and a floor to stand on limits the tank, and with it the area.',
  ),
  floorLoad_kgm2: number(
    'kgm2',
    { min: 0, max: 20000, default: 0, usual: [0, 8000], step: 50 },
    'Floor under it carries',
    words`0: by the floor of the room. A raised floor ${figure(196, 'kgm2')}, as dwellings’ (${figure(150, 'kgm2')} to ${figure(200, 'kgm2')} is common); a floor on firm ground ${figure(7320, 'kgm2')}. A licensed engineer decides.`,
    'A tank heavier than its floor carries is not chosen.',
  ),
  deliveryKind: choice(
    {
      surface: 'Coil or fan coil, kept dry',
      drained: 'Fan coil with drip tray and drain',
      ceiling: 'Cooled ceiling panels',
      floorPipes: 'Pipes in the floor slab',
      roofPipes: 'Pipes in the ceiling’s inner layer',
    },
    'surface',
    'Cold gets in by',
    'A tray is only for a tank: with one the coil dries the air too, and the tank pays for it. Without one nothing may be colder than the dew point and its margin. Half of what a ceiling takes is radiation; pipes cool a layer first, the room hours later.',
  ),
  delivery_WK: number(
    'WK',
    { min: 0, max: 5000, default: 200, usual: [20, 600], step: 10 },
    'Delivery',
    words`Fan coil or cooled surface between store and room. A cooled ceiling gives about ${figure(9, 'Wm2K')}, a car-radiator fan coil ${figure(100, 'WK')} to ${figure(250, 'WK')}.`,
    'Cold that cannot get into the room is no use.',
  ),
  deliveryPower_W: number(
    'W',
    { min: 0, max: 2000, default: 0, usual: [0, 200], step: 1 },
    'Delivery power',
    words`Fan and pump of the delivery at full flow, less in proportion below it. 0: worked out from the delivery, ${figure(0.39, 'count')} W per W/K with a fan coil and ${figure(0.14, 'count')} W per W/K without a fan, as the sheet lists them.`,
    'It is heat to the room, and electricity.',
  ),
  dewMargin_K: number(
    'K',
    { min: 0, max: 6, default: 2, usual: [0, 4], step: 0.5 },
    'Dew margin',
    words`Cooled surfaces stay this far above the indoor dew point. Mould comes before drops: ${figure(3.5, 'K')} keeps surface humidity under 80 %.`,
  ),
} as const
