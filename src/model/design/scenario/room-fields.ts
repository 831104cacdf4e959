import { ROOF_BUILDS, WALL_BUILDS, type Build } from '#model/building/construction'
import { ROOM_SHAPE_FIELDS } from './room-shape-fields.ts'
import { choice, dayProfile, number, onOff } from './field.ts'
import { figure, short, words } from '#model/basis/words'

/** Gains of the invented demo workshop: one person with tools in the morning and afternoon. */
const WORKSHOP_DAY_W = [
  20, 20, 20, 20, 20, 20, 40, 120, 160, 160, 160, 120, 80, 120, 160, 160, 120, 60, 40, 20, 20, 20, 20, 20,
]

const labelsOf = <Id extends string>(builds: Readonly<Record<Id, Build>>): Record<Id, string> =>
  Object.fromEntries(Object.entries<Build>(builds).map(([id, { label }]) => [id, label])) as Record<
    Id,
    string
  >

const MASS_PLACE_LABELS = {
  inside: 'Inside the insulation',
  through: 'Throughout (solid)',
  bothSides: 'On both sides',
  outside: 'Outside the insulation',
} as const

export const ROOM_FIELDS = {
  length_m: number(
    'm',
    { min: 1, max: 50, default: 5, usual: [2, 15], step: 0.1 },
    'Length',
    'Along the front.',
  ),
  width_m: number('m', { min: 1, max: 50, default: 4, usual: [2, 12], step: 0.1 }, 'Width', 'Front to back.'),
  height_m: number(
    'm',
    { min: 1.5, max: 12, default: 2.4, usual: [2, 4], step: 0.1 },
    'Height',
    'Inside, floor to ceiling.',
  ),
  azimuth_deg: number(
    'deg',
    { min: 0, max: 360, default: 180, usual: [0, 360], step: 5 },
    'Front faces',
    'Clockwise from north: 180 is south.',
  ),
  roofBuild: choice(
    { own: 'My own numbers (U-value, mass)', ...labelsOf(ROOF_BUILDS) },
    'own',
    'Roof is',
    'What the roof is made of, from the inside out; or give its U-value and mass.',
    'What it is made of decides how late and how strongly the day arrives inside.',
  ),
  wallBuild: choice(
    { own: 'My own numbers (U-value, mass)', ...labelsOf(WALL_BUILDS) },
    'own',
    'Walls are',
    'What the walls are made of, from the inside out; or give their U-value and mass.',
  ),
  roofU_Wm2K: number(
    'Wm2K',
    { min: 0.05, max: 8, default: 0.35, usual: [0.1, 4], step: 0.05 },
    'Roof U-value',
    words`Bare steel sheet ${figure(7, 'Wm2K')}, ${short(0.1)} wool ${figure(0.35, 'Wm2K')}.`,
    'Often the cheapest panel of all: better roof insulation can halve the area.',
  ),
  wallU_Wm2K: number(
    'Wm2K',
    { min: 0.05, max: 6, default: 0.45, usual: [0.1, 3], step: 0.05 },
    'Wall U-value',
    words`Single skin of boards ${figure(3, 'Wm2K')}, ${short(0.08)} wool ${figure(0.45, 'Wm2K')}.`,
  ),
  // usual to 0.96: the coatings of the library are 0.955 to 0.981 fresh, and a roof is asked for as it is once dirty
  roofReflectance_frac: number(
    'frac',
    { min: 0.02, max: 0.98, default: 0.3, usual: [0.05, 0.96], step: 0.05 },
    'Roof reflectance',
    'Solar: dark sheet 0.1, weathered metal 0.3, white paint 0.8, a fresh cooling paint 0.93 to 0.96.',
    'A white roof is a baseline you can buy with a brush.',
  ),
  roofEmittance_frac: number(
    'frac',
    { min: 0.05, max: 0.98, default: 0.9, usual: [0.2, 0.95], step: 0.05 },
    'Roof emittance',
    'Thermal: paint 0.9, bare galvanised 0.25.',
  ),
  wallReflectance_frac: number(
    'frac',
    { min: 0.02, max: 0.98, default: 0.4, usual: [0.1, 0.9], step: 0.05 },
    'Wall reflectance',
    'Solar.',
  ),
  windowFront_m2: number(
    'm2',
    { min: 0, max: 100, default: 1.2, usual: [0, 6], step: 0.1 },
    'Window, front',
    'Glass area.',
  ),
  windowRight_m2: number(
    'm2',
    { min: 0, max: 100, default: 0, usual: [0, 6], step: 0.1 },
    'Window, right',
    'Seen from outside, facing the front.',
  ),
  windowBack_m2: number(
    'm2',
    { min: 0, max: 100, default: 0.6, usual: [0, 6], step: 0.1 },
    'Window, back',
    'Glass area.',
  ),
  windowLeft_m2: number(
    'm2',
    { min: 0, max: 100, default: 0, usual: [0, 6], step: 0.1 },
    'Window, left',
    'Seen from outside, facing the front.',
  ),
  windowU_Wm2K: number(
    'Wm2K',
    { min: 0.4, max: 7, default: 2.8, usual: [0.8, 6], step: 0.1 },
    'Window U-value',
    words`Single ${figure(5.7, 'Wm2K')}, double ${figure(2.8, 'Wm2K')}, coated double ${figure(1.2, 'Wm2K')}.`,
  ),
  windowGain_frac: number(
    'frac',
    { min: 0, max: 0.95, default: 0.7, usual: [0.2, 0.87], step: 0.01 },
    'Window solar gain',
    'Share of sunlight that gets in through the bare window.',
  ),
  shading_frac: number(
    'frac',
    { min: 0, max: 1, default: 0.5, usual: [0, 1], step: 0.05 },
    'Left by shading',
    'Share of sunlight that blinds and trees let through; eaves have their own field.',
    'Sunlight through glass is the load that grows fastest.',
  ),
  airChange_1h: number(
    '1h',
    { min: 0.01, max: 20, default: 0.6, usual: [0.1, 4], step: 0.05 },
    'Air changes',
    'Per hour, shut, without wind: tight 0.2, average 0.5, loose shed 1–3.',
  ),
  airChangeWind_1hms: number(
    '1hms',
    { min: 0, max: 2, default: 0.08, usual: [0, 0.5], step: 0.01 },
    'Air changes per m/s',
    'Added per m/s of wind.',
  ),
  nightAirChange_1h: number(
    '1h',
    { min: 0, max: 40, default: 6, usual: [0, 15], step: 0.5 },
    'Night opening',
    'Air changes per hour with windows open at night.',
  ),
  nightVent: onOff(
    false,
    'Open windows at night',
    'Also open the windows on nights when outside is cooler.',
    'Free cooling where nights are cool; it brings in humid air.',
  ),
  gains_W: dayProfile(
    'W',
    { min: 0, max: 20000, default: WORKSHOP_DAY_W },
    'Heat inside',
    'People, tools, lights, goods: W in each hour of the day. A person at light work gives about 75 W of dry heat.',
  ),
  moisture_kgh: number(
    'kgh',
    { min: 0, max: 20, default: 0.05, usual: [0, 1], step: 0.01 },
    'Moisture inside',
    words`Water given off: about ${figure(0.05, 'kgh')} per person at rest.`,
  ),
  contents_Jm2K: number(
    'Jm2K',
    { min: 2000, max: 500000, default: 15000, usual: [5000, 300000], step: 1000 },
    'Contents',
    'Heat capacity of air, furniture and goods per m² of floor.',
  ),
  roofMass_kgm2: number(
    'kgm2',
    { min: 1, max: 1500, default: 25, usual: [5, 500], step: 5 },
    'Roof mass',
    words`Per area of roof: sheet ${figure(6, 'kgm2')}, boards and tiles ${figure(60, 'kgm2')}, ${short(0.15)} concrete ${figure(360, 'kgm2')}.`,
    'Where the mass sits matters more than how much.',
  ),
  roofMassPlace: choice(MASS_PLACE_LABELS, 'inside', 'Roof mass lies', 'On which side of the insulation.'),
  wallMass_kgm2: number(
    'kgm2',
    { min: 1, max: 1500, default: 30, usual: [5, 500], step: 5 },
    'Wall mass',
    words`Per area of wall: boards ${figure(12, 'kgm2')}, timber frame ${figure(35, 'kgm2')}, ${short(0.22)} brick ${figure(375, 'kgm2')}.`,
    'Where the mass sits matters more than how much.',
  ),
  wallMassPlace: choice(MASS_PLACE_LABELS, 'inside', 'Wall mass lies', 'On which side of the insulation.'),
  slabThickness_m: number(
    'm',
    { min: 0.01, max: 0.6, default: 0.1, usual: [0.02, 0.3], step: 0.01 },
    'Floor slab',
    'Thickness.',
  ),
  slabConductivity_WmK: number(
    'WmK',
    { min: 0.05, max: 5, default: 1.35, usual: [0.1, 2.5], step: 0.05 },
    'Slab conductivity',
    words`Concrete ${figure(1.35, 'WmK')} to ${figure(2, 'WmK')}, timber ${figure(0.13, 'WmK')}.`,
  ),
  slabDensity_kgm3: number(
    'kgm3',
    { min: 100, max: 4000, default: 2000, usual: [400, 2400], step: 50 },
    'Slab density',
    words`Concrete ${figure(2000, 'kgm3')} to ${figure(2400, 'kgm3')}, timber ${figure(500, 'kgm3')}.`,
  ),
  slabSpecificHeat_JkgK: number(
    'JkgK',
    { min: 400, max: 4500, default: 1000, usual: [800, 2500], step: 50 },
    'Slab specific heat',
    words`Concrete ${figure(1000, 'JkgK')}, timber ${figure(1600, 'JkgK')}.`,
  ),
  slabInsulation_m2KW: number(
    'm2KW',
    { min: 0, max: 10, default: 0, usual: [0, 5], step: 0.1 },
    'Under-slab insulation',
    'Resistance under the slab.',
    'In summer the ground is a free heat sink: insulation keeps it away.',
  ),
  groundConductivity_WmK: number(
    'WmK',
    { min: 0.2, max: 5, default: 1.5, usual: [0.5, 3.5], step: 0.1 },
    'Ground conductivity',
    words`Clay ${figure(1.5, 'WmK')}, sand or gravel ${figure(2, 'WmK')}, rock ${figure(3.5, 'WmK')}.`,
  ),
  ...ROOM_SHAPE_FIELDS,
} as const
