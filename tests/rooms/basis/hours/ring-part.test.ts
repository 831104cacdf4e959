import { expect, test } from 'vitest'
import { RingPart } from '#model/basis/hours'

const counted = (hours: number): Float64Array => Float64Array.from({ length: hours }, (_, h) => h)

test('whole days around each spell, those that touch as one', () => {
  const part = new RingPart(240, [
    [30, 40],
    [50, 60],
    [130, 150],
  ])
  expect([part.from, part.length]).toEqual([24, 96])
  const { air_C } = part.of({ hours: 240, air_C: counted(240) })
  expect([...air_C]).toEqual([...counted(240).slice(24, 72), ...counted(240).slice(120, 168)])
})

test('a spell that passes the end of the record, or begins before it, goes on at the other end', () => {
  const over = new RingPart(240, [[230, 250]])
  const before = new RingPart(240, [[-10, 10]])
  const days = [...counted(240).slice(216), ...counted(240).slice(0, 24)]
  expect([...over.of(counted(240))]).toEqual(days)
  expect([...before.of(counted(240))]).toEqual(days)
  const put = over.into({ air_C: counted(240) }, { air_C: new Float64Array(48).fill(-1) })
  expect([...put.air_C.slice(0, 25), put.air_C[215], put.air_C[216]]).toEqual([
    ...Array<number>(24).fill(-1),
    24,
    215,
    -1,
  ])
})

test('put back, a part leaves all other hours as they were; what is not hourly is the part’s', () => {
  const part = new RingPart(240, [[48, 72]])
  const whole = { hours: 240, sides: [{ air_C: counted(240) }], loss_WK: 3, none: null }
  const made = part.of(whole)
  expect([made.hours, made.sides[0]!.air_C.length, made.loss_WK, made.none]).toEqual([24, 24, 3, null])
  expect(part.of(whole)).toBe(made)
  const same = part.into(whole, made)
  expect(same).toEqual(whole)
  expect(same.sides[0]!.air_C).toBe(whole.sides[0]!.air_C)
  const changed = part.into(whole, { ...made, sides: [{ air_C: counted(24) }], loss_WK: 4 })
  expect(changed.loss_WK).toBe(4)
  expect([...changed.sides[0]!.air_C.slice(46, 74)]).toEqual([46, 47, ...counted(24), 72, 73])
})

test('a part without a whole to be put into is a mistake', () => {
  const part = new RingPart(240, [[48, 72]])
  expect(() => part.into({ air_C: counted(24) }, { air_C: counted(24) })).toThrow(RangeError)
})
