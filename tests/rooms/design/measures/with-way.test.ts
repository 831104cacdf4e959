import { expect, test } from 'vitest'
import {
  crossFieldProblems,
  defaultScenario,
  free,
  hold,
  sizesPanels,
  wayText,
  withField,
  withPanelsInWay,
  withWayTaken,
  type WayPart,
} from '#model/design/scenario'
import { asItIs, MEASURES, takenMeasures, wayChanges, withWay } from '#model/design/measures'
import { sampleWeather } from '../../../../src/shell/samples.ts'

const weather = sampleWeather('hot-desert')
const brick = withField(
  withField(defaultScenario(), 'room.wallBuild', 'brick'),
  'room.roofReflectance_frac',
  '0.1',
)

test.each(MEASURES.map(({ id }) => id))(
  '%s taken is what the search simulates, once, and leaves the room',
  (id) => {
    const measure = MEASURES.find((one) => one.id === id)!
    const taken = withWayTaken(brick, [id])
    expect(taken.room).toBe(brick.room)
    const simulated = withWay(taken, weather)
    expect(simulated.room).toEqual(measure.apply(brick, 1, weather).room)
    expect(withWay(simulated, weather)).toEqual(simulated)
    // back: the very room it was
    expect(withWayTaken(taken, [])).toEqual(brick)
  },
)

test('nothing taken changes nothing', () => {
  expect(withWay(brick, weather)).toBe(brick)
  expect(wayChanges(brick, weather)).toEqual([])
  expect(sizesPanels(brick)).toBe(true)
})

test('panels are sized beside measures only where they are in the way, never beside a machine', () => {
  const target = (way: readonly WayPart[]) => withWay(withWayTaken(brick, way), weather).target
  expect(target(['shade', 'panels'])).toEqual(brick.target)
  expect(target(['shade'])).toMatchObject({ autoArea: false, area_m2: 0 })
  expect(target(['shade', 'direct'])).toMatchObject({ autoArea: false, area_m2: 0 })
  // an area of the user's own counts beside measures, not beside a machine
  const own = withField(withField(brick, 'target.autoArea', 'false'), 'target.area_m2', '6')
  expect(withWay(withWayTaken(own, ['shade']), weather).target.area_m2).toBe(6)
  const machine = withWayTaken(own, ['direct'])
  expect(withWay(machine, weather).target.area_m2).toBe(0)
  expect(crossFieldProblems(machine).map(({ code }) => code)).toContain('area-beside-machine')
})

test('an area that is held or looked for puts panels in place of a machine', () => {
  const machine = withWayTaken(brick, ['shade', 'airConditioner'])
  expect(withPanelsInWay(machine).job.way).toEqual(['shade', 'panels'])
  expect(hold(machine, { area_m2: 4 }).job.way).toEqual(['shade', 'panels'])
  expect(free(machine, ['area']).job.way).toEqual(['shade', 'panels'])
  expect(hold(brick, { area_m2: 4 }).job.way).toEqual([])
})

test('parts are kept in one order and named as on the page of ways; two plants are refused', () => {
  const taken = withWayTaken(brick, ['panels', 'nightFan', 'shade'])
  expect(taken.job.way).toEqual(['shade', 'nightFan', 'panels'])
  expect(wayText(taken)).toBe('Shade the windows outside + Night fan + panels')
  expect(takenMeasures(taken).map(({ id }) => id)).toEqual(['shade', 'nightFan'])
  const two = { ...brick, job: { ...brick.job, way: ['panels', 'direct'] as const } }
  expect(crossFieldProblems(two).map(({ code }) => code)).toEqual(['two-plants'])
  expect(() => withField(brick, 'job.way', 'shade,shade')).toThrow(/job\.way.*only once/)
  expect(() => withField(brick, 'job.way', 'curtains')).toThrow(/job\.way.*some of/)
})

test('what it changes is said with both values: brick of 2.0, with 0.1 m of 0.035 W/mK on it 0.30 W/m²K', () => {
  const changes = wayChanges(withWayTaken(brick, ['insulateWalls', 'nightFan']), weather)
  const walls = changes.find(({ field }) => field === 'room.wallU_Wm2K')!
  // 1/U = 0.13 + 0.013/0.57 + 0.22/0.77 + 0.04, insulation 0.1/0.035 on top
  expect(1 / walls.after - 1 / walls.before).toBeCloseTo(0.1 / 0.035, 9)
  expect(changes.find(({ field }) => field === 'room.nightAirChange_1h')).toMatchObject({
    before: 0,
    after: 8,
  })
  expect(asItIs(withWayTaken(brick, ['shade']))).toEqual(brick)
})
