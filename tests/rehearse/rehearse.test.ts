/* A small rehearsal: one fault in four sizes takes turns with the next over the climates, and sound panels; the whole is
 * `npm run -s rehearse`. The seeds are not those of development (under 1000). */
import { expect, test } from 'vitest'
import { casesOf } from './cases.ts'
import { judged } from './judged.ts'
import { confusion, figures } from './table.ts'

test('a small rehearsal: found, first, in the first three, both named', { timeout: 300_000 }, () => {
  const all = casesOf([3001])
  const one = all.filter(({ planted, sizeNumber, climate }, i) => {
    if (planted.includes('wornFilm')) return sizeNumber === 2 && climate.place === 'semi-arid-south'
    return i % 5 === 0
  })
  const found = one.map((rehearsed) => judged(rehearsed, true))
  console.log(confusion(found))
  const share = (name: string) => {
    const { hits, of } = figures(found).find((figure) => figure.name.startsWith(name))!
    expect(of).toBeGreaterThan(2)
    return hits / of
  }
  expect(share('shortfall found')).toBeGreaterThanOrEqual(0.9)
  expect(share('right cause first')).toBeGreaterThanOrEqual(0.75)
  expect(share('right cause in the first three')).toBeGreaterThanOrEqual(0.9)
  expect(share('two at once')).toBeGreaterThanOrEqual(0.4)
  expect(share('cards that contradict')).toBe(0)
})
