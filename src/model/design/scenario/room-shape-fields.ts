import { choice, number } from './field.ts'
import { figure, words } from '#model/basis/words'

const BEHIND = {
  outdoors: 'Outdoors',
  unheated: 'An unheated space',
  sameRoom: 'A room kept the same',
} as const

const behind = (side: string) =>
  choice(
    BEHIND,
    'outdoors',
    `Behind the ${side} wall`,
    'Outdoors, a garage or store without heating or cooling, or a room kept as this one is.',
  )

/** What is before the windows, behind the walls, under the floor and inside the room. */
export const ROOM_SHAPE_FIELDS = {
  windowHeight_m: number(
    'm',
    { min: 0.1, max: 6, default: 1, usual: [0.4, 2.4], step: 0.1 },
    'Window height',
    'Of the panes; their width follows from the area. Matters where there is an overhang or a reveal.',
  ),
  overhang_m: number(
    'm',
    { min: 0, max: 6, default: 0, usual: [0, 2], step: 0.1 },
    'Overhang',
    'How far eaves, a balcony or an awning stand out over every window; longer than the window.',
    'Shade that needs no hand: a high summer sun is kept out, a low winter sun is let in.',
  ),
  overhangAbove_m: number(
    'm',
    { min: 0, max: 5, default: 0.2, usual: [0, 1], step: 0.05 },
    'Overhang above the window',
    'From the head of the window up to the overhang.',
  ),
  reveal_m: number(
    'm',
    { min: 0, max: 1, default: 0, usual: [0, 0.4], step: 0.01 },
    'Reveal',
    'How deep the glass sits behind the face of the wall.',
  ),
  behindFront: behind('front'),
  behindRight: behind('right'),
  behindBack: behind('back'),
  behindLeft: behind('left'),
  unheatedShare_frac: number(
    'frac',
    { min: 0, max: 1, default: 0.6, usual: [0.3, 0.9], step: 0.05 },
    'Unheated space follows outdoors',
    '0: as warm as this room, 1: as outdoors. One outside wall 0.4, two with a door 0.6, three or a loft 0.8 (EN 12831-1, from memory).',
  ),
  floorKind: choice(
    { ground: 'On the ground', raised: 'Raised, air below' },
    'ground',
    'Floor lies',
    'A floor on posts or over an open crawl space has outdoor air below it.',
    'The ground is a free heat sink in summer; a raised floor has none.',
  ),
  partition_m2: number(
    'm2',
    { min: 0, max: 500, default: 0, usual: [0, 60], step: 1 },
    'Inner walls',
    'Area of walls inside the room, one face counted.',
    'Mass inside carries the night’s cold into the day.',
  ),
  partitionMass_kgm2: number(
    'kgm2',
    { min: 1, max: 1000, default: 150, usual: [20, 400], step: 10 },
    'Inner wall mass',
    words`Boards on studs ${figure(25, 'kgm2')}, brick of half a length ${figure(200, 'kgm2')}.`,
  ),
  ventHours: choice(
    { night: 'From sunset to sunrise', clock: 'By the clock' },
    'night',
    'Windows may open',
    'When windows are opened for cooling, where they are. They shut by themselves when outdoors is warmer.',
  ),
  ventFrom_h: number(
    'h',
    { min: 0, max: 24, default: 21, usual: [0, 24], step: 0.5 },
    'Windows open from',
    'Local standard time.',
  ),
  ventTo_h: number(
    'h',
    { min: 0, max: 24, default: 8, usual: [0, 24], step: 0.5 },
    'Windows shut at',
    'Local standard time.',
  ),
} as const
