import { closedSet } from './closed-set.ts'
import { words, type Text } from '#model/basis/words'
import { drainsBack, type PlantFacts } from './facts.ts'
import { roomKey, roomSide, storeBox } from './schematic-store.ts'
import { box, disc, label, path, type Drawing, type Shape, type Spot } from './shapes.ts'
import { flowing, mover, sensor, unit, valve } from './symbols.ts'

/** Rows drawn; of more, the first two and the last. */
const MOST_ROWS = 3
const ROW = { left: 62, right: 132, high: 8, pitch: 15, top: 13 }
const X = { supply: 16, back: 148, home: 158 }

interface DrawnRow {
  readonly number: number
  readonly modules: number
}

function drawnRows(rows: readonly number[]): DrawnRow[] {
  const all = rows.map((modules, i) => ({ number: i + 1, modules }))
  return all.length <= MOST_ROWS ? all : [all[0]!, all[1]!, all.at(-1)!]
}

/** The loop with every valve, vent, drain and sensor, each with its mark; not to scale. */
export function schematic(facts: PlantFacts): Drawing {
  const rows = drawnRows(facts.rows)
  const storeTop = ROW.top + rows.length * ROW.pitch + 12
  const store = storeBox(facts, storeTop)
  return {
    id: 'schematic',
    title: 'The loop: every valve, vent, drain and sensor',
    width: 182,
    height: storeTop + (facts.roomUnit === null ? 38 : 46),
    scale: null,
    summary: words`Schematic of the ${facts.liquid ? 'water' : 'air'} loop: ${facts.mover}, ${String(facts.rows.length)} ${facts.rows.length === 1 ? 'row' : 'rows'} of panels, store, valves and sensors as listed below.`,
    notes: [
      ...(facts.rows.length > MOST_ROWS
        ? [
            words`Of ${String(facts.rows.length)} rows the first two and the last are drawn; the others are the same.`,
          ]
        : []),
      words`Flow ${facts.flow} in all. ${facts.ducting === 'pipe' ? 'Pipe' : 'Duct'} ${facts.pipe}; headers ${facts.header}.`,
    ],
    key: [...keyOf(facts), ...store.key, ...roomKey(facts)],
    shapes: [
      ...rows.flatMap((row, i) => rowShapes(facts, row, ROW.top + i * ROW.pitch)),
      ...store.shapes,
      ...mainPipes(facts, rows.length, storeTop),
      ...store.over,
      ...roomSide(facts, storeTop),
      ...sensor([172, storeTop + 14], 'S7', true),
      label([172, storeTop + 20], 'outdoors'),
    ],
  }
}

function rowShapes(facts: PlantFacts, { number, modules }: DrawnRow, y: number): Shape[] {
  const low = y + ROW.high - 1
  const high = y + 1
  return [
    path(
      [
        [X.supply, low],
        [ROW.left, low],
      ],
      'supply',
    ),
    ...(facts.liquid || facts.rows.length > 1 ? valve([40, low], `B${number}`) : []),
    flowing([52, low], [1, 0]),
    path(
      [
        [ROW.right, high],
        [X.back, high],
      ],
      'return',
    ),
    flowing([142, high], [1, 0]),
    box([ROW.left, y], ROW.right - ROW.left, ROW.high, 'line', 'pale'),
    label(
      [(ROW.left + ROW.right) / 2, y + 5],
      `row ${number}: ${modules} ${modules === 1 ? 'module' : 'modules'}`,
    ),
    ...(facts.liquid
      ? [
          path(
            [
              [ROW.right + 3, high],
              [ROW.right + 3, high - 3.5],
            ],
            'line',
          ),
          disc([ROW.right + 3, high - 5], 1.5, drainsBack(facts) ? 'ink' : 'paper'),
          label([ROW.right + 6, high - 4], drainsBack(facts) ? 'PL' : `A${number}`, 'start'),
        ]
      : []),
    ...(number === 1 ? sensor([76, y], 'S1') : []),
  ]
}

function mainPipes(facts: PlantFacts, drawn: number, top: number): Shape[] {
  const first = ROW.top + ROW.high - 1
  const suction = top + 4
  const liquid = facts.liquid
  return [
    path(
      [
        [100, suction],
        [X.supply, suction],
        [X.supply, first],
      ],
      'supply',
    ),
    ...returnHome(facts, drawn, top),
    flowing([X.supply, top - 8], [0, -1]),
    ...(liquid ? valve([93, suction], 'V1') : []),
    ...unit([80, suction - 2.5], 7, 5, liquid ? 'ST' : 'FI'),
    ...mover([68, suction], facts.mover === 'pump' ? 'P1' : 'FN', -1),
    ...(liquid ? valve([56, suction], 'V2') : []),
    ...unit([40, suction - 2.5], 9, 5, 'FM'),
    ...sensor([30, suction], 'S3'),
    ...(liquid ? [...sensor([75, suction], 'G1', false), ...sensor([51.5, suction], 'G2', false)] : []),
    ...sensor(
      [facts.tank === null ? 130 : 137, facts.tank === null ? top + 26 : top - 3],
      'S4',
      facts.tank !== null,
    ),
    ...(liquid
      ? [
          path([
            [X.supply, suction],
            [X.supply, suction + 8],
          ]),
          ...valve([X.supply, suction + 6], 'D1', true),
        ]
      : [...valve([56, suction], 'V1'), ...valve([drawn === 1 ? X.back : X.home, top + 12], 'V2', true)]),
    ...(facts.glycol && facts.tank === null ? closedSet(suction) : []),
  ]
}

/**
 * One row: straight down. Several: down to a run below all rows that begins at the one fed first, which so is drained last.
 * Into a tank over its rim and down to the cold end; into slab or mass at its side.
 */
function returnHome({ tank }: PlantFacts, drawn: number, top: number): Shape[] {
  const x = drawn === 1 ? X.back : X.home
  const into: Spot[] =
    tank === null
      ? [
          [x, top + 26],
          [126, top + 26],
        ]
      : [
          [x, top - 3],
          [122, top - 3],
          [122, top + 28],
        ]
  if (drawn === 1)
    return [path([[X.back, ROW.top + 1], ...into], 'return'), flowing([X.back, top - 6], [0, 1])]
  const run = ROW.top + drawn * ROW.pitch - 3
  const downAt = (row: number): number => X.home - ((X.home - X.back) * row) / (drawn - 1)
  return [
    path([[X.back, run], [X.home, run], ...into], 'return'),
    ...Array.from({ length: drawn }, (_, row): Shape => {
      const y = ROW.top + row * ROW.pitch + 1
      return path(
        [
          [X.back, y],
          [downAt(row), y],
          [downAt(row), run],
        ],
        'return',
      )
    }),
    flowing([X.home, top - 6], [0, 1]),
  ]
}

function keyOf(facts: PlantFacts): { mark: string; what: Text }[] {
  const many = facts.rows.length
  const rows = many === 1 ? '1' : `1–${many}`
  if (!facts.liquid)
    return [
      { mark: 'FN', what: 'fan' },
      { mark: 'FI', what: 'filter before the fan' },
      { mark: 'FM', what: 'place to measure the air flow' },
      ...(many > 1 ? [{ mark: `B${rows}`, what: 'damper of each row' }] : []),
      { mark: 'V1, V2', what: 'dampers that shut while the fan is off' },
      { mark: sensorMarks(facts), what: 'sensors, as listed' },
    ]
  return [
    { mark: 'V1, V2', what: 'shut-off valves either side of the pump; V2 throttles it' },
    { mark: 'ST', what: 'strainer before the pump' },
    { mark: 'P1', what: 'pump of the panel loop' },
    { mark: 'FM', what: many === 1 ? 'flow meter' : 'flow meter of all rows together' },
    {
      mark: 'G1, G2',
      what: 'cocks of the difference gauge: before P1, and after V2, so that it reads what the loop asks for',
    },
    {
      mark: `B${rows}`,
      what:
        many === 1
          ? 'shut-off valve of the row'
          : 'shut-off and balancing valve of each row, with its flow scale',
    },
    drainsBack(facts)
      ? { mark: 'PL', what: 'plug at each high corner, for the leak test alone' }
      : { mark: `A${rows}`, what: ventWords(facts) },
    {
      mark: 'D1',
      what: drainsBack(facts)
        ? 'drain valve at the lowest point'
        : 'filling and drain valve at the lowest point',
    },
    ...(facts.glycol && facts.tank === null
      ? [{ mark: 'EX, RV', what: 'expansion vessel and relief valve, piped to a can' }]
      : []),
    { mark: sensorMarks(facts), what: 'sensors, as listed' },
  ]
}

/** A tank has one at its bottom too; where M1 mixes, one in what it mixed. */
const sensorMarks = ({ tank, drained }: PlantFacts): string =>
  `S1–${tank === null ? 'S7' : drained ? 'S8' : 'S9'}`

/** Above an open tank the loop is under suction while it stays full: a vent that opens by itself would let air in. */
function ventWords({ tank }: PlantFacts): string {
  return tank === null
    ? 'air vent at each high corner'
    : 'air vent at each high corner, opened by hand to fill and to drain, else shut'
}
