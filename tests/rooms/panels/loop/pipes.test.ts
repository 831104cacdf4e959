import { describe, expect, it } from 'vitest'
import { fluidProperties } from '#model/panels/loop'
import { pressureGradient_Pam, tubeVelocity } from '#inside/model/panels/loop/friction.ts'
import {
  AIR_RULE,
  designBore_m,
  pipeGain_WmK,
  standardBore_m,
  WATER_HEADER_RULE,
  WATER_RULE,
} from '#inside/model/panels/loop/pipes.ts'

const water = fluidProperties('water', 0, 15)
const air = fluidProperties('air', 0, 15)

describe('heat gain of a 16 mm tube, film 9 W/m²K (cylinder in closed form)', () => {
  it('under 13 mm of 0.036 W/mK: 0.195745 W/mK', () => {
    expect(pipeGain_WmK(0.016, 0.013)).toBeCloseTo(0.195745, 6)
  })
  it('bare: 0.452389 W/mK', () => {
    expect(pipeGain_WmK(0.016, 0)).toBeCloseTo(0.452389, 6)
  })
  it('falls as insulation grows, for any tube that is not thinner than its critical radius', () => {
    for (const outer of [0.01, 0.022, 0.2])
      for (let t = 0; t < 0.1; t += 0.005)
        expect(pipeGain_WmK(outer, t + 0.005)).toBeLessThan(pipeGain_WmK(outer, t))
  })
})

describe('choice of bore', () => {
  const rules = [
    [WATER_RULE, water, 30],
    [WATER_HEADER_RULE, water, 30],
    [AIR_RULE, air, 3],
  ] as const

  it('keeps both limits of its rule, and wastes nothing beyond the tighter one', () => {
    for (const [rule, fluid, most_kgs] of rules)
      for (let flow_kgs = 0.001; flow_kgs < most_kgs; flow_kgs *= 1.3) {
        const bore_m = designBore_m(rule, { flow_kgs, fluid })
        const tube = { flow_kgs, bore_m, roughness_m: rule.roughness_m, fluid }
        const use = Math.max(
          tubeVelocity(tube) / rule.velocity_ms,
          pressureGradient_Pam(tube) / rule.gradient_Pam,
        )
        expect(use).toBeLessThanOrEqual(1 + 1e-9)
        if (bore_m > rule.pipes[0]!.bore_m * (1 + 1e-9)) expect(use).toBeGreaterThan(1 - 1e-6)
      }
  })

  it('what is bought is never narrower, and is a size that is sold', () => {
    for (let flow_kgs = 0.001; flow_kgs < 3; flow_kgs *= 1.2) {
      const design_m = designBore_m(WATER_RULE, { flow_kgs, fluid: water })
      const bought_m = standardBore_m(WATER_RULE, design_m)
      expect(bought_m).toBeGreaterThanOrEqual(design_m * (1 - 1e-9))
      expect(WATER_RULE.pipes.map((pipe) => pipe.bore_m)).toContain(bought_m)
    }
  })

  it('0.1 kg/s of water (6 L/min) asks for the 22 mm tube: 15 mm would lose 590 Pa/m (BS 6700 table D.4)', () => {
    expect(standardBore_m(WATER_RULE, designBore_m(WATER_RULE, { flow_kgs: 0.1, fluid: water }))).toBe(0.0202)
  })
})
