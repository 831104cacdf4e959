import { describe, expect, it } from 'vitest'
import { airHoleHeight_m, crankOf, drawnIn, scaleNote } from '#model/handover/drawing'
import { builderSheet } from '#model/handover/sheet'
import { thermalEmittance_frac } from '#inside/model/handover/sheet/bought-coating.ts'
import { factsOf } from '#inside/model/handover/sheet/facts-of.ts'
import { plantOf } from '#inside/model/handover/sheet/plant.ts'
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
  it('the headline names the one power that a pump draws which is only switched; steps and loop name both', () => {
    expect(plain(sheet.headline)).toMatch(/a pump of 7\.\d W, only switched on and off$/)
    const pump = sheet.loop.find(({ label }) => label === 'Pump')!
    expect(plain(pump.value)).toMatch(
      /1\.\d W, as the year counts it, with full pipes; 7\.\d W, only switched/,
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
      /of 30 mA, .*\(RD\)/,
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

describe('what two more builders asked', () => {
  const texts = (id: string, system: 'si' | 'us' = 'si') =>
    drawnIn(
      sheet.drawings.find((drawing) => drawing.id === id)!,
      system,
    ).shapes.flatMap((shape) =>
      shape.kind === 'text' ? [wordingText(shape.text, system).replaceAll('\u00a0', ' ')] : [],
    )
  const twoRows = builderSheet(answerFor(16, { 'store.autoVolume': 'false', 'store.volume_m3': '1' }))!
  const listOf = (made: typeof sheet) => made.parts.map(({ what }) => plain(what)).join('; ')

  it('a riser of 12 mm under the plate comes into a header of 42 mm by a crank of (42 − 12)/2 = 15 mm over √(15 · (4 · 42 − 15)) = 48 mm', () => {
    const { build } = factsOf(plantOf(answer))
    const crank = crankOf({ liquid: true, build })!
    const header_m = build.header_m + 0.0024
    expect(crank.offset_m).toBeCloseTo((header_m - 0.012) / 2, 9)
    expect(crank.radius_m).toBeCloseTo(0.042, 9)
    expect(crank.length_m).toBeCloseTo(Math.sqrt(crank.offset_m * (0.168 - crank.offset_m)), 9)
    const notes = sheet.drawings
      .find(({ id }) => id === 'module')!
      .notes.map(plain)
      .join()
    expect(notes).toMatch(/Each riser is cranked, the plate is not cut/)
    expect(texts('module')).toContain('end of a panel, cut along a riser')
    expect(crankOf({ liquid: false, build })).toBeNull()
    expect(crankOf({ liquid: true, build: { ...build, spacing_m: null } })).toBeNull()
  })
  it('the edge profile has its flange and its inside, in list, cut and detail alike', () => {
    const inside = /aluminium U (\S+ mm) inside or a little more, flanges 20 mm/.exec(parts)![1]!
    expect(texts('module')).toContain(inside)
    expect(texts('build-up')).toContain(`edge profile: flanges 20 mm, ${inside} inside`)
  })
  it('a bought coating must measure what the year was reckoned with; 0.92 and 0.94 in the window of 0.31 are 0.926', () => {
    const asked = { fresh_frac: 0.93, aged_frac: 0.911, age_y: 1, window_frac: 0.94, offWindow_frac: 0.92 }
    expect(thermalEmittance_frac(asked)).toBeCloseTo(0.9262, 3)
    expect(parts).toMatch(
      /measures at least: solar reflectance 0\.93 fresh and 0\.911 after 1 y outdoors .*thermal emittance 0\.93 .*0\.94 at 8–13 µm/,
    )
  })
  it('rows are told apart by a scale on each B, as FM reads them together; one row has none', () => {
    expect(listOf(twoRows)).toMatch(/balancing valve .* one a row \(B\), with a flow scale of its own/)
    const step = twoRows.commissioning.find(({ what }) => what.startsWith('Flow of each row'))!
    expect(step.what).toMatch(/V2 set so that FM reads the total.*scale of each B/)
    expect(plain(step.expect)).toMatch(/for a row of 4 modules, ± 10 %; together what FM reads/)
    expect(parts).toMatch(/shut-off valve DN \d+ \([^)]*\) of the row \(B\)/)
  })
  it('the air hole is half way between water line and rim: 0.08 m + 0.965 · 1.084 m = 1.13 m over the floor, in list and section', () => {
    const { tank } = factsOf(plantOf(answer))
    expect(airHoleHeight_m(tank!)).toBeCloseTo((tank!.water_m + tank!.height_m) / 2, 9)
    expect(texts('section').find((text) => text.endsWith('air hole AH'))).toBe('+1.13 m air hole AH')
    expect(parts).toMatch(/air hole \(AH\) .* half way between water line and rim, over the overflow O1/)
  })
  it('the section has each row of the plan on its own posts', () => {
    const drawn = twoRows.drawings.find(({ id }) => id === 'section')!
    const rows = drawn.shapes.filter(
      (shape) => shape.kind === 'path' && shape.closed && shape.fill === 'grey' && shape.points.length === 4,
    )
    expect(rows.length).toBeGreaterThanOrEqual(2)
    const said = drawn.shapes.flatMap((shape) => (shape.kind === 'text' ? [plain(shape.text)] : []))
    expect(said).toContain('row 1')
    expect(said).toContain('row 2')
  })
  it('scales are those of the reader’s rule', () => {
    for (const drawing of sheet.drawings.filter(({ scale }) => scale !== null)) {
      expect([10, 20, 25, 50, 100, 200, 500, 1000]).toContain(drawing.scale)
      expect([12, 16, 24, 32, 48, 64, 96, 128, 192]).toContain(drawnIn(drawing, 'us').scale)
      expect(scaleNote(drawing, 'us')).toMatch(/^\d+(\/\d+)?( \d\/\d)? in = 1 ft, printed at 100 %$/)
      expect(scaleNote(drawing, 'si')).toMatch(/^1 : \d+, printed at 100 %$/)
    }
  })
})
