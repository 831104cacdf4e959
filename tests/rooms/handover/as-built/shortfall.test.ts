/* The shortfall test on invented logs. A dead module is planted by making the log with a smaller panel at the same
 * flow, then judging it as the whole one: a way the judge's own departures cannot express. */
import { describe, expect, it } from 'vitest'
import { asBuiltCheck } from '#model/handover/as-built'
import type { AsBuiltInputs } from '#inside/model/handover/as-built/inputs-type.ts'
import { builtPanel, type Case } from './panel.ts'

const WHERE = [
  { place: 'semi-arid-south', firstDay: 10 },
  { place: 'mediterranean-coast', firstDay: 190 },
  { place: 'continental', firstDay: 180 },
]
const nightCase = (seed: number): Case => ({
  ...WHERE[seed % WHERE.length]!,
  days: 14,
  seed,
  allDay: false,
  flowMeter: true,
  fault: {},
})

/** The log of a panel of which only `alive_frac` works, judged as the whole. */
function deadModule(seed: number, alive_frac: number): AsBuiltInputs {
  const whole = builtPanel(nightCase(seed))
  return { ...whole, log: builtPanel(nightCase(seed), alive_frac).log }
}

describe('heat against the promise', () => {
  const sound = [1, 2, 3, 4, 5, 6].map((seed) => asBuiltCheck(builtPanel(nightCase(seed))))
  const halved = [1, 2, 3, 4, 5, 6].map((seed) => asBuiltCheck(deadModule(seed, 0.5)))

  it('a sound panel is not short of heat in 6 of 6', () => {
    const shares = sound.map(({ shortfall }) => `${shortfall.share_frac?.toFixed(2)} ${shortfall.verdict}`)
    console.log(`sound: ${shares.join(', ')}`)
    expect(sound.filter((r) => r.shortfall.verdict === 'short')).toHaveLength(0)
  })

  it('with half its modules dead it is never said that nothing needs mending', () => {
    const shares = halved.map(
      (r) => `${r.shortfall.share_frac?.toFixed(2)} ${r.shortfall.verdict} ${r.fault}`,
    )
    console.log(`half dead: ${shares.join(', ')}`)
    expect(halved.filter((r) => r.shortfall.verdict === 'short').length).toBeGreaterThanOrEqual(5)
    for (const r of halved) {
      const codes = r.inspections.map((i) => i.code)
      expect(codes).not.toContain('sound')
      // Dirt may not be accused by a log that says it cannot show dirt.
      expect(codes.includes('dirt') && codes.includes('unlit')).toBe(false)
    }
  })

  it('the promise holds the field factor: 0.85 of the exchange is predicted, not all', () => {
    const inputs = builtPanel(nightCase(1))
    const predicted = (fieldFactor_frac: number) =>
      asBuiltCheck({ ...inputs, fieldFactor_frac }).heat.predictedMean
    const ratio = predicted(0.85) / predicted(1)
    expect(ratio).toBeGreaterThan(0.84)
    expect(ratio).toBeLessThan(0.97)
  })

  it('inlet and outlet exchanged: refused by name', () => {
    const inputs = builtPanel(nightCase(2))
    const { panelIn_C, panelOut_C } = inputs.log
    const log = { ...inputs.log, panelIn_C: panelOut_C, panelOut_C: panelIn_C }
    expect(() => asBuiltCheck({ ...inputs, log })).toThrow(/seem exchanged/)
  })
})
