import { describe, expect, it } from 'vitest'
import { svgText, wayDrawings, type Drawing, type WayFacts } from '#model/handover/drawing'
import { figure, wordingText } from '#model/basis/words'
import { overfull, piecesOf, placedOn } from '#inside/model/handover/drawing/way/way-facts.ts'
import { expectOnPaper, expectTextOnPaper } from './on-paper.ts'

/* Expected numbers are hand arithmetic on the sizes given here. */

const INSULATION = { thickness_m: 0.1, what: '100 mm of 0.035 W/mK' }
const NOTHING: WayFacts = {
  length_m: 5,
  width_m: 4,
  height_m: 2.8,
  azimuth_deg: 180,
  windows: [
    { side: 'front', faces_deg: 180, area_m2: 1.21, width_m: 1.1, height_m: 1.1 },
    { side: 'left', faces_deg: 270, area_m2: 0.64, width_m: 0.8, height_m: 0.8 },
  ],
  paint: null,
  roofInsulation: null,
  wallInsulation: null,
  shade: null,
  glazing: false,
  opening: null,
  fan: null,
  ceilingFan: null,
  jars: null,
  sealed: false,
  cooler: null,
  conditioner: null,
}
const ALL: Partial<WayFacts> = {
  paint: { coats: 3, wetCoat: '120 µm', wetAll: '360 µm', dry: '200 µm', litres: '2.6 L', primer: '2.5 L' },
  roofInsulation: INSULATION,
  wallInsulation: INSULATION,
  shade: { past_m: 0.15, sunLeft: '27 %' },
  glazing: true,
  opening: { each_m2: 0.5, height_m: 1 },
  fan: {
    fans: 1,
    each: figure(448 / 3600, 'airFlow'),
    inlet_m2: 448 / 3600,
    hole_m2: 896 / 3600,
    stopsAt: '20 °C',
  },
  ceilingFan: { fans: 1, across_m: 1.2, blades_m: 2.5, ceiling: true, least_m: 2.3 },
  jars: { jars: 56, mass: '1000 kg' },
  sealed: true,
  cooler: {
    direct: true,
    flow: '960 m³/h',
    duct_m: 0.26,
    leaving_m2: 0.13,
    water: '6.2 L',
    bled: '33 %',
    mostHumid: '65 %',
    feed: 'DN 15',
    drain: 'DN 20',
  },
  conditioner: null,
}
const CONDITIONER = { cooling: '2700 W', electric: '750 W', drain: 'DN 20' }
const WAYS: Readonly<Record<string, WayFacts>> = {
  ...Object.fromEntries(
    Object.entries(ALL)
      .filter(([, value]) => value !== null)
      .map(([name, value]) => [name, { ...NOTHING, [name]: value } as WayFacts]),
  ),
  conditioner: { ...NOTHING, conditioner: CONDITIONER },
  'all at once': { ...NOTHING, ...ALL },
  'all in a shed of 1.5 × 1 × 1.6 m': { ...NOTHING, ...ALL, length_m: 1.5, width_m: 1, height_m: 1.6 },
  'all in a hall of 50 × 40 × 8 m': {
    ...NOTHING,
    ...ALL,
    length_m: 50,
    width_m: 40,
    height_m: 8,
    opening: { each_m2: 50, height_m: 1 },
    fan: { fans: 256, each: figure(500 / 3600, 'airFlow'), inlet_m2: 35, hole_m2: 70, stopsAt: '20 °C' },
    ceilingFan: { fans: 100, across_m: 1.2, blades_m: 7.7, ceiling: true, least_m: 2.3 },
  },
}

const byId = (drawings: readonly Drawing[], id: string) => drawings.find((drawing) => drawing.id === id)!
const texts = (drawing: Drawing) =>
  drawing.shapes.flatMap((shape) => (shape.kind === 'text' ? [wordingText(shape.text, 'si')] : []))

describe.each(Object.keys(WAYS))('drawings of %s', (name) => {
  const drawings = wayDrawings(WAYS[name]!)

  it('lie within their paper, and so does their text in both systems of units', () => {
    expect(drawings.length).toBeGreaterThanOrEqual(2)
    drawings.forEach(expectOnPaper)
    drawings.forEach(expectTextOnPaper)
  })

  it('name in the key of the plan every mark of plan and section, and are pictures without script', () => {
    const keyed = byId(drawings, 'way-plan')
      .key.map(({ mark }) => mark)
      .join(' ')
    for (const id of ['way-plan', 'way-section'])
      for (const mark of texts(byId(drawings, id)).filter((text) => /^[A-Z]\d$/.test(text)))
        expect(keyed.includes(mark) || keyed.includes(`${mark[0]}1–`), `${mark} of ${keyed}`).toBe(true)
    for (const drawing of drawings)
      expect(svgText(drawing, 'us')).not.toMatch(/<script|href|NaN|undefined|Infinity/)
  })
})

describe('only what was chosen is drawn', () => {
  it('nothing chosen: nothing drawn', () => {
    expect(wayDrawings(NOTHING)).toEqual([])
  })
  it('a ceiling fan alone: plan and section, no opening in either', () => {
    const drawings = wayDrawings(WAYS['ceilingFan']!)
    expect(drawings.map(({ id }) => id)).toEqual(['way-plan', 'way-section'])
    expect(drawings.flatMap(texts).join(' ')).not.toMatch(/N1|F1|D1|R1|I1|S1/)
    expect(texts(byId(drawings, 'way-section'))).toContain('2.5\u00a0m free')
  })
  it('shades for both windows: 1.1 + 2 · 0.15 = 1.4 m, 0.8 + 0.3 = 1.1 m', () => {
    const shades = texts(byId(wayDrawings(WAYS['shade']!), 'way-shade'))
    expect(shades).toEqual(expect.arrayContaining(['S1', 'S2', '1.4\u00a0m', '1.1\u00a0m']))
  })
  it('three coats under the sky, the primer under them', () => {
    const coats = texts(byId(wayDrawings(WAYS['paint']!), 'way-paint')).join('\n')
    expect(coats).toMatch(/coat 3[^]*coat 2[^]*coat 1[^]*primer[^]*roof as it is/)
  })
  it('the cooler with water feed, backflow preventer, float valve, bleed, damper and isolator, all in its key', () => {
    const cooler = byId(wayDrawings(WAYS['cooler']!), 'way-cooler')
    const keyed = cooler.key.map(({ mark }) => mark).join(', ')
    for (const mark of ['SV', 'BP', 'FV', 'BL', 'OF', 'DR', 'DM', 'IS']) {
      expect(texts(cooler)).toContain(mark)
      expect(keyed).toContain(mark)
    }
  })
})

describe('places', () => {
  const facts = WAYS['all at once']!
  it('openings are one low in the front and one high in the back, diagonal, and none over another', () => {
    const front = placedOn(piecesOf(facts), 'front', 5)
    const back = placedOn(piecesOf(facts), 'back', 5)
    const low = front.find(({ mark }) => mark === 'N1')!
    const high = back.find(({ mark }) => mark === 'N2')!
    expect([low.low_m, low.high_m]).toEqual([0.3, 1.3])
    expect(high.high_m).toBeCloseTo(2.7, 9)
    expect(low.at_m).toBeLessThan(2.5)
    expect(high.at_m).toBeGreaterThan(2.5)
    for (const wall of [front, back])
      wall.slice(1).forEach((one, i) => expect(one.at_m).toBeGreaterThan(wall[i]!.at_m + wall[i]!.width_m))
  })
  it('the feed of a cooler ends above the water of its sump, and the bleed steps over it', () => {
    const { shapes } = byId(wayDrawings(WAYS['cooler']!), 'way-cooler')
    const pathsOf = (ink: string, fill: string) =>
      shapes.flatMap((shape) =>
        shape.kind === 'path' && shape.ink === ink && shape.fill === fill ? [shape.points] : [],
      )
    const [feed] = pathsOf('supply', 'none')
    const [water] = pathsOf('line', 'pale')
    expect(feed!.at(-1)![1]).toBeLessThan(water![0]![1])
    const across = feed![0]![1]
    const met = pathsOf('line', 'none').filter((points) =>
      points.some(([x, y], i) => y === across && points[i - 1]?.[0] !== x && points[i + 1]?.[0] !== x),
    )
    expect(met).toHaveLength(1)
  })
  it('the pieces of a chain of dimensions add up to the wall', () => {
    const plan = byId(wayDrawings(WAYS['cooler']!), 'way-plan')
    const pieces_m = plan.shapes
      .flatMap((shape) => (shape.kind === 'text' ? [wordingText(shape.text, 'si')] : []))
      .flatMap((said) => /^(\d+(?:\.\d+)?)\sm$/.exec(said)?.[1] ?? [])
      .map(Number)
      .filter((long_m) => long_m < 4)
    expect(pieces_m.length).toBeGreaterThanOrEqual(5)
    expect(pieces_m.reduce((sum, long_m) => sum + long_m, 0)).toBeCloseTo(2 * 5, 9)
  })
  it('the room on the plan is as long as its scale says: 5 m', () => {
    const plan = byId(wayDrawings(WAYS['opening']!), 'way-plan')
    const room = plan.shapes.find((shape) => shape.kind === 'path' && shape.closed && shape.ink === 'thick')!
    if (room.kind !== 'path') throw new Error('no room')
    expect(room.points[1]![0] - room.points[0]![0]).toBeCloseTo(5000 / plan.scale!, 6)
  })
  it('says so where a wall is too short for all of it', () => {
    const small = WAYS['all in a shed of 1.5 × 1 × 1.6 m']!
    expect(overfull(small).length).toBeGreaterThan(0)
    expect(
      byId(wayDrawings(small), 'way-plan')
        .notes.map((note) => wordingText(note, 'si'))
        .join(' '),
    ).toMatch(/too short/)
  })
})
