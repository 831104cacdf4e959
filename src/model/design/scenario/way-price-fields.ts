import { number } from './field.ts'
import type { NumberField } from './field.ts'

export const each = (start: number, label: string, help: string): NumberField =>
  number('each', { min: 0, max: 100000, default: start, usual: [0, 5000], step: 10 }, label, invented(help))
const perArea = (start: number, label: string, help: string): NumberField =>
  number('perm2', { min: 0, max: 10000, default: start, usual: [0, 500], step: 1 }, label, invented(help))

/** The starting values are invented; 0 is a price too: what one has already costs nothing. */
export const invented = (help: string): string => `${help} The starting value is invented: give your own.`

/** Prices of measures and machines beside panels, and what may be spent. */
export const WAY_PRICE_FIELDS = {
  budget_each: number(
    'each',
    { min: 0, max: 1e9, default: 0, usual: [0, 20000], step: 100 },
    'Budget at first',
    'Most that may be spent at first; 0: no limit.',
  ),
  water_perm3: number(
    'perm3',
    { min: 0, max: 1000, default: 3, usual: [0, 20], step: 0.1 },
    'Water',
    invented('For evaporative coolers.'),
  ),
  heat_perkWh: number(
    'perkWh',
    { min: 0, max: 100, default: 0.1, usual: [0, 0.5], step: 0.01 },
    'Heat in winter',
    invented('What warmth costs where the room is heated; 0: it is not.'),
  ),
  upkeep_frac: number(
    'frac',
    { min: 0, max: 0.5, default: 0.03, usual: [0, 0.1], step: 0.01 },
    'Upkeep a year',
    invented('Share of the price of panels and machines.'),
  ),
  roofPaint_perm2: perArea(6, 'Roof coating', 'Two coats, by roof area.'),
  roofInsulation_perm2: perArea(20, 'Roof insulation', 'By roof area.'),
  wallInsulation_perm2: perArea(25, 'Wall insulation', 'By wall area.'),
  shade_perm2: perArea(100, 'Outside shade', 'By window area.'),
  glazing_perm2: perArea(120, 'Film and second pane', 'By window area.'),
  opening_perm2: perArea(200, 'New vents', 'By clear opening, where the windows are too small.'),
  openingFittings_each: each(60, 'Stays and mesh', 'So that openings may stay open at night.'),
  nightFan_each: each(200, 'Night fan', 'One for each 500 m³/h, fitted.'),
  ceilingFan_each: each(150, 'Ceiling or wall fan', 'One for each 20 m² of floor, fitted.'),
  mass_perm2: perArea(15, 'Mass inside', 'By floor area.'),
  lessHeat_each: each(100, 'Less heat inside', 'Lamps and machines changed or moved.'),
  sealing_perm2: perArea(3, 'Sealing leaks', 'By wall area.'),
  coolerFittings_each: each(150, 'Fitting a cooler', 'Water, drain, and an opening for the air to leave.'),
  directCooler_perm3h: number(
    'perm3h',
    { min: 0, max: 100, default: 0.4, usual: [0, 3], step: 0.05 },
    'Direct cooler, by m³/h',
    invented('Evaporative.'),
  ),
  indirectCooler_perm3h: number(
    'perm3h',
    { min: 0, max: 100, default: 1.2, usual: [0, 5], step: 0.05 },
    'Indirect cooler, by m³/h',
    invented('Evaporative, its air stays dry.'),
  ),
  airConditioner_each: each(700, 'Air conditioner, fitted', 'What it costs to have one at all.'),
  airConditioner_perkW: number(
    'perkW',
    { min: 0, max: 10000, default: 250, usual: [0, 1000], step: 10 },
    'The same, by kW of cooling',
    invented('On top of that.'),
  ),
} as const
