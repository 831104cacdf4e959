import { describe, expect, it } from 'vitest'
import { loopDuty } from '#model/panels/loop'
import {
  fewAndShort,
  messageIn,
  said,
  type Problem,
  figure,
  short,
  words,
  figureText,
  wordingText,
} from '#model/basis/words'
import { unusualValues, withField, defaultScenario } from '#model/design/scenario'
import { loopSpecOf } from '#model/design/assembly'

const plain = (text: string): string => text.replaceAll('\u00a0', ' ')

it.each([
  [figure(8e-5, 'liquidFlow', 2), '4.8 L/min', '1.3 gpm'],
  [figure(0.02, 'airFlow', 2), '72 m³/h', '42 cfm'],
  [figure(9806.65, 'head'), '9.81 kPa (1 m)', '3.3 ft of head'],
  [figure(50, 'head'), '50 Pa', '0.017 ft of head'],
  [figure(249.082, 'fanPressure'), '249 Pa', '1 in water'],
  [figure(0.0323, 'content', 2), '32 L', '8.5 gal'],
  [figure(981, 'load'), '981 Pa', '20.5 lb/ft²'],
  [figure(0.6096, 'flowSpeed', 2), '0.61 m/s', '2 ft/s'],
  [short(0.0202), '20.2 mm', '25/32 in'],
  [short(0.1), '100 mm', '3 15/16 in'],
  [short(0.0007), '0.7 mm', '0.028 in'],
  [figure(4, 'span'), '4 m', '13′ 1 1/2″'],
  [figure(0, 'span'), '0 m', '0″'],
  [figure(0.3048, 'span'), '0.305 m', '1′'],
  [figure(0.012, 'tubeOuter'), '12 mm', '1/2 in'],
  [figure(0.000254, 'coatThickness'), '0.254 mm', '10 mils'],
  [figure(293.07107, 'heat', 2), '290 W', '1000 Btu/h'],
  [figure(4 / 3600, 'valveFlow'), 'Kvs 4 m³/h', 'Cv 4.6'],
  [figure(3, 'K'), '3.0 K', '5.4 °F'],
])('%o is given as %s and %s (NIST SP 811 factors)', (given, si, us) => {
  expect(plain(figureText(given, 'si'))).toBe(si)
  expect(plain(figureText(given, 'us'))).toBe(us)
})

it('wordings keep their numbers and put wordings inside each other', () => {
  const inner = words`of ${figure(2, 'm')}`
  const whole = words`pipes ${inner}, ${'two'} of them`
  expect(whole.filter((part) => typeof part !== 'string')).toHaveLength(1)
  expect(plain(wordingText(whole, 'si'))).toBe('pipes of 2 m, two of them')
})

describe('a problem with numbers in it', () => {
  const loop = { ...loopSpecOf(defaultScenario()), pipeInnerDiameter_m: 0.03 }
  const slow = loopDuty(loop, 6).remarks.find((remark) => wordingText(remark, 'si').includes('too slow'))!
  const problem: Problem = { code: 'slow', severity: 'warning', remedy: '', place: {}, ...said(slow) }

  it('is given in the reader’s units, and in SI where there is no reader (0.6 m/s is 1.97 ft/s)', () => {
    expect(problem.message).toMatch(/ runs at 0\.\d+ m\/s, .* \(0\.6 m\/s\)/)
    expect(plain(messageIn(problem, 'us'))).toMatch(/ runs at 0\.\d+ ft\/s, .* \(2 ft\/s\)/)
    expect(messageIn({ ...problem, wording: undefined as never }, 'us')).toBe(problem.message)
  })

  it('is short on the page too, however long a name in it is', () => {
    const named: Problem = { ...problem, ...said(words`${'x'.repeat(100_000)} at ${figure(20, 'C')}`) }
    const [shown] = fewAndShort([named])
    expect(messageIn(shown!, 'us').length).toBeLessThan(500)
    expect(fewAndShort([problem])[0]!.wording).toEqual(slow)
  })

  it('names an unusual value with its unit as people write it', () => {
    const [windows] = unusualValues(withField(defaultScenario(), 'room.windowU_Wm2K', '0.4'))
    expect(windows!.message).toBe('Window U-value is 0.4 W/m²·K, outside the usual 0.8 W/m²·K to 6 W/m²·K.')
    expect(plain(messageIn(windows!, 'us'))).toContain('Btu/h·ft²·°F')
  })
})
