import { choice, number } from './field.ts'
import { figure, short, words } from '#model/basis/words'

/** The panel as it is built and placed. Ranges, words and defaults: see `fields.ts`. */
export const PANEL_FIELDS = {
  tilt_deg: number(
    'deg',
    { min: 0, max: 90, default: 5, usual: [0, 45], step: 1 },
    'Tilt',
    '0 is flat, facing straight up. A few degrees let water run off.',
    'Tilt turns the panel from the cold zenith to the warm horizon.',
  ),
  azimuth_deg: number(
    'deg',
    { min: 0, max: 360, default: 0, usual: [0, 360], step: 5 },
    'Facing',
    'The way the tilted panel faces, clockwise from north. Away from the noon sun is coolest.',
  ),
  height_m: number(
    'm',
    { min: 0.3, max: 30, default: 3, usual: [1, 8], step: 0.5 },
    'Height above ground',
    'Where the wind is taken.',
  ),
  windModel: choice(
    {
      watmuff1977: 'Watmuff 1977',
      mcAdams1954: 'McAdams 1954',
      test1981: 'Test 1981',
      sharplesCharlesworth1998: 'Sharples & Charlesworth 1998',
      kumarMullick2010: 'Kumar & Mullick 2010',
    },
    'watmuff1977',
    'Wind formula',
    'How fast wind carries heat: published slopes differ by more than half.',
  ),
  windExposure_frac: number(
    'frac',
    { min: 0.1, max: 2, default: 1, usual: [0.3, 1.5], step: 0.05 },
    'Wind exposure',
    'Below 1 behind a parapet, above 1 on a ridge.',
  ),
  backLoss_Wm2K: number(
    'Wm2K',
    { min: 0, max: 15, default: 0.8, usual: [0.2, 5], step: 0.1 },
    'Back loss',
    words`Heat through the back: ${figure(0.8, 'Wm2K')} is about ${short(0.04)} of foam.`,
    'Cold leaks here once the plate is colder than the air.',
  ),
  heatCapacity_Jm2K: number(
    'Jm2K',
    { min: 500, max: 60000, default: 8000, usual: [2000, 20000], step: 500 },
    'Heat capacity',
    'Plate and the fluid in it.',
  ),
  moduleLength_m: number(
    'm',
    { min: 0.3, max: 6, default: 1.5, usual: [1, 3], step: 0.05 },
    'Module length',
    'Along the risers.',
  ),
  moduleWidth_m: number(
    'm',
    { min: 0.2, max: 3, default: 1, usual: [0.5, 1.5], step: 0.05 },
    'Module width',
    'Across the risers.',
  ),
  freeArea_m2: number(
    'm2',
    { min: 0, max: 1000, default: 0, usual: [0, 120], step: 1 },
    'Free for panels',
    'Roof or ground that panels may cover, without edges, shade and ways to walk. 0: as much as the room’s own roof.',
    'A panel that does not fit is said in the answer and stamped on the sheet.',
  ),
  fieldFactor_frac: number(
    'frac',
    { min: 0.4, max: 1, default: 0.85, usual: [0.6, 1], step: 0.01 },
    'Field factor',
    'Heat that a built panel gives off over that of an ideal one. 0.85 is applied: the middle of the 0.7 to 1 that the range draws. Published field tests by themselves give 0.77 to 0.83.',
    'Below 1 asks for more area. To size by the field tests alone set 0.8; 1 trusts the physics alone.',
  ),
} as const
