import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { misfitsOf, shapeInPlace, tankPlaceOf, type TankPlace } from '#model/design/assembly'
import { defaultScenario, type Scenario, withField } from '#model/design/scenario'

/* Label: exact, worked by hand from the rules that the file gives. */
const ROOM = { 'room.length_m': 5, 'room.width_m': 4, 'room.height_m': 2.4, 'store.insulation_m': 0.08 }

function scenarioWith(fields: Readonly<Record<string, string | number>>): Scenario {
  return Object.entries({ ...ROOM, ...fields }).reduce(
    (scenario, [path, value]) => withField(scenario, path, String(value)),
    defaultScenario(),
  )
}
const placeWith = (fields: Readonly<Record<string, string | number>> = {}): TankPlace =>
  tankPlaceOf(scenarioWith(fields))!

describe('the largest tank', () => {
  test('takes a fifth of the floor, tipped upright; through an ordinary door, 0.813 m and 1.94 m', () => {
    const place = placeWith()
    expect(place).toMatchObject({ limit: 'floor', doorGiven: false, loadGiven: false, inRoom: true })
    const wide_m = Math.sqrt(0.2 * 5 * 4) - 0.16
    expect(place.most_m3).toBeCloseTo((Math.PI / 4) * wide_m ** 2 * Math.sqrt(2.4 ** 2 - wide_m ** 2), 9)
    expect(place.byDoor_m3).toBeCloseTo((Math.PI / 4) * 0.813 ** 2 * 1.94, 9)
    expect(placeWith({ 'store.doorWidth_m': 0.813 })).toMatchObject({
      limit: 'door',
      most_m3: place.byDoor_m3,
    })
  })
  test('follows a given door, and is tipped upright under the ceiling', () => {
    expect(placeWith({ 'store.doorWidth_m': 0.6 }).most_m3).toBeCloseTo((Math.PI / 4) * 0.6 ** 2 * 1.5, 9)
    const wide = placeWith({ 'store.doorWidth_m': 1.5 })
    expect(wide.most_m3).toBeCloseTo((Math.PI / 4) * 1.5 ** 2 * Math.sqrt(2.4 ** 2 - 1.5 ** 2), 9)
  })
  test('takes a fifth of a small floor at most', () => {
    const place = placeWith({ 'room.length_m': 2, 'room.width_m': 2 })
    expect(place.limit).toBe('floor')
    expect(place.widest_m).toBeCloseTo(Math.sqrt(0.8) - 0.16, 9)
  })
  test('on a raised floor weighs 196 kg, on 1 m² of it; on firm ground and outdoors nothing of this size is too heavy', () => {
    const place = placeWith({ 'room.floorKind': 'raised' })
    expect(place.limit).toBe('load')
    // 1.92 kPa / 9.80665 m/s² = 195.8 kg/m²; 999.1 kg/m³ of water and 8 % of shell: 0.1814 m³
    expect(place.most_m3).toBeCloseTo(0.1814, 3)
    expect(placeWith({ 'store.place': 'outside' }).most_m3).toBe(200)
    expect(placeWith({ 'store.place': 'outside', 'store.floorLoad_kgm2': 500 }).limit).toBe('load')
  })
  test('is none where its insulation takes up its share of the floor, and there is no place to ask for without a tank', () => {
    const low = placeWith({ 'room.height_m': 1.8, 'store.insulation_m': 0.4, 'store.doorWidth_m': 3 })
    expect(low.most_m3).toBeGreaterThan(0)
    const none = placeWith({ 'room.length_m': 2, 'room.width_m': 2, 'store.insulation_m': 0.5 })
    expect(none).toMatchObject({ most_m3: 0, limit: 'floor' })
    expect(tankPlaceOf(scenarioWith({ 'store.kind': 'slab' }))).toBeNull()
  })
})

test('its shape goes through the door, under the ceiling and holds its volume; small ones are as high as wide', () => {
  const between = (min: number, max: number) => fc.double({ min, max, noNaN: true })
  fc.assert(
    fc.property(between(0.4, 3), between(1.8, 4), between(0.01, 1), (door_m, height_m, share) => {
      const place = placeWith({ 'store.doorWidth_m': door_m, 'room.height_m': height_m })
      const volume_m3 = share * place.most_m3
      const shape = shapeInPlace(volume_m3, place)
      expect(shape.end_m2 * shape.height_m).toBeCloseTo(volume_m3, 9)
      expect(shape.diameter_m).toBeLessThanOrEqual(place.widest_m * (1 + 1e-9))
      expect(shape.height_m).toBeLessThanOrEqual(place.highest_m * (1 + 1e-9))
    }),
    { numRuns: 300, seed: 17 },
  )
  const small = shapeInPlace(0.1, placeWith())
  expect(small.height_m).toBeCloseTo(small.diameter_m, 12)
})

describe('what does not fit is said with its field', () => {
  const misfit = (fields: Readonly<Record<string, string | number>>, volume_m3: number) =>
    misfitsOf(scenarioWith(fields), 8, volume_m3)
  test.each([
    [{ 'store.doorWidth_m': 0.813 }, 1.5, 'store.doorWidth_m', 'with a way in of 0.813 m'],
    [{ 'store.doorWidth_m': 0.5 }, 1.5, 'store.doorWidth_m', 'with a way in of 0.5 m'],
    [{ 'room.length_m': 2, 'room.width_m': 2 }, 1.5, 'store.place', 'a fifth of the floor'],
    [{ 'room.floorKind': 'raised' }, 0.3, 'store.floorLoad_kgm2', '196 kg/m² taken for such a floor'],
    [{ 'store.floorLoad_kgm2': 150 }, 0.3, 'store.floorLoad_kgm2', '150 kg/m² that are given for it'],
  ])('%j with %f m³: %s', (fields, volume_m3, field, words) => {
    const problem = misfit(fields as Record<string, string | number>, volume_m3).at(-1)
    expect(problem!.place.field).toBe(field)
    expect(problem!.message).toContain(words)
    expect(problem!.remedy).not.toBe('')
  })
  test('and a tank of exactly what fits is not complained of', () => {
    const places: Readonly<Record<string, string | number>>[] = [
      {},
      { 'room.floorKind': 'raised' },
      { 'store.doorWidth_m': 2 },
    ]
    for (const fields of places) expect(misfit(fields, placeWith(fields).most_m3)).toEqual([])
  })
})

test('a design of before these fields reads as one whose place is worked out', () => {
  const { store } = defaultScenario()
  expect([store.doorWidth_m, store.floorLoad_kgm2]).toEqual([0, 0])
  expect(misfitsOf(defaultScenario(), 8, 30)[0]!.message).toContain('30 m³')
})
