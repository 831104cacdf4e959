import { describe, expect, test } from 'vitest'
import { defaultScenario, withField, withWayTaken, type Scenario, type WayPart } from '#model/design/scenario'
import { headline } from '#ui/answer/answer-words.ts'
import { limitText } from '#ui/answer/limit-text.ts'
import { firstLook, ofDesign, sureWords } from '#ui/deciding/sure-words.ts'
import { headline as cooling, targetLine } from '#ui/deciding/way-words.ts'
import { verdictOf } from '#ui/answer/verdict-words.ts'
import type { Combination } from '#studies/decide-trial.ts'
import { wordingText } from '#model/basis/words'

const chosen = (...way: readonly WayPart[]): Scenario => withWayTaken(defaultScenario(), way)
const kicker = (scenario: Scenario): string =>
  headline({
    scenario,
    area_m2: 12,
    fit: { misfits: [], within: null, instead: null },
    way: null,
    sizing: { kind: 'met' },
  }).kicker

describe('one name a thing', () => {
  test('panels are alone only where nothing was chosen with them', () => {
    expect(kicker(chosen())).toBe('Panels alone, for the target')
    expect(kicker(chosen('panels'))).toBe('Panels alone, for the target')
    expect(kicker(chosen('insulateRoof', 'panels'))).toBe('Panels and one measure')
    expect(kicker(chosen('insulateRoof', 'ceilingFan', 'panels'))).toBe('Panels and 2 measures')
  })

  test('the limit is the one that was given, with what moving air makes of it, in dock and on Cool alike', () => {
    const still = withField(defaultScenario(), 'target.limit_C', '26').target
    expect(limitText(still, 'si')).toBe('26.0\u00a0°C')
    const moving = { ...still, keptFor: 'awake' as const, airSpeed_ms: 0.6 }
    expect(limitText(moving, 'si')).toBe('26.0\u00a0°C (27.2\u00a0°C in air that moves at 0.6\u00a0m/s)')
    expect(wordingText(targetLine(moving), 'si')).toContain(limitText(moving, 'si'))
    expect(limitText({ ...moving, keptFor: 'goods' }, 'si')).toBe('26.0\u00a0°C')
  })

  test('a first look is called so, and gives way to what the range says', () => {
    const hours = {
      low_h: 12.2,
      middle_h: 30,
      high_h: 96.4,
      met_frac: 0.375,
      draws: 32,
      all_h: [],
      own: null,
    }
    expect(sureWords(firstLook(hours, true))).toMatch(
      /^First look, 32 draws\. In practice 12 to 96 h, .* in 12 of 32 years tried/,
    )
    expect(sureWords(firstLook(hours, false))).not.toContain('First look')
    const areas_m2 = [4, 6, 8, null]
    const range = { areas_m2, draws: 4 } as unknown as Parameters<typeof ofDesign>[1]
    expect(sureWords(ofDesign(hours, range, 6))).toMatch(/^In practice 12 to 96 h, .* in 2 of 4 years tried/)
  })
  test('what meets its target in fewer than eight years of ten is not called sure, in the same words on every page', () => {
    const scenario = chosen('shade', 'ceilingFan', 'direct')
    const sizing = {
      kind: 'notNeeded',
      withPanels: { hours_h: 20, measure: -1 },
      doNothing: { hours_h: 300 },
      limit: null,
    }
    const answer = {
      scenario,
      area_m2: 0,
      fit: { misfits: [], within: null, instead: null },
      way: { meets: true, names: ['a'], asItIs: { hours_h: 400 } },
      sizing,
    } as unknown as Parameters<typeof verdictOf>[0]
    const best = {
      names: ['Shade the windows'],
      meets: true,
      panelArea_m2: 0,
    } as unknown as Combination
    const often = 'in 15 of 32 years tried'
    const unsure = { met: 15, draws: 32 }
    const sure = { met: 26, draws: 32 }
    expect(headline(answer, 'si', unsure)).toEqual({
      kicker: `Your way meets the target ${often}`,
      big: 'Direct evaporative cooler with 2 measures',
    })
    expect(headline(answer, 'si').kicker).toBe('Your way meets the target as described')
    expect(verdictOf(answer, 'si', unsure).big).toContain(often)
    expect(verdictOf(answer, 'si', sure).big).not.toContain('years tried')
    expect(cooling(best, unsure)).toBe(`No panels here. Shade the windows: meets the target ${often}.`)
    expect(cooling(best, sure)).toBe('No panels here. Do this: Shade the windows.')
    expect(cooling(best, null)).not.toContain('Do this')
  })
})
