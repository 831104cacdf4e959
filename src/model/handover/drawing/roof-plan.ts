import { figure, words } from '#model/basis/words'
import { EDGE_m, MODULE_GAP_m, ROW_GAP_m } from '#model/panels/loop'
import { asideOf_m, FIXING_INSET_frac, planOf, THROUGH_m, type PlantFacts } from './facts.ts'
import { northArrow } from './north.ts'
import { keyOf, notesOf, type Sizes } from './roof-notes.ts'
import { roofPipes, type RowEnds } from './roof-pipes.ts'
import { toScale, type Rule } from './scales.ts'
import {
  across,
  box,
  disc,
  head,
  label,
  path,
  upright,
  type Drawing,
  type Shape,
  type Spot,
} from './shapes.ts'

/** Paper the roof itself may take, mm; dimensions go around it. */
const PAPER = { across: 120, down: 66 }
const MARGIN = { left: 22, right: 30, top: 14, bottom: 15 }

/** Roof from above with modules, clearances, fall and where the pipes arrive; to scale. */
export const roofPlan = (facts: PlantFacts): Drawing => toScale((rule) => planAt(facts, rule))

function planAt(facts: PlantFacts, rule: Rule): Drawing {
  const field = planOf(facts)
  const roof = facts.roof ?? {
    across_m: field.across_m + 2 * EDGE_m,
    down_m: field.down_m + 2 * EDGE_m,
  }
  const whole = {
    across: Math.max(roof.across_m, field.across_m),
    down: Math.max(roof.down_m, field.down_m),
  }
  const scale = rule.scaleFor(whole, PAPER)
  const mm = (length_m: number): number => (1000 * length_m) / scale
  const center: Spot = [MARGIN.left + mm(whole.across) / 2, MARGIN.top + mm(whole.down) / 2]
  const corner = (size: { across_m: number; down_m: number }): Spot => [
    center[0] - mm(size.across_m) / 2,
    center[1] - mm(size.down_m) / 2,
  ]
  const at = { roof: corner(roof), field: corner(field) }
  const width = MARGIN.left + mm(whole.across) + MARGIN.right
  return {
    id: 'roof-plan',
    title: facts.roof === null ? 'Panel field from above' : 'Roof from above',
    width: Math.max(width, 90),
    height: MARGIN.top + mm(whole.down) + MARGIN.bottom,
    scale,
    summary: words`${facts.roof === null ? 'Panel field' : 'Roof'} from above: ${String(facts.rows.reduce((sum, n) => sum + n, 0))} modules in rows of ${facts.rows.join(' + ')}, field ${figure(field.across_m, 'span')} by ${figure(field.down_m, 'span')}.`,
    notes: notesOf(facts, roof, field),
    key: keyOf(facts),
    shapes: [
      box(at.roof, mm(roof.across_m), mm(roof.down_m), facts.roof === null ? 'hidden' : 'thick'),
      ...modulesOf(facts, at.field, mm),
      ...roofPipes(endsOf(facts, at.field, mm), mm(asideOf_m(facts)), mm(THROUGH_m)),
      ...corners(facts, at.field, mm),
      ...dimensionsOf(facts, { roof, field }, at, mm),
      ...northArrow(facts.azimuth_deg, [Math.max(width, 90) - 11, 12]),
    ],
  }
}

function modulesOf(facts: PlantFacts, [x, y]: Spot, mm: (length_m: number) => number): Shape[] {
  const flat = Math.cos((facts.tilt_deg * Math.PI) / 180)
  const [w, l, gap] = [mm(facts.moduleWidth_m), mm(facts.moduleLength_m * flat), mm(ROW_GAP_m * flat)]
  const pitch = w + mm(MODULE_GAP_m)
  let number = 0
  return facts.rows.flatMap((modules, row) => {
    const top = y + row * (l + gap)
    const right = x + modules * pitch - mm(MODULE_GAP_m)
    const inset = Math.min(w, l) * FIXING_INSET_frac
    return [
      ...Array.from({ length: modules }, (_, i): Shape[] => {
        number++
        const left = x + i * pitch
        const corners: Spot[] = [
          [left, top + inset],
          [left + w, top + inset],
          [left, top + l - inset],
          [left + w, top + l - inset],
        ]
        return [
          box([left, top], w, l, 'line', 'pale'),
          ...corners.map((spot) => disc(spot, 0.5, 'ink', 'thin')),
          label([left + w / 2, top + l / 2 + 1], String(number)),
        ]
      }).flat(),
      ...railsOf(facts, row, [x, top], [right, top + l], inset, mm),
      path(
        [
          [x, top + l],
          [right, top + l],
        ],
        'supply',
      ),
      path(
        [
          [x, top],
          [right, top],
        ],
        'return',
      ),
    ]
  })
}

/** Fed and drained corner of each row on paper. */
function endsOf(facts: PlantFacts, [x, y]: Spot, mm: (length_m: number) => number): RowEnds[] {
  const flat = Math.cos((facts.tilt_deg * Math.PI) / 180)
  const [l, gap] = [mm(facts.moduleLength_m * flat), mm(ROW_GAP_m * flat)]
  const pitch = mm(facts.moduleWidth_m + MODULE_GAP_m)
  return facts.rows.map((modules, row) => {
    const top = y + row * (l + gap)
    return { fed: [x, top + l], drained: [x + modules * pitch - mm(MODULE_GAP_m), top] }
  })
}

const corners = (facts: PlantFacts, at: Spot, mm: (length_m: number) => number): Shape[] =>
  endsOf(facts, at, mm).map(({ drained }) => disc(drained, 1, 'paper'))

/** Two rails under a row, past its modules at both ends, with their feet. */
function railsOf(
  facts: PlantFacts,
  row: number,
  [x, top]: Spot,
  [right, foot]: Spot,
  inset: number,
  mm: (length_m: number) => number,
): Shape[] {
  const [from, to] = [x - mm(facts.railPast_m), right + mm(facts.railPast_m)]
  const feet = facts.feetPerRail[row]!
  return [top + inset, foot - inset].flatMap((y) => [
    path(
      [
        [from, y],
        [to, y],
      ],
      'hidden',
    ),
    ...Array.from({ length: feet }, (_, i) => {
      const at = from + ((to - from) * (i + 0.5 / feet)) / (feet - 1 + 1 / feet)
      return box([at - 0.9, y - 0.9], 1.8, 1.8, 'line', 'paper')
    }),
  ])
}

function dimensionsOf(
  facts: PlantFacts,
  { roof, field }: { roof: Sizes; field: Sizes },
  at: { roof: Spot; field: Spot },
  mm: (length_m: number) => number,
): Shape[] {
  const [fx, fy] = at.field
  const [rx, ry] = at.roof
  const [fw, fd, rw, rd] = [mm(field.across_m), mm(field.down_m), mm(roof.across_m), mm(roof.down_m)]
  const top = Math.min(fy, ry)
  const bottom = Math.max(fy + fd, ry + rd)
  const left = Math.min(fx, rx)
  const right = Math.max(fx + fw, rx + rw)
  const side_m = (roof.across_m - field.across_m) / 2
  const end_m = (roof.down_m - field.down_m) / 2
  const inside = facts.roof !== null
  return [
    ...across([fx, top], [fx + fw, top], -9, words`${figure(field.across_m, 'span')}`),
    ...across(
      [fx, top],
      [fx + mm(facts.moduleWidth_m), top],
      -3,
      words`${figure(facts.moduleWidth_m, 'span')}`,
    ),
    ...upright([left, fy], [left, fy + fd], -5, words`${figure(field.down_m, 'span')}`),
    ...(inside
      ? [
          ...across([rx, bottom], [rx + rw, bottom], 13, words`${figure(roof.across_m, 'span')}`),
          ...upright([left, ry], [left, ry + rd], -13, words`${figure(roof.down_m, 'span')}`),
        ]
      : []),
    ...(inside && side_m > 0
      ? across([rx, bottom], [fx, bottom], 6, words`${figure(side_m, 'span', 2)}`)
      : []),
    ...(inside && end_m > 0
      ? upright([right, fy + fd], [right, ry + rd], 6, words`${figure(end_m, 'span', 2)}`)
      : []),
    path(
      [
        [right + 12, fy + 2],
        [right + 12, fy + Math.max(fd - 2, 14)],
      ],
      'line',
    ),
    head([right + 12, fy + Math.max(fd - 2, 14)], [0, 1]),
    label(
      [right + 17, fy + Math.max(fd, 16) / 2],
      facts.tilt_deg > 0 ? words`fall ${figure(facts.tilt_deg, 'deg')}` : 'flat: shim 1 : 50 to drain',
      'middle',
      { turned: true },
    ),
  ]
}
