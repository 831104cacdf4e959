/* Designs of version 1 had the measures of their way in the room. */
import { expect, test } from 'vitest'
import { defaultScenario, withWayTaken, type MeasureId } from '#model/design/scenario'
import { MEASURES, withWay } from '#model/design/measures'
import { parseScenario } from '#inside/model/design/scenario/parse.ts'
import { readLinkHash } from '#live/design-link.ts'
import { sampleWeather } from '../../../../src/shell/samples.ts'

const weather = sampleWeather('continental')
const asItIs = {
  ...defaultScenario(),
  room: { ...defaultScenario().room, roofReflectance_frac: 0.3, wallU_Wm2K: 2 },
}

/** What version 1 kept of a room with measures: the room after them, their names, the machine by itself. */
function olderFile(ids: readonly MeasureId[], machine: string) {
  const measures = MEASURES.filter(({ id }) => ids.includes(id))
  const after = measures.reduce((s, measure) => measure.apply(s, 1, weather), asItIs)
  const target = machine === 'none' ? after.target : { ...after.target, autoArea: false, area_m2: 0 }
  const way = [...measures.map(({ name }) => name), ...(machine === 'none' ? [] : ['a machine'])].join(' + ')
  return {
    file: { duskbankScenario: 1, ...after, target, job: { name: 'Old', note: 'Mine', way, machine } },
    after,
  }
}

test('the room before is worked back, the way is beside it, and what is simulated is as it was', () => {
  const { file, after } = olderFile(['paintRoof', 'insulateWalls', 'nightFan'], 'direct')
  const { scenario, problems } = parseScenario(file)
  expect(scenario!.job.way).toEqual(['paintRoof', 'insulateWalls', 'nightFan', 'direct'])
  expect(scenario!.room.wallU_Wm2K).toBeCloseTo(2, 9)
  expect(scenario!.room.roofReflectance_frac).toBe(0.3)
  expect(scenario!.room.nightVent).toBe(false)
  expect(scenario!.target.autoArea).toBe(true)
  const simulated = withWay(scenario!, weather)
  for (const [name, value] of Object.entries(after.room)) {
    const now = simulated.room[name as keyof typeof simulated.room]
    if (typeof value === 'number') expect(now, name).toBeCloseTo(value, 9)
    else expect(now, name).toEqual(value)
  }
  expect(simulated.target.area_m2).toBe(0)
  const [warning] = problems.filter(({ code }) => code === 'scenario-older-way')
  expect(warning!.message).toMatch(/Not known: what the bare roof sends back.*walls were made of.*at night/)
  // words that name nothing are not lost
  expect(scenario!.job.note).toBe('Mine\nWay chosen: a machine')
})

test('panels beside measures stay panels; a design without a way is read as it is, without a word', () => {
  const { file } = olderFile(['shade'], 'none')
  const beside = parseScenario({ ...file, job: { ...file.job, way: `${file.job.way} + panels` } })
  expect(beside.scenario!.job.way).toEqual(['shade', 'panels'])
  const plain = { duskbankScenario: 1, job: { name: 'Old', note: '', way: '', machine: 'none' } }
  const read = parseScenario(plain)
  expect(read.scenario!.job.way).toEqual([])
  expect(read.problems).toEqual([])
})

test('a value at its end stays in its field’s range when it is worked back', () => {
  const { file } = olderFile(['airtight', 'glazing', 'fewerGains'], 'none')
  const room = { ...file.room, airChange_1h: 20, windowU_Wm2K: 5.9, windowGain_frac: 0.95 }
  const { scenario } = parseScenario({ ...file, room })
  expect(scenario!.room.airChange_1h).toBe(20)
  expect(scenario!.room.windowU_Wm2K).toBe(7)
  expect(scenario!.room.windowGain_frac).toBe(0.95)
})

test('links of version 1, with and without saying so', () => {
  const words = 'job.way=Shade+the+windows+outside+%2B+panels&room.shading_frac=0.135'
  for (const hash of [`#climate=x&version=1&${words}`, `#climate=x&${words}`]) {
    const { scenario, older } = readLinkHash(hash)!
    expect(scenario.job.way).toEqual(['shade', 'panels'])
    expect(scenario.room.shading_frac).toBeCloseTo(0.5, 9)
    expect(older).toHaveLength(1)
  }
  const machine = readLinkHash(
    '#climate=x&target.autoArea=false&target.area_m2=0&job.machine=airConditioner&job.way=small+air+conditioner',
  )!
  expect(machine.scenario).toEqual(withWayTaken(defaultScenario(), ['airConditioner']))
  expect(readLinkHash('#climate=x&version=3&job.way=shade,direct')!.scenario.job.way).toEqual([
    'shade',
    'direct',
  ])
  expect(() => readLinkHash('#climate=x&version=3&job.way=Shade')).toThrow(/job\.way/)
})

test('a link with fields but no climate holds in the climate that is open, and says so; other hashes are no designs', () => {
  const { scenario, climate, older } = readLinkHash('#job.way=paintRoof,nightFan', 'continental')!
  expect(scenario.job.way).toEqual(['paintRoof', 'nightFan'])
  expect(climate).toBe('continental')
  expect(older!.map(({ code }) => code)).toEqual(['link-no-climate'])
  expect(() => readLinkHash('#job.wey=paintRoof', 'continental')).toThrow(/job\.wey|no such field/)
  expect(readLinkHash('#tank.size', 'continental')).toBeNull()
  expect(readLinkHash('#store', 'continental')).toBeNull()
})
