import { expect, it } from 'vitest'
import { paced } from '#live/paced.ts'

function* working(steps: number, step_ms: number): Generator<number, string> {
  for (let i = 1; i <= steps; i++) {
    const until = performance.now() + step_ms
    while (performance.now() < until);
    yield i
  }
  return 'done'
}

it('reports every step and gives what the generator returns', async () => {
  const shares: number[] = []
  expect(await paced(working(4, 0), (step) => shares.push(step))).toBe('done')
  expect(shares).toEqual([1, 2, 3, 4])
})

it('lets others in between stretches of work, so that whoever wants to end it is heard', async () => {
  let heardAt = 0
  let at = 0
  setTimeout(() => (heardAt = at))
  await paced(working(6, 30), (step) => (at = step))
  expect(heardAt).toBeGreaterThan(0)
  expect(heardAt).toBeLessThan(6)
})

it('a step that throws ends it with what was thrown', async () => {
  function* failing(): Generator<number, never> {
    yield 1
    throw new RangeError('no')
  }
  await expect(paced(failing(), () => {})).rejects.toThrow('no')
})
