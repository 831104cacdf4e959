import { describe, expect, it } from 'vitest'
import { duskbank } from './run-shell.ts'

const page = (...set: readonly string[]) =>
  duskbank(
    'sheet',
    '--weather',
    'continental',
    '--format',
    'html',
    ...set.flatMap((field) => ['--set', field]),
  )

describe('the sheet of a machine alone', () => {
  it('is that of the machine: no panels are sized, and it is said so; nothing of panels is bought', async () => {
    const { code, out, err } = await page('job.way=airConditioner')
    expect(code, err).toBe(0)
    const text = out.replaceAll(/<[^>]+>/g, ' ').replaceAll('\u00a0', ' ')
    expect(text).toMatch(/split air conditioner with inverter: \d+ W in all/)
    expect(text).toMatch(/condensate drain DN 20/)
    expect(text).not.toMatch(/header pipe|edge profile|Panel loop/)
  })
  it('says that an area of one’s own is not used beside it', async () => {
    const { code, out, err } = await page('job.way=direct', 'target.autoArea=false', 'target.area_m2=6')
    expect(code, err).toBe(0)
    expect(err).toMatch(/machine in place of panels: the area of your own, 6 m², is not used/)
    expect(out).not.toMatch(/edge profile round each module/)
  })
})
