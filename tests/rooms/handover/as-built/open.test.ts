/* A logger file must come back as the numbers that were written, in whatever units and marks it was written. */
import { describe, expect, it } from 'vitest'
import { inventClimate } from '#model/outdoors/climate'
import { placeById } from '#inside/model/outdoors/climate/places.ts'
import { flowUnit_kgs, logQuantity } from '#inside/model/handover/as-built/columns.ts'
import { logHeaders, openLog } from '#model/handover/as-built'
import type { LogOptions } from '#inside/model/handover/as-built/open.ts'
import { writeLog } from '#inside/model/handover/as-built/write.ts'
import { ProblemError } from '#model/basis/words'
import { builtPanel } from './panel.ts'

const inputs = builtPanel({
  place: 'semi-arid-south',
  firstDay: 10,
  days: 3,
  seed: 5,
  allDay: true,
  flowMeter: true,
  fault: {},
})
const OPTIONS: LogOptions = { file: 'roof.csv', fluidDensity_kgm3: 998 }
const written = writeLog(inputs.log, inputs.weather, 998)

const near = (a: Float64Array, b: Float64Array, within: number) => {
  expect(a.length).toBe(b.length)
  a.forEach((value, i) => expect(Math.abs(value - b[i]!)).toBeLessThan(within))
}

describe('header words of a logger', () => {
  it.each([
    ['Panel in (°C)', 'panelIn'],
    ['panelOut_C', 'panelOut'],
    ['T_in', 'panelIn'],
    ['Outlet temp', 'panelOut'],
    ['Collector return [°F]', 'panelOut'],
    ['Tank (°C)', 'store'],
    ['Indoor temp', 'room'],
    ['Outdoor air', 'air'],
    ['Flow rate (L/min)', 'flow'],
    ['pump running', 'pumpRun'],
    ['battery', null],
  ])('%s is %s', (header, want) => {
    expect(logQuantity(header)).toBe(want)
  })
})

describe('units of flow', () => {
  it.each([
    ['flow (L/min)', 1 / 60],
    ['flow (mL/min)', 1e-3 / 60],
    ['flow (millilitres per minute)', 1e-3 / 60],
    ['flow ml/s', 1e-3],
    ['flow (mL/h)', 1e-3 / 3600],
    ['flow (cm3/min)', 1e-3 / 60],
    ['flow (dm3/h)', 1 / 3600],
    ['flow (L/h)', 1 / 3600],
    ['flow (m3/h)', 1000 / 3600],
    ['flow (imp gal/min)', 4.54609 / 60],
    ['flow (gpm)', 3.785411784 / 60],
  ])('%s', (header, litres) => {
    expect(flowUnit_kgs(header, '', 1000)).toBeCloseTo(litres, 12)
  })
})

describe('opening a logger file', () => {
  it('gives back what was written (rounding of the file: 0.005 K, 0.0005 L/min)', () => {
    const opened = openLog(written, inputs.weather, OPTIONS)
    expect(opened.log.hours).toBe(72)
    near(opened.log.panelIn_C, inputs.log.panelIn_C, 0.0051)
    near(opened.log.panelOut_C, inputs.log.panelOut_C, 0.0051)
    near(opened.log.flow_kgs!, inputs.log.flow_kgs!, 1e-5)
    expect(opened.log.store_C).toBeNull()
    expect(opened.warnings).toEqual([])
  })

  it('reads semicolons, decimal commas, °F and L/h alike', () => {
    const lines = written.trim().split('\n').slice(2)
    const changed = lines.map((line) => {
      const [time, tIn, tOut, flow] = line.split(',')
      const f = (c: string) => (Number(c) * 1.8 + 32).toFixed(3).replace('.', ',')
      return [time, f(tIn!), f(tOut!), (Number(flow) * 60).toFixed(2).replace('.', ',')].join(';')
    })
    const text = `Zeit;Panel in [°F];Panel out [°F];Flow [L/h]\n${changed.join('\n')}\n`
    const opened = openLog(text, inputs.weather, OPTIONS)
    near(opened.log.panelOut_C, inputs.log.panelOut_C, 0.01)
    near(opened.log.flow_kgs!, inputs.log.flow_kgs!, 1e-4)
  })

  it('makes hourly means of ten-minute rows and leaves short hours out', () => {
    const start = Date.UTC(2001, 0, 11, 0, 5) // nominal year of the sample; local standard time
    const rows = Array.from({ length: 6 * 30 + 1 }, (_, i) => {
      const stamp = new Date(start + i * 600_000).toISOString().slice(0, 16).replace('T', ' ')
      return `${stamp},${(20 + (i % 6)).toFixed(1)},15.0`
    })
    const begin = inputs.weather.start_utcMs + inputs.weather.site.utcOffset_h * 3_600_000
    const year = new Date(begin).getUTCFullYear()
    const text = `time,panel in,panel out\n${rows.join('\n').replaceAll('2001-', `${year}-`)}\n`
    const { log } = openLog(text, inputs.weather, OPTIONS)
    expect(log.panelIn_C[3]).toBeCloseTo(22.5, 9)
    expect(log.hours).toBeLessThanOrEqual(31)
  })

  it('a typical year takes the place of another year, with a warning; a stray season is refused', () => {
    const begin = inputs.weather.start_utcMs + inputs.weather.site.utcOffset_h * 3_600_000
    const year = new Date(begin).getUTCFullYear()
    const later = written.replaceAll(`${year}-01`, `${year + 3}-01`)
    try {
      openLog(later, inputs.weather, OPTIONS)
      expect.unreachable('three days of another year share nothing with three days')
    } catch (error) {
      expect((error as ProblemError).problems.at(-1)!.code).toBe('as-built-no-common-hours')
    }
  })

  it('a log of another year is laid over a whole typical year by the day, and says so', () => {
    const year = inventClimate(placeById('semi-arid-south'))
    const later = written.replaceAll(/^2001-/gm, '2024-')
    const opened = openLog(later, year, OPTIONS)
    expect(opened.firstWeatherHour).toBe(10 * 24)
    expect(opened.log.hours).toBe(72)
    expect(opened.warnings.map((w) => w.code)).toContain('as-built-other-year')
    near(opened.weather.airTemp_C, inputs.weather.airTemp_C, 1e-12)
  })

  it.each([
    ['no table', 'hello', 'as-built-no-table'],
    ['empty', '', 'weather-empty'],
    ['no panel columns', written.replace('panel in (°C)', 'battery'), 'as-built-column-missing'],
    ['flow without a unit', written.replace('flow (L/min)', 'flow'), 'as-built-flow-unit'],
  ])('%s: refused with a sentence', (_why, text, code) => {
    try {
      openLog(text, inputs.weather, OPTIONS)
      expect.unreachable('should have been refused')
    } catch (error) {
      expect(error).toBeInstanceOf(ProblemError)
      expect((error as ProblemError).problems.map((p) => p.code)).toContain(code)
    }
  })
})

describe('columns chosen by hand', () => {
  const header = written.split('\n').findIndex((line) => /^time/i.test(line))
  const lines = written.split('\n')
  const names = lines[header]!.split(',')
  const at = (quantity: string) => names.findIndex((name) => logQuantity(name) === quantity)
  /** The same file with headers that say nothing. */
  const mute = [
    ...lines.slice(0, header),
    names.map((name, i) => (i === 0 ? name : `channel ${i}`)).join(','),
    ...lines.slice(header + 1),
  ].join('\n')
  const chosen = { panelIn: at('panelIn'), panelOut: at('panelOut') }

  it('read a file whose headers say nothing as the one whose headers do', () => {
    const found = openLog(mute, inputs.weather, { ...OPTIONS, columns: chosen })
    const known = openLog(written, inputs.weather, OPTIONS)
    near(found.log.panelIn_C, known.log.panelIn_C, 1e-9)
    near(found.log.panelOut_C, known.log.panelOut_C, 1e-9)
    expect(found.log.flow_kgs).toBeNull()
    expect(logHeaders(mute, 'roof.csv').map(({ header }) => header)).toContain('channel 1')
  })

  it('ask for the unit of a flow without one, and take mL/min for what it is', () => {
    const columns = { ...chosen, flow: at('flow') }
    expect(() => openLog(mute, inputs.weather, { ...OPTIONS, columns })).toThrow(/does not say its unit/)
    const slow = openLog(mute, inputs.weather, { ...OPTIONS, columns, flowUnit: 'mL/min' })
    const fast = openLog(mute, inputs.weather, { ...OPTIONS, columns, flowUnit: 'L/min' })
    const hour = fast.log.flow_kgs!.findIndex((flow) => flow > 0)
    expect(fast.log.flow_kgs![hour]! / slow.log.flow_kgs![hour]!).toBeCloseTo(1000, 6)
  })

  it('leave a quantity out, and refuse a column that is not there or is taken twice', () => {
    const without = openLog(written, inputs.weather, { ...OPTIONS, columns: { flow: null } })
    expect(without.log.flow_kgs).toBeNull()
    for (const columns of [
      { ...chosen, air: 99 },
      { panelIn: chosen.panelIn, panelOut: chosen.panelIn },
    ])
      expect(() => openLog(written, inputs.weather, { ...OPTIONS, columns })).toThrow(ProblemError)
  })
})
