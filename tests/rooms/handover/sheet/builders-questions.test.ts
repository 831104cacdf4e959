import { describe, expect, it } from 'vitest'
import { builderSheet } from '#model/handover/sheet'
import { wordingText, type Text } from '#model/basis/words'
import { answerFor } from './sheet-answers.ts'

const plain = (given: Text): string => wordingText(given, 'si').replaceAll('\u00a0', ' ')
const answer = answerFor(8, { 'store.autoVolume': 'false', 'store.volume_m3': '1' })
const sheet = builderSheet(answer)!
const parts = sheet.parts.map(({ what }) => plain(what)).join('; ')
const step = (start: RegExp): string =>
  plain(sheet.commissioning.find(({ what }) => start.test(what))!.expect)
const section = sheet.drawings.find(({ id }) => id === 'section')!
const loop = sheet.drawings.find(({ id }) => id === 'schematic')!

describe('the table of states, read from the top', () => {
  const states = sheet.states.filter(({ part }) => part === 'loop')
  const named = (name: string) => plain(states.find((state) => state.name === name)!.holds)
  it('stops for S1 only a pump at rest, and for S4 one that is running', () => {
    expect(named('Waiting')).toMatch(/at rest and S1 is less than/)
    expect(named('No more to gain')).toMatch(/running.*S4 is less than 0.3 K under S3/)
    expect(named('Outside its hours')).toBe('not from sunset to sunrise')
  })
  it('has no hours to keep to where the pump may run at any', () => {
    const allDay = builderSheet(answerFor(8, { 'plan.kind': 'allDay' }))!
    expect(allDay.states.map(({ name }) => name)).not.toContain('Outside its hours')
  })
})

describe('pressure and power of the pump', () => {
  it('the gauge is after the valve that throttles, in drawing, list and step', () => {
    const at = (mark: string): number => {
      const found = loop.shapes.find((shape) => shape.kind === 'text' && shape.text === mark)!
      return found.kind === 'text' ? found.at[0] : NaN
    }
    expect(at('G2')).toBeLessThan(at('V2') - 2)
    expect(at('G1')).toBeGreaterThan(at('P1'))
    expect(parts).toMatch(/before P1 and one after V2 \(G1, G2\)/)
    expect(step(/^Pressure round the loop, G2 less G1$/)).toMatch(/once the return runs full/)
  })
  it('the headline names both powers: with pipes full, and against the lift, as a pump that is only switched draws', () => {
    expect(plain(sheet.headline)).toMatch(
      /a pump of 1\.\d W at design flow with its pipes full, 7\.\d W against the lift$/,
    )
    expect(step(/^Power of the pump/)).toMatch(/about 7\.\d W .*1\.\d W/)
  })
  it('P2 draws V·Δp/η: 0.255 L/s · 36 kPa / 0.25 = 37 W; with the fan’s 0.276 m³/s · 150 W the year counts 78 W', () => {
    expect(parts).toMatch(/3\.7 m\).*about 37 W/)
    expect(parts).toMatch(/fan of at most 41 W/)
    expect(parts).toMatch(/counts fan and P2 as listed, 78 W/)
    expect(answer.store.deliveryPower_W).toBeCloseTo(78.2, 1)
    const given = builderSheet(answerFor(8, { 'store.deliveryPower_W': '12' }))!
    expect(given.parts.map(({ what }) => plain(what)).join()).toMatch(/with the 12 W given .* draw 78 W/)
  })
})

describe('heights', () => {
  it('of the tank are over the floor by its insulation', () => {
    const marks = section.shapes.flatMap((shape) => (shape.kind === 'text' ? [plain(shape.text)] : []))
    expect(marks).toContain('+1.16 m tank rim')
    expect(marks).toContain('+0.18 m return ends')
  })
  it('of the panels end at the corner that hangs higher: 3 m + 2 m · sin 5° + 4.12 m / 50 = 3.26 m', () => {
    const marks = section.shapes.flatMap((shape) => (shape.kind === 'text' ? [plain(shape.text)] : []))
    expect(marks).toContain('+3.26 m high corner')
  })
  it('of the feet are from the ceiling, as nobody has said how thick the roof is', () => {
    expect(parts).toMatch(/counted from the ceiling: take off what your roof is thick/)
  })
})

describe('one name for one thing', () => {
  it('the return goes over the rim; a tank wider than the door is not sold by the door', () => {
    expect(parts).toMatch(/return DN 15 .* over the rim/)
    expect(parts).toMatch(
      /does not pass an ordinary door of 0\.813 m: a taller, narrower one does, up to \S+ m³/,
    )
    expect(parts).not.toMatch(/passes your door/)
  })
  it('names DV only where there is one', () => {
    expect(sheet.maintenance.map(plain).join()).not.toMatch(/DV/)
    const mass = builderSheet(answerFor(8, { 'store.kind': 'slab' }))!
    expect(mass.maintenance.map(plain).join()).toMatch(/filter of DV/)
  })
  it('has paint by its recipe, test pump, adapters and condensate pipe on the list', () => {
    for (const wanted of [/recipe: .*dry in all/, /test pump/, /adapters/, /condensate pipe/])
      expect(parts).toMatch(wanted)
  })
  it('fills by D1 with V1 shut', () => {
    expect(sheet.commissioning[0]!.what).toMatch(/^Shut V1.*at D1 with the test pump/)
  })
  it('is called by its place where it has no name', () => {
    expect(sheet.title).toBe(`Design for ${answer.weather.site.name}`)
  })
})

describe('what a slab is cooled by', () => {
  const lists = (fields: Readonly<Record<string, string>>) => {
    const made = builderSheet(answerFor(12, { 'store.kind': 'slab', ...fields }))!
    return {
      codes: made.notBuildable.map(({ code }) => code),
      parts: made.parts.map(({ what }) => plain(what)).join('; '),
    }
  }
  it('200 W/K are 51 m of pipe, 1/k = 1/(π·0.012·1000) + ln(16/12)/(2π·0.38) + ln(150/(π·16))/(2π·1.6) = 0.256 mK/W, in so many circuits that one loses 10 kPa at most, which the pump is bought for', () => {
    const { parts: bought } = lists({})
    expect(bought).toMatch(/about 51 m of oxygen-tight pipe/)
    expect(bought).toMatch(/in [2-9] circuits of equal length/)
    expect(bought).toMatch(/of it in the pipes of the slab\)/)
  })
  it('a duct as wide as the slab is thick is not buildable; a pipe of 16 mm in 100 mm is', () => {
    expect(lists({ 'loop.fluid': 'air' }).codes).toContain('mass-too-thin')
    expect(lists({}).codes).not.toContain('mass-too-thin')
  })
})

describe('what earlier lists left open', () => {
  it('edge profile of 2 · (2 m + 1 m) a module, sleeves, cables and breaker are on the list', () => {
    const edge = sheet.parts.find(({ what }) => /edge profile/.test(plain(what)))!
    expect(edge.quantity.value).toBeCloseTo(4 * 6, 9)
    for (const wanted of [
      /sleeves where supply and return pass the roof/,
      /cable 3 × 1\.5 mm²/,
      /of 30 mA \(RD\)/,
    ])
      expect(parts).toMatch(wanted)
  })
  it('a rail holds q l²/8: rails of 4.32 m on four feet, 4 modules of 3.53 kN on two: W = 1635 N/m · (1.44 m)²/8 / 142 MPa = 3 cm³', () => {
    expect(parts).toMatch(/section modulus at least 3(\.0)? cm³ of steel/)
  })
  it('every mark wired is on the loop or the list of sensors', () => {
    const wired = sheet.drawings
      .find(({ id }) => id === 'wiring')!
      .shapes.flatMap((shape) =>
        shape.kind === 'text' ? (/^(S\d|[PM]\d)$/.exec(plain(shape.text)) ?? []) : [],
      )
    const drawn = loop.shapes.flatMap((shape) => (shape.kind === 'text' ? [plain(shape.text)] : []))
    expect(wired.length).toBeGreaterThan(9)
    for (const mark of wired) expect(drawn).toContain(mark)
  })
})

describe('what the last builder asked', () => {
  it('names what screws, seals and flashes a foot, and who sizes it with which loads', () => {
    const feet = sheet.parts.find(({ what }) => /^adjustable feet/.test(plain(what)))!.quantity.value
    const screws = sheet.parts.find(({ what }) => /^screws of the feet/.test(plain(what)))!
    expect(screws.quantity.value).toBe(2 * feet)
    for (const wanted of [
      /check by a structural engineer, before the frame is bought/,
      new RegExp(`Hand over this sheet, with: ${feet} feet`),
      /flashings or sealed boots .* of the kind that the maker of your roof covering sells/,
      /cartridges of neutral-cure sealant/,
      /blind rivets of aluminium/,
      /rods of copper–phosphorus/,
      /thread sealing tape/,
    ])
      expect(parts).toMatch(wanted)
  })
  it('takes off a roof whose layers are known: 12.5 + 100 + 12 + 0.8 mm = 125 mm, and draws it', () => {
    const known = builderSheet(answerFor(8, { 'room.roofBuild': 'wool100' }))!
    expect(known.parts.map(({ what }) => plain(what)).join()).toMatch(
      /take off 125 mm, which the roof is thick/,
    )
    const drawn = known.drawings.find(({ id }) => id === 'section')!
    expect(drawn.notes.map(plain).join()).toMatch(/roof as described is 125 mm thick/)
    expect(drawn.shapes.length).toBe(section.shapes.length + 1)
  })
  it('a fall is said to look level where it is drawn to scale', () => {
    expect(section.notes.map(plain).join()).toMatch(/so small a fall looks level/)
  })
})
