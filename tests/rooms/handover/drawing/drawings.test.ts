import { describe, expect, it } from 'vitest'
import { svgText, type Drawing } from '#model/handover/drawing'
import { builderSheet } from '#model/handover/sheet'
import { wordingText } from '#model/basis/words'
import { answerFor } from '../sheet/sheet-answers.ts'
import { expectOnPaper, expectTextOnPaper } from './on-paper.ts'

/* Expected numbers are hand arithmetic on the sizes of the scenario, or exact. */

const PLANTS: Readonly<Record<string, readonly [number, Readonly<Record<string, string>>]>> = {
  'two rows and a tank': [16, { 'store.autoVolume': 'false', 'store.volume_m3': '1.5' }],
  'glycol under a film, tank outdoors': [
    8,
    {
      'loop.fluid': 'glycol',
      'plan.freeze': 'glycol',
      'cover.kind': 'film',
      'panel.tilt_deg': '15',
      'store.place': 'outside',
    },
  ],
  'serpentine into the slab': [13, { 'store.kind': 'slab', 'loop.layout': 'serpentine' }],
  'air to the building': [
    6,
    {
      'store.kind': 'building',
      'loop.fluid': 'air',
      'loop.layout': 'wetted',
      'loop.tubeOuterDiameter_m': '0.05',
      'loop.tubeInnerDiameter_m': '0.045',
    },
  ],
  'five rows on free ground, low': [60, { 'panel.freeArea_m2': '100', 'panel.height_m': '0.5' }],
}

const sheetOf = (name: string) => builderSheet(answerFor(...PLANTS[name]!))!
const byId = (drawings: readonly Drawing[], id: string) => drawings.find((drawing) => drawing.id === id)!
const texts = (drawing: Drawing, system: 'si' | 'us' = 'si') =>
  drawing.shapes.flatMap((shape) => (shape.kind === 'text' ? [wordingText(shape.text, system)] : []))

describe.each(Object.keys(PLANTS))('drawings of %s', (name) => {
  const { drawings } = sheetOf(name)

  it('are six, each within its paper and no wider than A4 or Letter between their margins', () => {
    expect(drawings.map(({ id }) => id)).toEqual([
      'roof-plan',
      'section',
      'module',
      'schematic',
      'build-up',
      'wiring',
    ])
    drawings.forEach(expectOnPaper)
  })

  it('have no text that runs out over the edge, in either system of units', () => {
    drawings.forEach(expectTextOnPaper)
  })

  it('mark in the loop what the key names, and name in the key what is marked', () => {
    const loop = byId(drawings, 'schematic')
    const marks = texts(loop).flatMap((text) => /^([A-Z]{1,2}\d?)(:|$)/.exec(text)?.[1] ?? [])
    const keyed = loop.key.map(({ mark }) => mark).join(' ')
    for (const mark of marks) {
      const known = new RegExp(`\\b${mark}\\b`).test(keyed)
      const within = /^[SAB]\d$/.test(mark) && keyed.includes(`${mark[0]}1`)
      expect(known || within, `${mark} of ${keyed}`).toBe(true)
    }
    for (const mark of keyed.match(/\b[A-Z]{1,2}\d?\b/g) ?? [])
      if (!/^[SAB]\d$/.test(mark)) expect(marks, mark).toContain(mark)
  })

  it('are pictures without script, link or an unescaped sign', () => {
    for (const drawing of drawings) {
      const svg = svgText(drawing, 'us')
      expect(svg).not.toMatch(/<script|href|NaN|undefined|Infinity/)
      expect(svg.startsWith('<svg xmlns="http://www.w3.org/2000/svg"')).toBe(true)
    }
  })
})

describe('to scale', () => {
  const sheet = sheetOf('two rows and a tank')
  it('8 modules of 2 × 1 m in two rows of four are as large on paper as the scale says', () => {
    const plan = byId(sheet.drawings, 'roof-plan')
    const modules = plan.shapes.filter(
      (shape) => shape.kind === 'path' && shape.closed && shape.fill === 'pale',
    )
    expect(modules).toHaveLength(8)
    const tilt = (5 * Math.PI) / 180
    for (const module of modules) {
      if (module.kind !== 'path') continue
      const [a, b, c] = module.points
      expect(b![0] - a![0]).toBeCloseTo(1000 / plan.scale!, 6)
      expect(c![1] - b![1]).toBeCloseTo((2000 * Math.cos(tilt)) / plan.scale!, 6)
    }
  })
  it('two rows of 2 m with 0.35 m between are 4.35 m along the slope, 4.33 m on the plan of a 4 m roof: not buildable', () => {
    expect(sheet.notBuildable.map(({ code }) => code)).toContain('field-does-not-fit')
    const { message } = sheet.notBuildable.find(({ code }) => code === 'field-does-not-fit')!
    expect(message).toContain('5 m along the rows × 4 m: at most 4 modules in one row, with 0.3 m free')
  })
  it('the lift is from the water line to the high edge: 3 m + 4.35 m · sin 5° − 0.93 · 1.2407 m = 2.23 m', () => {
    expect(texts(byId(sheet.drawings, 'section'))).toContain(
      'lift\u00a02.23\u00a0m'.replace('lift\u00a0', 'lift '),
    )
  })
})

describe('the return of a tank', () => {
  it('goes over the rim in section and loop alike, with an air hole only where panels drain', () => {
    const drains = sheetOf('two rows and a tank').drawings
    const full = sheetOf('glycol under a film, tank outdoors').drawings
    for (const id of ['section', 'schematic']) {
      expect(texts(byId(drains, id)), id).toContain('AH')
      expect(texts(byId(full, id)), id).not.toContain('AH')
    }
    expect(texts(byId(drains, 'schematic'))).not.toContain('A1')
    expect(texts(byId(full, 'schematic'))).toContain('A1')
  })
  it('falls along its whole way: no point of the section’s pipes is higher than the one before, on the way to the store', () => {
    const section = byId(sheetOf('two rows and a tank').drawings, 'section')
    const back = section.shapes.find((shape) => shape.kind === 'path' && shape.ink === 'return')!
    if (back.kind !== 'path') throw new Error('no return')
    back.points.slice(1).forEach(([x, y], i) => {
      const [fromX, fromY] = back.points[i]!
      if (i === 0) expect(y).toBe(fromY)
      else expect(y, `from ${fromX} to ${x}`).toBeGreaterThan(fromY)
    })
  })
})

describe('the control', () => {
  it('has each state once a part, safety first, running last but for the room', () => {
    const { states } = sheetOf('two rows and a tank')
    const loop = states.filter(({ part }) => part === 'loop').map(({ name }) => name)
    expect(loop.slice(0, 2)).toEqual(['By hand', 'Sensor lost'])
    expect(loop).toContain('Resting')
    expect(loop).toContain('Frost')
    expect(loop.at(-1)).toBe('Running')
    expect(new Set(loop).size).toBe(loop.length)
  })
})

describe('readings of clear nights', () => {
  it('heat is the flow’s capacity times the drop, band by band, and rises with the outdoor temperature', () => {
    const answer = answerFor(...PLANTS['two rows and a tank']!)
    const { clearNights } = builderSheet(answer)!
    expect(clearNights.length).toBeGreaterThanOrEqual(2)
    for (const { drop_K, heat_W, hours } of clearNights) {
      expect(heat_W.middle / drop_K.middle).toBeCloseTo(answer.loop.capacityRate_WK, 6)
      expect(hours).toBeGreaterThanOrEqual(8)
    }
  })
})
