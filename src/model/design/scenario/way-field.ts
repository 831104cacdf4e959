import { several } from './field.ts'

/** Changes of the building or its use that a way may have, as they are called. */
export const MEASURE_NAMES = {
  paintRoof: 'Paint the roof with your coating',
  insulateRoof: 'Insulate the roof',
  insulateWalls: 'Insulate the walls',
  shade: 'Shade the windows outside',
  glazing: 'Reflective film and a second pane',
  mass: 'Add mass inside (water jars, masonry)',
  fewerGains: 'Give off less heat inside',
  airtight: 'Seal the leaks',
  nightOpening: 'Open windows or vents at night',
  nightFan: 'Night fan',
  ceilingFan: 'Ceiling or wall fan',
} as const

/** What may cool the room beside them; a way has one of these at most. */
export const PLANT_NAMES = {
  panels: 'panels',
  direct: 'direct evaporative cooler',
  indirect: 'indirect evaporative cooler',
  airConditioner: 'small air conditioner',
} as const

export type MeasureId = keyof typeof MEASURE_NAMES
export type WayPlant = keyof typeof PLANT_NAMES
export type MachineId = Exclude<WayPlant, 'panels'>
/** One part of a way. */
export type WayPart = MeasureId | WayPlant

export const WAY_NAMES: Readonly<Record<WayPart, string>> = { ...MEASURE_NAMES, ...PLANT_NAMES }

/** The way taken. The room of the description is the room as it is; what is simulated has both. */
export const WAY_FIELD = several(
  { ...MEASURE_NAMES, ...PLANT_NAMES },
  [],
  'Way taken',
  'Measures and plant that are to keep the room cool, beside the room as it is. Nothing: panels are sized for the room as it is.',
  'What is simulated is the room with these. Taken back, the room is as it was.',
)
