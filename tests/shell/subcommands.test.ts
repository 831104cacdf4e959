import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { fieldAt } from '#model/design/scenario'
import { fieldPaths } from '#inside/model/design/scenario/schema.ts'
import { isUnit } from '#model/basis/units'
import { duskbank, readCsv, readNamed, scratchFolder } from './run-shell.ts'

const CLIMATE = ['--weather', 'continental']

/** Columns end in their unit; time and words have none. */
function expectUnits(names: readonly string[]): void {
  for (const name of names) {
    const suffix = name.split('_')[1]
    if (suffix === undefined || suffix === 'local') continue
    expect(isUnit(suffix) || suffix === 'kWh', `${name} ends in a known unit`).toBe(true)
  }
}

function expectNumbers(column: readonly string[], name: string): void {
  expect(
    column.every((cell) => cell !== '' && Number.isFinite(Number(cell))),
    `${name}: numbers only`,
  ).toBe(true)
}

test('help names every subcommand, every option and every field with unit, range and default', async () => {
  const { code, out, err } = await duskbank('help')
  expect(code).toBe(0)
  expect(err).toBe('')
  for (const name of ['sky', 'panel', 'year', 'size', 'compare', 'help'])
    expect(out).toMatch(new RegExp(`^  ${name} `, 'm'))
  for (const option of [
    'weather',
    'scenario',
    'set',
    'format',
    'out',
    'ignore-measured',
    'plate-temp',
    'draws',
  ])
    expect(out).toContain(`--${option}`)
  const lines = out.split('\n')
  for (const path of fieldPaths()) {
    const at = lines.indexOf(`    ${path}`)
    expect(at, path).toBeGreaterThan(0)
    const field = fieldAt(path)!.field
    expect(lines[at + 1]).toContain(field.label)
    if (field.type === 'number')
      expect(lines[at + 2]!.trim()).toBe(`${field.min}…${field.max} ${field.unit}, default ${field.default}`)
    else expect(lines[at + 2]!.trim()).not.toBe('')
  }
})

test('no subcommand at all is answered with the help', async () => {
  const { code, out } = await duskbank()
  expect(code).toBe(0)
  expect(out).toContain('Usage:')
})

describe('sky', () => {
  test('8760 rows of longwave inside what a sky can send, in both bands', async () => {
    const { code, out } = await duskbank('sky', ...CLIMATE)
    const table = readCsv(out)
    expect(code).toBe(0)
    expectUnits(Object.keys(table))
    for (const name of ['skyLongwave_Wm2', 'window_Wm2', 'offWindow_Wm2', 'skyTemp_C'])
      expectNumbers(table[name]!, name)
    expect(table['time_local']).toHaveLength(8760)
    const total = table['skyLongwave_Wm2']!.map(Number)
    expect(Math.min(...total)).toBeGreaterThan(80)
    expect(Math.max(...total)).toBeLessThan(550)
    total.forEach((value, h) => {
      expect(
        Math.abs(value - Number(table['window_Wm2']![h]) - Number(table['offWindow_Wm2']![h])),
      ).toBeLessThan(0.01)
    })
  })

  test('the formula is the one that was set', async () => {
    const [usual, other] = await Promise.all([
      duskbank('sky', ...CLIMATE),
      duskbank('sky', ...CLIMATE, '--set', 'sky.model=brutsaert1975'),
    ])
    expect(other.code).toBe(0)
    expect(other.out).not.toBe(usual.out)
  })
})

describe('panel', () => {
  test('hourly equilibrium and heat; a colder plate gives less heat in every hour', async () => {
    const [warm, cold] = await Promise.all([
      duskbank('panel', ...CLIMATE, '--plate-temp', '20'),
      duskbank('panel', ...CLIMATE, '--plate-temp', '10', '--format', 'json'),
    ])
    expect([warm.code, cold.code]).toEqual([0, 0])
    const table = readCsv(warm.out)
    expectUnits(Object.keys(table))
    const colder = JSON.parse(cold.out) as Record<string, number[]>
    expect(Object.keys(colder)).toEqual(Object.keys(table))
    expectNumbers(table['heatAtPlate_Wm2']!, 'heatAtPlate_Wm2')
    const warmer = table['heatAtPlate_Wm2']!.map(Number)
    const dry = colder['waterOnSurface_kgm2']!.map(
      (kg, h) => kg === 0 && Number(table['waterOnSurface_kgm2']![h]) === 0,
    )
    expect(dry.filter(Boolean).length).toBeGreaterThan(2000)
    warmer.forEach((heat, h) => {
      if (dry[h]) expect(colder['heatAtPlate_Wm2']![h]!).toBeLessThan(heat)
    })
  })
})

describe('year', () => {
  test('hourly room, store, heat and pump of an own area, written to a file; progress on standard error', async () => {
    const file = join(scratchFolder(), 'year.csv')
    const settings = ['--set', 'target.autoArea=false', '--set', 'target.area_m2=8']
    const { code, out, err } = await duskbank('year', ...CLIMATE, ...settings, '--out', file)
    expect(code).toBe(0)
    expect(out).toBe('')
    expect(err).toContain('panel 8.00 m²')
    const table = readCsv(readFileSync(file, 'utf8'))
    expectUnits(Object.keys(table))
    for (const name of [
      'outdoor_C',
      'room_C',
      'roomDoNothing_C',
      'store_C',
      'plate_C',
      'panelHeat_W',
      'pumpRun_frac',
    ])
      expectNumbers(table[name]!, name)
    table['panelReturn_C']!.forEach((cell, h) => expect(cell === '').toBe(table['pumpRun_frac']![h] === '0'))
    expect(Math.max(...table['room_C']!.map(Number))).toBeLessThan(
      Math.max(...table['roomDoNothing_C']!.map(Number)),
    )
  })
})

describe('size', () => {
  test('an area with its range, low ≤ middle ≤ high, the same each time; csv and json say the same', async () => {
    const words = ['size', ...CLIMATE, '--draws', '12']
    const [csv, json] = await Promise.all([duskbank(...words), duskbank(...words, '--format', 'json')])
    expect([csv.code, json.code]).toEqual([0, 0])
    const named = readNamed(csv.out)
    const object = JSON.parse(json.out) as Record<string, unknown>
    expect(Object.keys(named)).toEqual(Object.keys(object))
    expectUnits(Object.keys(named))
    expect(named['result']).toBe('met')
    for (const [name, value] of Object.entries(object))
      if (typeof value === 'number')
        expect(Number(named[name]) / (value || 1), name).toBeCloseTo(value === 0 ? 0 : 1, 4)
    const [low, middle, high] = ['areaLow10_m2', 'areaMiddle50_m2', 'areaHigh90_m2'].map((name) =>
      Number(named[name]),
    )
    expect(low).toBeLessThanOrEqual(middle!)
    if (named['areaHigh90_m2'] !== '') expect(middle).toBeLessThanOrEqual(high!)
    expect(Math.abs(Number(named['ledgerResidual_frac']))).toBeLessThan(1e-9)
    expect(Number(named['hoursOver_h'])).toBeLessThan(Number(named['doNothingHoursOver_h']))
  })

  test('out of reach: a floor with what sets it and what would help', async () => {
    const { code, out } = await duskbank(
      'size',
      '--weather',
      'wet-tropics',
      '--draws',
      '0',
      '--format',
      'json',
    )
    const found = JSON.parse(out) as Record<string, unknown>
    expect(code).toBe(0)
    expect(found['result']).toBe('floor')
    expect(found['areaNeeded_m2']).toBeNull()
    expect(found['limit']).toMatch(/\.$/)
    expect((found['loadCuts'] as string[]).length).toBeGreaterThan(0)
    expect(found['peak_C'] as number).toBeLessThan(found['doNothingPeak_C'] as number)
  })
})

describe('compare', () => {
  test('climates × plans × coatings in one table', async () => {
    const axes = ['--climates', 'continental,high-dry-plateau', '--plans', 'nightOnly,allDay']
    const { code, out, err } = await duskbank('compare', ...axes)
    const table = readCsv(out)
    expect(code).toBe(0)
    expectUnits(Object.keys(table))
    expect(table['climate']).toEqual(['continental', 'continental', 'high-dry-plateau', 'high-dry-plateau'])
    expect(table['plan']).toEqual(['nightOnly', 'allDay', 'nightOnly', 'allDay'])
    expect(err).toContain('case 4 of 4')
  })
})

test('a scenario file is read, --set goes on top of it, and the last --set wins', async () => {
  const file = new URL('../rooms/design/scenario/version-1.json', import.meta.url).pathname
  expect(existsSync(file)).toBe(true)
  const words = ['panel', '--weather', 'mild-ocean-coast', '--scenario', file]
  const [plain, set, same] = await Promise.all([
    duskbank(...words),
    duskbank(...words, '--set', 'panel.tilt_deg=40', '--set', 'panel.tilt_deg=60'),
    duskbank(...words, '--set', 'panel.tilt_deg=60'),
  ])
  expect([plain.code, set.code, same.code]).toEqual([0, 0, 0])
  expect(set.out).toBe(same.out)
  expect(set.out).not.toBe(plain.out)
})
