import { UNIT_SYMBOLS, type Unit } from '#model/basis/units'

/**
 * One name for each quantity, as page, shell, sheet and documents use it. `instead` lists words that mean the same and
 * are therefore not used in labels, columns and help (a test looks).
 */
export interface GlossaryEntry {
  readonly name: string
  readonly unit: Unit | null
  readonly meaning: string
  /** Columns of the command line that hold it. */
  readonly columns?: readonly string[]
  readonly instead?: readonly string[]
}

/** In the order of the work: weather, coating, panel, plant, room, answer. */
export const GLOSSARY: readonly GlossaryEntry[] = [
  {
    name: 'air temperature',
    unit: 'C',
    meaning: 'Dry-bulb temperature of the outdoor air in the shade.',
    columns: ['airTemp_C', 'outdoor_C'],
    instead: ['ambient temperature'],
  },
  {
    name: 'dew point',
    unit: 'C',
    meaning: 'Temperature at which the air would begin to wet a surface.',
    columns: ['dewPoint_C'],
  },
  {
    name: 'irradiance',
    unit: 'Wm2',
    meaning: 'Power of sunlight on a surface of one square metre. Sunshine is hours, never W/m².',
    instead: ['insolation', 'solar gain on the plane'],
  },
  { name: 'sunshine', unit: 'h', meaning: 'Hours in which the sun casts a shadow.' },
  {
    name: 'sky longwave',
    unit: 'Wm2',
    meaning: 'Infrared that the sky sends down on a level surface.',
    columns: ['skyLongwave_Wm2'],
    instead: ['atmospheric radiation', 'back radiation', 'counter-radiation'],
  },
  {
    name: 'sky temperature',
    unit: 'C',
    meaning: 'Temperature of a black sky that would send the same longwave.',
    columns: ['skyTemp_C'],
  },
  {
    name: 'infrared window',
    unit: null,
    meaning: 'Wavelengths of 8 to 13 µm, in which clear dry air lets heat through to space.',
  },
  {
    name: 'cloud',
    unit: 'frac',
    meaning: 'Share of the sky hidden by opaque cloud.',
    columns: ['cloud_frac'],
  },
  {
    name: 'solar reflectance',
    unit: 'frac',
    meaning: 'Share of sunlight that a coating sends back.',
    columns: ['solarReflectance_frac'],
    instead: ['whiteness'],
  },
  {
    name: 'emittance',
    unit: 'frac',
    meaning: 'Infrared a surface radiates as a share of what a black one would at its temperature.',
    columns: ['emittance_frac', 'windowEmittance_frac', 'offWindowEmittance_frac'],
    instead: ['emissivity of the coating'],
  },
  {
    name: 'equilibrium temperature',
    unit: 'C',
    meaning: 'Temperature of a panel with no flow: it gives off as much heat as it takes in.',
    columns: ['equilibrium_C'],
    instead: ['stagnation temperature'],
  },
  {
    name: 'conductance',
    unit: 'Wm2K',
    meaning:
      'Heat given off per square metre for each kelvin that the plate is above its equilibrium temperature.',
    columns: ['conductance_Wm2K'],
  },
  {
    name: 'heat given off',
    unit: 'W',
    meaning:
      'Heat that leaves the panels to sky and air together; by the hour in W, in a month or a year in kWh.',
    columns: ['panelHeat_W', 'panelHeat_kWh', 'heatAtPlate_Wm2', 'measuredHeat_W', 'predictedHeat_W'],
    instead: [
      'heat shed',
      'heat to the sky',
      'heat sent to the sky',
      'heat removed by the panels',
      'heat rejected',
      'cooling power',
    ],
  },
  {
    name: 'heat taken from the room',
    unit: 'W',
    meaning: 'Heat that the delivery takes out of the room into the store or the building.',
    columns: ['delivered_W', 'delivered_kWh'],
  },
  {
    name: 'field factor',
    unit: 'frac',
    meaning:
      'Share of the calculated heat given off that is counted on, because field tests read lower than the calculation.',
  },
  {
    name: 'panel area',
    unit: 'm2',
    meaning: 'Area of all panels, seen square on.',
    columns: ['areaNeeded_m2', 'areaBuilt_m2'],
    instead: ['collector area', 'aperture'],
  },
  {
    name: 'flow',
    unit: 'kgs',
    meaning: 'Mass of fluid that passes all panels in a second.',
    columns: ['flow_kgs'],
  },
  {
    name: 'store',
    unit: 'm3',
    meaning: 'What keeps the cold until it is wanted: a tank, a slab or the building.',
    columns: ['storeVolume_m3', 'store_C'],
    instead: ['thermal battery'],
  },
  {
    name: 'setpoint',
    unit: 'C',
    meaning: 'Room temperature above which cold is let in.',
    instead: ['set point', 'set-point'],
  },
  {
    name: 'room temperature',
    unit: 'C',
    meaning: 'What a person feels in the room: the mean of its air and its surfaces (operative temperature).',
    columns: ['room_C', 'roomDoNothing_C', 'peak_C', 'doNothingPeak_C'],
  },
  {
    name: 'limit',
    unit: 'C',
    meaning: 'Room temperature that the target allows; for an adaptive target it moves with the weather.',
  },
  {
    name: 'hours over the limit',
    unit: 'h',
    meaning: 'Hours of the year, of those that count, in which the room is above its limit.',
    columns: ['hoursOver_h', 'doNothingHoursOver_h'],
    instead: ['overheating hours', 'hours of exceedance'],
  },
  {
    name: 'running plan',
    unit: null,
    meaning: 'When the pump may run: by night, all day, or in hours of your own.',
  },
  {
    name: 'range',
    unit: null,
    meaning: 'Areas that one, five and nine in ten draws of the uncertain inputs stay under.',
    columns: ['areaLow10_m2', 'areaMiddle50_m2', 'areaHigh90_m2'],
    instead: ['error bar'],
  },
]

/** A unit as it is printed: a share has none, so its range is given. */
export function unitText(unit: Unit | null): string {
  return unit === null ? '' : unit === 'frac' ? '0…1' : UNIT_SYMBOLS[unit]
}

/** The glossary as a Markdown page. */
export function glossaryText(): string {
  const rows = GLOSSARY.map(
    ({ name, unit, meaning, columns }) =>
      `| ${name} | ${unitText(unit)} | ${meaning} | ${(columns ?? []).map((c) => `\`${c}\``).join(', ')} |`,
  )
  return [
    '# Glossary',
    '',
    'One name for each quantity, on page, sheet and command line. Made from `units/glossary.ts` by `npm run -s glossary`.',
    '',
    '| name | unit | meaning | columns |',
    '| --- | --- | --- | --- |',
    ...rows,
    '',
  ].join('\n')
}
