import { describe, expect, it } from 'vitest'
import type { ComparisonRow } from '#model/design/comparison'
import {
  coverSentences,
  cutSentence,
  doNothingSentence,
  planSentence,
} from '#inside/model/design/comparison/verdict-words.ts'
import { cutOrNot, filmOrBare, nightOrAllDay, sameBut } from '#inside/model/design/comparison/verdicts.ts'

/** A made row; every number in a sentence must come from here. */
function row(changes: Partial<ComparisonRow>): ComparisonRow {
  return {
    climate: 'Hot desert',
    plan: 'nightOnly',
    coating: 'own',
    cover: 'bare',
    building: 'as described',
    kind: 'met',
    area_m2: 12,
    storeVolume_m3: 1,
    flow_kgs: 0.1,
    pumpPower_W: 10,
    panelHeat_J: 1e9,
    electric_J: 1e7,
    pumpRun_h: 800,
    peak_C: 27.2,
    hoursOver_h: 38,
    doNothingPeak_C: 33.4,
    doNothingHoursOver_h: 500,
    hotDaysHeld: 30,
    hotDays: 36,
    ...changes,
  }
}
const allDay = (changes: Partial<ComparisonRow>) => row({ plan: 'allDay', ...changes })
const film = (changes: Partial<ComparisonRow>) => row({ cover: 'film', ...changes })

describe('night-only or all-day', () => {
  it('says the example of the design: more area, but half the pump hours', () => {
    const verdict = nightOrAllDay(row({ area_m2: 12 }), allDay({ area_m2: 10, pumpRun_h: 1600 }))
    expect(verdict).toMatchObject({
      better: 'second',
      decidedBy: 'area',
      areaRatio: 1.2,
      pumpHoursRatio: 0.5,
    })
    expect(planSentence(verdict, 'si')).toBe(
      'Night-only needs 20 % more area than all-day (12 m² against 10 m²), but half the pump hours (800 against 1600 h a year).',
    )
  })
  it('says “and” where both speak for the same plan', () => {
    const verdict = nightOrAllDay(row({ area_m2: 9 }), allDay({ area_m2: 10, pumpRun_h: 1000 }))
    expect(planSentence(verdict, 'si')).toBe(
      'Night-only needs 10 % less area than all-day (9 m² against 10 m²), and 20 % fewer pump hours (800 against 1000 h a year).',
    )
  })
  it('calls areas within 3 % the same', () => {
    const verdict = nightOrAllDay(row({ area_m2: 10.2 }), allDay({ area_m2: 10 }))
    expect(verdict.better).toBe('even')
    expect(planSentence(verdict, 'si')).toContain('need about the same area (10.2 m² against 10 m²)')
    expect(planSentence(verdict, 'si')).toContain('about the same pump hours')
  })
  it('where only one reaches the target, says which, and where the other ends', () => {
    const floor = row({ kind: 'floor', area_m2: null, peak_C: 29.1 })
    const verdict = nightOrAllDay(floor, allDay({ area_m2: 44 }))
    expect(verdict).toMatchObject({ better: 'second', decidedBy: 'reach', areaRatio: null })
    expect(planSentence(verdict, 'si')).toBe(
      'Only all-day meets the target, with 44 m²; night-only still reaches 29.1 °C with all the area there is room for.',
    )
  })
  it('where none reaches it, or the area is the user’s own, weighs the hottest hour', () => {
    const floors = nightOrAllDay(
      row({ kind: 'floor', area_m2: null, peak_C: 29.1 }),
      allDay({ kind: 'floor', area_m2: null, peak_C: 28.4 }),
    )
    expect(floors).toMatchObject({ better: 'second', decidedBy: 'peak' })
    expect(planSentence(floors, 'si')).toContain(
      'night-only ends warmer than all-day (29.1 °C against 28.4 °C)',
    )
    const own = nightOrAllDay(row({ kind: 'own' }), allDay({ kind: 'own', peak_C: 27.25 }))
    expect(own).toMatchObject({ better: 'even', decidedBy: 'peak', areaRatio: null })
    expect(planSentence(own, 'si')).toMatch(/^With your own area, /)
  })
  it('needs no panels either way where the room is cool by itself', () => {
    const none = { kind: 'notNeeded', area_m2: 0, pumpRun_h: 0 } as const
    const verdict = nightOrAllDay(row(none), allDay(none))
    expect(verdict).toMatchObject({ better: 'even', pumpHoursRatio: null })
    expect(planSentence(verdict, 'si')).toBe('The room meets the target by itself: no panels either way.')
  })
  it('speaks US units when asked', () => {
    const verdict = nightOrAllDay(row({ area_m2: 12 }), allDay({ area_m2: 10 }))
    // 12 m² ÷ 0.3048² = 129.17 ft², 10 m² = 107.64 ft²
    expect(planSentence(verdict, 'us')).toContain('(129 ft² against 108 ft²)')
  })
  it('refuses rows that are not the two plans', () => {
    expect(() => nightOrAllDay(allDay({}), row({}))).toThrow(RangeError)
    expect(() => filmOrBare(film({}), row({}), null)).toThrow(RangeError)
  })
})

describe('film or bare', () => {
  const parts = [
    { cause: 'wetFilm' as const, run_h: 100, bareAhead_Jm2: 3.6e6, plateAboveAir_K: -0.5 },
    { cause: 'warmPlate' as const, run_h: 300, bareAhead_Jm2: 14.4e6, plateAboveAir_K: 1.5 },
    { cause: 'coldPlate' as const, run_h: 400, bareAhead_Jm2: -7.2e6, plateAboveAir_K: -2.25 },
  ]
  const reasons = { bare_Jm2: 144e6, film_Jm2: 133.2e6, run_h: 800, parts }

  it('names the causes of its own hours, heaviest first, with their shares and sizes', () => {
    const sentences = coverSentences(filmOrBare(row({ area_m2: 9 }), film({ area_m2: 10 }), reasons), 'si')
    expect(sentences[0]).toContain('Bare needs 10 % less area than film (9 m² against 10 m²)')
    expect(sentences.slice(1)).toEqual([
      'At the same plate temperatures bare takes more heat than film here (40 kWh/m² bare, 37 kWh/m² under film, in the pump hours of a year), because:',
      'In 38 % of the pump hours the plate is warmer than the air, by 1.5 K on average, so that wind helps: bare is ahead by 4 kWh/m².',
      'In 50 % of the pump hours it is colder than the air, by 2.3 K on average, and the film keeps the warm wind off: film is ahead by 2 kWh/m².',
      'In 13 % of the pump hours dew or frost covers the film and shuts it to the infrared: bare is ahead by 1 kWh/m².',
    ])
  })
  it('turns round when the hours do', () => {
    const turned = parts.map((part) => ({ ...part, bareAhead_Jm2: -part.bareAhead_Jm2 }))
    const verdict = filmOrBare(row({}), film({ area_m2: 10 }), {
      ...reasons,
      bare_Jm2: 133.2e6,
      film_Jm2: 144e6,
      parts: turned,
    })
    const sentences = coverSentences(verdict, 'si')
    expect(verdict.better).toBe('second')
    expect(sentences[1]).toContain('film takes more heat than bare here')
    expect(sentences[3]).toContain('but the film keeps more sky from it than wind: bare is ahead by 2 kWh/m²')
  })
  it('leaves out what weighs nothing, and the reasons where the pump never ran', () => {
    const idle = { ...reasons, parts: parts.map((part) => ({ ...part, bareAhead_Jm2: 1e5 })) }
    expect(coverSentences(filmOrBare(row({}), film({}), idle), 'si')).toHaveLength(2)
    expect(coverSentences(filmOrBare(row({}), film({}), null), 'si')).toHaveLength(1)
  })
})

describe('a change of the building', () => {
  const described = row({})
  it('says what it does alone and what is left for the panel', () => {
    const white = row({
      building: 'Paint the roof white',
      area_m2: 6,
      doNothingPeak_C: 31.9,
      doNothingHoursOver_h: 320,
    })
    expect(cutSentence(cutOrNot(white, described), 'si')).toBe(
      'Paint the roof white: by itself it takes the hottest hour from 33.4 °C to 31.9 °C, hours above the limit from 500 to 320; it takes 50 % less panel than as described: 6 m².',
    )
    expect(doNothingSentence(described, 'si')).toBe(
      'Do nothing: the hottest hour reaches 33.4 °C, and 500 h lie above the limit.',
    )
  })
  it('says when no panel is needed any more, when one is enough at last, and when none is', () => {
    const none = row({ building: 'B', kind: 'notNeeded', area_m2: 0 })
    expect(cutSentence(cutOrNot(none, described), 'si')).toContain('no panel is needed then')
    const floor = row({ kind: 'floor', area_m2: null })
    expect(cutSentence(cutOrNot(row({ building: 'B' }), floor), 'si')).toContain(
      '12 m² of panel are enough then',
    )
    expect(cutSentence(cutOrNot(floor, floor), 'si')).toContain('stays out of reach')
  })
})

it('a pair is fair only when it differs in one part alone', () => {
  expect(sameBut('plan', row({}), allDay({}))).toBe(true)
  expect(sameBut('plan', row({}), allDay({ cover: 'film' }))).toBe(false)
  expect(sameBut('cover', row({}), allDay({}))).toBe(false)
})
