import { describe, expect, it } from 'vitest'
import { builderSheet } from '#model/handover/sheet'
import { schematic, type PlantFacts } from '#model/handover/drawing'
import { wordingText, type Wording } from '#model/basis/words'
import { pipeSold } from '#inside/model/basis/words/pipe-sizes.ts'
import { frameOf } from '#inside/model/handover/sheet/frame.ts'
import { factsOf } from '#inside/model/handover/sheet/facts-of.ts'
import { plantOf } from '#inside/model/handover/sheet/plant.ts'
import { crossFieldProblems } from '#model/design/scenario'
import { answerFor } from './sheet-answers.ts'

const drainBack = answerFor(16, { 'store.autoVolume': 'false', 'store.volume_m3': '1.5' })
const staysFull = answerFor(8, { 'plan.freeze': 'stop' })
const said = (text: Wording | string): string =>
  (typeof text === 'string' ? text : wordingText(text, 'si')).replaceAll('\u00a0', ' ')
const stepsOf = (answer: typeof drainBack): string =>
  builderSheet(answer)!
    .commissioning.map(({ what, expect: seen }) => `${what}: ${said(seen)}`)
    .join('\n')
const partsOf = (answer: typeof drainBack): string =>
  builderSheet(answer)!
    .parts.map(({ what }) => said(what))
    .join('\n')

describe('the sheet describes one plant', () => {
  it('the pipe that is bought has the bore that the loop was reckoned with', () => {
    const { pipeInnerDiameter_m, headerInnerDiameter_m } = drainBack.loop
    for (const bore_m of [pipeInnerDiameter_m, headerInnerDiameter_m])
      expect(pipeSold(bore_m, 'si')!.inner_m).toBeCloseTo(bore_m, 5)
    const sheet = builderSheet(drainBack)!
    const size = pipeSold(pipeInnerDiameter_m, 'si')!.name
    const notes = sheet.drawings.find(({ id }) => id === 'section')!.notes
    expect(notes.map(said).join()).toContain(size)
    expect(partsOf(drainBack)).toContain(`pipe ${size}`)
  })
  it('all feet together hold what all clamps hold', () => {
    const plant = plantOf(drainBack)
    const frame = frameOf(plant)
    expect(frame.feet * frame.footUplift_N.mean).toBeCloseTo(4 * 8 * frame.clampUplift_N, 6)
    // a rail of 4.32 m on 4 feet: those inside carry a third of its pull, 4 modules of 3.5 kN on two rails
    expect(frame.footUplift_N.most).toBeCloseTo((16 * frame.clampUplift_N) / 2 / 3, 6)
  })
  it('feet at the far end are higher by the fall of 1 : 50: 82 mm over 4.12 m', () => {
    expect(partsOf(drainBack)).toMatch(/feet under the rails.*82 mm more at its other end/)
  })
  it('M1 lies between tank and P2', () => {
    const place = (facts: PlantFacts, mark: string): number => {
      for (const shape of schematic(facts).shapes)
        if (shape.kind === 'text' && shape.text === mark) return shape.at[0]
      throw new Error(`${mark} is not drawn`)
    }
    const facts = factsOf(plantOf(answerFor(8, { 'store.deliveryKind': 'ceiling' })))
    expect(place(facts, 'P2')).toBeLessThan(place(facts, 'M1'))
    expect(place(facts, 'M1')).toBeLessThan(place(facts, 'V3'))
    expect(place(facts, 'S9')).toBeLessThan(place(facts, 'P2'))
  })
  it('a loop that drains back has no vents, and nothing asks for one', () => {
    const sheet = builderSheet(drainBack)!
    const keep = sheet.maintenance.map(said).join('\n')
    const bought = sheet.parts.filter(({ group }) => group === 'Panel loop').map(({ what }) => said(what))
    expect(stepsOf(drainBack) + bought.join('\n') + keep).not.toMatch(/vents?\b|air out at the top/)
    expect(stepsOf(staysFull)).toMatch(/vents A/)
    expect(partsOf(staysFull)).toMatch(/air vent .*\(A\)/)
  })
  it('a loop that stays full is filled at D1 by a pump that reaches the panels, and its level does not fall', () => {
    expect(stepsOf(staysFull)).not.toMatch(/it falls to/)
    expect(stepsOf(staysFull)).toMatch(/fill the loop at D1/)
    expect(partsOf(staysFull)).toMatch(/filling pump/)
    const sheet = builderSheet(staysFull)!
    const frost = said(sheet.controls.find(({ label }) => label === 'Frost')!.value)
    expect(frost).toMatch(/drain the panel by D1/)
    expect(sheet.states.find(({ name }) => name === 'Frost')!.then).toMatch(/drain by D1/)
  })
  it('every sensor that a state reads is listed and bought', () => {
    for (const answer of [drainBack, answerFor(8, { 'store.deliveryKind': 'drained' })]) {
      const sheet = builderSheet(answer)!
      const listed = sheet.sensors.map(({ label }) => label.split(' ')[0]!)
      const read = sheet.states.flatMap(({ holds }) => said(holds).match(/\bS\d/g) ?? [])
      expect(read).toContain('S8')
      for (const mark of read) expect(listed).toContain(mark)
      const bought = sheet.parts.find(({ what }) => said(what).startsWith('thermometers'))!
      expect(bought.quantity.value).toBe(listed.length - 1)
    }
  })
  it('the gauge reads what P1 holds in its upper nine tenths', () => {
    const bar = Number(/0 to (\S+) bar.*\(G1, G2\)/.exec(partsOf(staysFull))![1])
    expect(staysFull.loop.pressureDrop_Pa / 1e5).toBeGreaterThan(0.1 * bar)
    expect(staysFull.loop.pressureDrop_Pa / 1e5).toBeLessThan(bar)
  })
  it('says which weight of water is to the rim and which to the water line', () => {
    const weight = said(builderSheet(drainBack)!.store.find(({ label }) => label === 'Weight full')!.value)
    expect(weight).toMatch(/full to the rim.* of water when filled to its water line/)
  })
  it('a tray without a tank is said to be a dry coil, as the year has it', () => {
    const given = { 'store.kind': 'building', 'store.deliveryKind': 'drained' }
    const answer = answerFor(8, given)
    expect(crossFieldProblems(answer.scenario).map(({ code }) => code)).toContain('tray-without-tank')
    expect(factsOf(plantOf(answer)).drained).toBe(false)
    expect(partsOf(answer)).toContain('coil kept dry')
    expect(partsOf(answer)).not.toContain('drip tray')
    const dry = answerFor(8, { ...given, 'store.deliveryKind': 'surface' })
    expect(answer.year.room_C).toEqual(dry.year.room_C)
  })
})
