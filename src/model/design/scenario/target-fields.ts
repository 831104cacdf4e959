import { choice, number, onOff } from './field.ts'
import { STARTING_PRICES } from '#model/design/cost'
import { each, invented, WAY_PRICE_FIELDS } from './way-price-fields.ts'

/** Target and prices. Ranges, words and defaults: see `fields.ts`. */
export const TARGET_FIELDS = {
  keptFor: choice(
    {
      awake: 'People awake',
      asleep: 'People asleep',
      goods: 'Goods',
      plants: 'Plants',
      animals: 'Animals',
      battery: 'A battery or a server',
    },
    'awake',
    'Kept cool for',
    'Only people are helped by moving air; each kind has its usual limit, hours and humidity.',
  ),
  kind: choice(
    {
      peak: 'Never above',
      hours: 'Hours above',
      degreeHours: 'Degree-hours above',
      adaptive: 'Adaptive comfort',
    },
    'hours',
    'Target',
    'What the room must do. Adaptive bands were made for rooms without mechanical cooling: a guide only.',
  ),
  limit_C: number(
    'C',
    { min: 2, max: 45, default: 26, usual: [8, 32], step: 0.5 },
    'Limit',
    'Operative temperature: air and surfaces together.',
  ),
  allowedHours_h: number(
    'h',
    { min: 0, max: 2000, default: 40, usual: [0, 300], step: 5 },
    'Hours allowed',
    'Counted hours a year above the limit.',
  ),
  allowedDegreeHours_Kh: number(
    'Kh',
    { min: 0, max: 5000, default: 50, usual: [0, 500], step: 5 },
    'Degree-hours allowed',
    'Kelvin-hours a year above the limit.',
  ),
  adaptive: choice(
    { ashrae55: 'ASHRAE 55, 80 %', en16798: 'EN 16798-1, category II' },
    'ashrae55',
    'Adaptive standard',
    'Its upper limit follows the running-mean outdoor temperature.',
  ),
  occupiedFrom_h: number(
    'h',
    { min: 0, max: 24, default: 0, step: 1 },
    'Counts from',
    'Hour of the day; same as “until”: all day.',
  ),
  occupiedUntil_h: number('h', { min: 0, max: 24, default: 0, step: 1 }, 'Until', 'Hour of the day.'),
  airSpeed_ms: number(
    'ms',
    { min: 0, max: 1.2, default: 0.1, step: 0.1 },
    'Air speed at people',
    'Of a ceiling fan, 0.6 m/s makes 27.2 °C feel like 26 °C (EN 16798-1, from memory). From 0.3 m/s on, and only for people.',
  ),
  mostHumid_frac: number(
    'frac',
    { min: 0.3, max: 1, default: 0.7, usual: [0.5, 0.85], step: 0.05 },
    'Most humid inside',
    'An evaporative cooler stops at this relative humidity.',
  ),
  heatedTo_C: number(
    'C',
    { min: 5, max: 25, default: 18, usual: [8, 22], step: 0.5 },
    'Heated to, in winter',
    'What a measure costs or saves in heating is counted at it.',
  ),
  maxArea_m2: number(
    'm2',
    { min: 0.5, max: 1000, default: 60, usual: [5, 120], step: 1 },
    'Largest area',
    'What there is room for.',
  ),
  autoArea: onOff(true, 'Size the area', 'Off: use your own area and see what it does.'),
  area_m2: number(
    'm2',
    { min: 0, max: 1000, default: 12, usual: [0, 80], step: 0.5 },
    'Panel area',
    'Used when the area is your own.',
  ),
} as const

export const PRICES_FIELDS = {
  panel_perm2: number(
    'perm2',
    { min: 0, max: 100000, default: STARTING_PRICES.panel_perm2, usual: [0, 500] },
    'Panel, by area',
    invented('In your currency, fitted.'),
  ),
  store_perm3: number(
    'perm3',
    { min: 0, max: 100000, default: STARTING_PRICES.store_perm3, usual: [0, 1000] },
    'Store, by volume',
    invented('Tank with insulation.'),
  ),
  pipe_perm: number(
    'perm',
    { min: 0, max: 10000, default: STARTING_PRICES.pipe_perm, usual: [0, 50] },
    'Pipe, by length',
    invented('With insulation and fittings.'),
  ),
  pump_each: number(
    'each',
    { min: 0, max: 100000, default: STARTING_PRICES.pump_each, usual: [0, 500] },
    'Pump and controls',
    invented('Pump of the panel loop (P1), controller and sensors, all together.'),
  ),
  fanCoil_each: each(STARTING_PRICES.fanCoil_each, 'Fan coil', 'Where a tank cools the room by one.'),
  deliveryPump_each: each(STARTING_PRICES.deliveryPump_each, 'Circulating pump P2', 'Between tank and room.'),
  mixingValve_each: each(
    STARTING_PRICES.mixingValve_each,
    'Mixing valve',
    'With its drive; a drained fan coil needs none.',
  ),
  energy_perkWh: number(
    'perkWh',
    { min: 0, max: 100, default: STARTING_PRICES.energy_perkWh, usual: [0, 1], step: 0.01 },
    'Electricity, per kWh',
    invented('For pump, fans and machines.'),
  ),
  years_y: number(
    'y',
    { min: 1, max: 40, default: 10, usual: [1, 25], step: 1 },
    'Years counted',
    'Over which energy is added to the price.',
  ),
  ...WAY_PRICE_FIELDS,
} as const
