import { choice, number, text } from './field.ts'
import { WAY_FIELD } from './way-field.ts'

/** The job and its site. Ranges, words and defaults: see `fields.ts`. */
export const JOB_FIELDS = {
  name: text('Untitled', 80, 'Name', 'What you call this design.'),
  note: text('', 2000, 'Note', 'Anything the builder should know.'),
  way: WAY_FIELD,
} as const

export const SITE_FIELDS = {
  terrain: choice(
    { open: 'Open country', suburb: 'Suburb or trees', city: 'City' },
    'suburb',
    'Surroundings',
    'What the wind crosses before it reaches the panel.',
    'Sheltered panels keep more of their cold below air temperature and give off less heat above it.',
  ),
  horizon_deg: number(
    'deg',
    { min: 0, max: 60, default: 5, usual: [0, 40], step: 1 },
    'Horizon',
    'How high trees, hills and walls stand all round, above the horizontal.',
    'The low sky they hide is replaced by something as warm as the air.',
  ),
  albedo_frac: number(
    'frac',
    { min: 0, max: 0.99, default: 0.2, usual: [0.1, 0.6], step: 0.01 },
    'Ground reflectance',
    'Share of sunlight the ground around sends back: 0.2 grass, 0.35 dry sand, 0.4 to 0.7 old snow, 0.8 to 0.95 fresh snow (Oke 1987, from memory).',
  ),
  wholeYear_K: number(
    'K',
    { min: -5, max: 5, default: 0, usual: [-2, 3], step: 0.5 },
    'Warmer all year',
    'Adds this much to the temperature and the dew point of every hour.',
    'A kelvin in the means can double the area.',
  ),
  hotSpell_K: number(
    'K',
    { min: -3, max: 10, default: 0, usual: [-2, 6], step: 0.5 },
    'Hotter spells',
    'Adds this much to the hottest spells of the year: a stress test. Below 0 for a mild year.',
    'A design that only holds a typical year may fail in a hot one.',
  ),
  moreHumid_K: number(
    'K',
    { min: 0, max: 10, default: 0, usual: [0, 6], step: 0.5 },
    'More humid',
    'Raises every dew point by this much (never above the air).',
    'Humid air closes the window to the sky.',
  ),
  windFactor_frac: number(
    'frac',
    { min: 0, max: 2, default: 1, usual: [0.2, 1.5], step: 0.05 },
    'Wind factor',
    'Multiplies the wind of the weather file: 0.3 for a still year.',
  ),
} as const
