import { describe, expect, test } from 'vitest'
import { isOwnId, ownId, ownIdInLink } from '#live/own-id.ts'
import { sample } from '../browser/weather-files.ts'

describe('the id of weather that a user brought', () => {
  const record = sample

  test('is the same for the same hours, whatever they lie in', () => {
    const shifted = new Float64Array(record.hours + 5)
    shifted.set(record.airTemp_C, 5)
    expect(ownId(record)).toMatch(/^own:[0-9a-f]{8}$/)
    expect(ownId({ ...record, airTemp_C: shifted.subarray(5) })).toBe(ownId(record))
  })

  test('another hour, place or clock is another file; another name is not', () => {
    const airTemp_C = record.airTemp_C.slice()
    airTemp_C[8759]! += 0.1
    expect(ownId({ ...record, airTemp_C })).not.toBe(ownId(record))
    for (const site of [{ utcOffset_h: 3 }, { latitude_deg: 12 }, { longitude_deg: 12 }]) {
      expect(ownId({ ...record, site: { ...record.site, ...site } })).not.toBe(ownId(record))
    }
    expect(ownId({ ...record, site: { ...record.site, name: 'my yard' } })).toBe(ownId(record))
  })

  test('a link of before files were distinguished names none that could be here', () => {
    expect(isOwnId(ownIdInLink('own'))).toBe(true)
    expect(ownIdInLink('own')).not.toBe('own')
    expect(ownIdInLink('at:50,20')).toBe('at:50,20')
  })
})
