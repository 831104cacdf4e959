import { describe, expect, it } from 'vitest'
import { addressCode, addressCodeSvg } from '#model/handover/drawing'
import { defaultScenario, withField } from '#model/design/scenario'
import { readLinkHash } from '#live/design-link.ts'
import { designAddress } from '../../src/shell/design-address.ts'
import type { Options } from '../../src/shell/options.ts'
import { modulesOf, readCode } from './read-code.ts'
import { sampleWeather } from '../../src/shell/samples.ts'

const scenario = withField(
  withField(defaultScenario(), 'room.length_m', '7.5'),
  'job.name',
  'Shed & store, 2nd',
)
const weather = sampleWeather('continental')
const options = (values: Options['values']): Options => ({ scenario, format: 'html', out: undefined, values })

describe('the address of a design on its sheet', () => {
  it('opens the same design in the app: exact', () => {
    const address = designAddress(
      options({ address: 'https://example.org/cool', weather: 'continental' }),
      weather,
    )!
    expect(address.startsWith('https://example.org/cool/sheet/#climate=continental')).toBe(true)
    expect(readLinkHash(address.slice(address.indexOf('#')))).toEqual({ scenario, climate: 'continental' })
  })
  it('names a town as the app does', () => {
    const address = designAddress(options({ address: 'http://localhost:8080/', town: 'Kraków' }), weather)!
    expect(readLinkHash(address.slice(address.indexOf('#')))!.climate).toMatch(
      /^at:[\d.]+,[\d.]+,[\d.]+;name=/,
    )
  })
  it.each([
    [{ address: 'somewhere', weather: 'continental' }, /no address of a page/],
    [{ address: 'https://example.org/#a', weather: 'continental' }, /no address of a page/],
    [{ address: 'https://example.org/', weather: 'my-year.csv' }, /weather of your own/],
  ])('%o is refused', (values, message) => {
    expect(() => designAddress(options(values), weather)).toThrow(message)
  })
})

describe('the code of an address', () => {
  it('has its white border and three corner squares of seven modules (ISO/IEC 18004)', () => {
    const code = addressCode('https://example.org/sheet/#climate=continental')!
    const edge = code.side - 4
    for (const [x, y] of [
      [4, 4],
      [edge - 7, 4],
      [4, edge - 7],
    ] as const)
      expect(code.path).toContain(`M${x} ${y}h7v1h-7z`)
    const ends = [...code.path.matchAll(/M(\d+) (\d+)h(\d+)/g)].map(([, x, y, n]) => [
      +x! + +n!,
      +y! + 1,
      +x!,
    ])
    expect(Math.max(...ends.map(([right]) => right!))).toBe(edge)
    expect(Math.min(...ends.map(([, , left]) => left!))).toBe(4)
  })
  it.each([0, 30, 90, 180, 330, 520])(
    'is read again by another implementation, with %i letters more; a black module turned white is noticed',
    (more) => {
      const address = designAddress(
        options({ address: `https://example.org/cool${'o'.repeat(more)}`, weather: 'continental' }),
        weather,
      )!
      const black = modulesOf(addressCodeSvg(addressCode(address)!))
      const read = readCode(black)
      expect(read).toBe(address)
      expect(readLinkHash(read.slice(read.indexOf('#')))).toEqual({ scenario, climate: 'continental' })
      const middle = Math.floor(black.length / 2)
      black[middle]![middle + 4] = !black[middle]![middle + 4]
      expect(() => readCode(black)).toThrow(/does not check/)
    },
  )
  it('has modules of 0.4 mm or more; a longer address has none', () => {
    for (const length of [40, 300, 700]) {
      const { side, side_mm } = addressCode(`https://example.org/#${'a'.repeat(length)}`)!
      expect(side_mm / side).toBeGreaterThanOrEqual(0.4)
      expect(side_mm).toBeLessThanOrEqual(46)
    }
    expect(addressCode(`https://example.org/#${'a'.repeat(2000)}`)).toBeNull()
  })
})
