import { describe, expect, test } from 'vitest'
import { overshoot, span, type Check } from './check.ts'
import { ALL_CHECKS, CHECKS } from './checks/all.ts'
import { dataPresent, runCheck } from './run.ts'
import { SOURCES } from './sources.ts'
import { untabled, UNTABLED_PATTERNS } from './untabled.ts'
import { kindCounts, totals } from '#ui/trust/evidence-row.ts'
import { closingLine, readableTable, readReadableTable, readTable, tableOf } from './table.ts'

const table = readTable()
const committed = new Map(table.rows.map((row) => [row.quantity, row]))

for (const theme of new Set(ALL_CHECKS.map((check) => check.theme))) {
  describe(`evidence: ${theme}`, () => {
    for (const check of ALL_CHECKS.filter((each) => each.theme === theme)) outsideTest(check)
  })
}

/** The check itself, and that the committed table still says what the code gives. */
function outsideTest(check: Check): void {
  const name = `${check.quantity} (${check.kind}: ${SOURCES[check.source]}; ${check.because})`
  if (!dataPresent(check)) {
    test(`${name}: not run here, ../shared/data/${check.needs} is absent; the last measured value is kept`, () => {
      console.log(`not run here: ${check.quantity}: ../shared/data/${check.needs} is absent`)
      expect(committed.get(check.quantity)?.ours).toEqual(expect.any(Number))
    })
    return
  }
  const body = () => {
    const ours = check.got()
    const [low, high] = span(check)
    expect(overshoot(check, ours), `${ours} is outside ${low} … ${high} ${check.unit}`).toBeLessThanOrEqual(0)
  }
  if (check.miss === undefined) test(name, body)
  else test.fails(`${name}: misses, because ${check.miss}`, body)
  if (untabled(check) !== null) return
  test(`the committed table still holds: ${check.quantity}`, () => {
    const old = committed.get(check.quantity)
    const row = runCheck(check, old, old?.measuredOn ?? '')
    const { ours, ...rest } = row
    expect(old, 'run `npm run -s evidence` and commit the table').toMatchObject(rest)
    expect(Math.abs(ours! - old!.ours!)).toBeLessThanOrEqual(2e-4 * Math.abs(ours!) + 1e-6)
  })
}

describe('evidence: the table', () => {
  test('has no row without a check and no check twice', () => {
    expect([...committed.keys()].sort()).toEqual(CHECKS.map((check) => check.quantity).sort())
  })
  test('cites its sources as the checks do', () => {
    expect(table.sources).toEqual(tableOf(table.rows).sources)
  })
  test('is the same in the app and in the repository', () => {
    expect(readReadableTable()).toBe(readableTable(table))
  })
  test('covers at least 80 values over at least 25 sources and counts its misses', () => {
    const { checks, sources, misses } = totals(table.rows)
    expect(checks).toBeGreaterThanOrEqual(80)
    expect(sources).toBeGreaterThanOrEqual(25)
    expect(closingLine(table.rows)).toBe(`${checks} checks, ${sources} sources, ${misses} misses`)
  })
  test('holds at least 60 rows from outside and 60 second implementations', () => {
    const count = new Map(kindCounts(table.rows).map(({ kind, rows }) => [kind, rows]))
    expect(count.get('outside')).toBeGreaterThanOrEqual(60)
    expect(count.get('second')).toBeGreaterThanOrEqual(60)
    expect(table.rows.filter(({ kind }) => kind === 'measured').length).toBeGreaterThanOrEqual(60)
  })
  test('leaves out what is retyped or called by nothing; every pattern for that meets a check', () => {
    expect(
      UNTABLED_PATTERNS.filter((pattern) => !ALL_CHECKS.some(({ quantity }) => pattern.test(quantity))),
    ).toEqual([])
  })
  test('names a tolerance reason for every check and a cause for every known miss', () => {
    for (const check of CHECKS) {
      expect(check.because.length, check.quantity).toBeGreaterThan(5)
      if (check.miss !== undefined) expect(check.miss.length, check.quantity).toBeGreaterThan(10)
    }
  })
})

test('where open data are absent, the last measured value and its day stay in the table', () => {
  const check = { ...CHECKS.find((each) => each.needs !== undefined)!, needs: 'no-such-file.txt' }
  const last = committed.get(check.quantity)!
  expect(runCheck(check, last, '2030-01-01')).toMatchObject({
    ours: last.ours,
    status: last.status,
    measuredOn: last.measuredOn,
  })
  expect(runCheck(check, undefined, '2030-01-01')).toMatchObject({ ours: null, status: 'not run' })
})
