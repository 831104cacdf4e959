import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { builtDuty, loopDuty, type LoopDuty, type LoopSpec } from '#model/panels/loop'
import { WATER_PIPES } from '#inside/model/panels/loop/pipes.ts'
import { efficiencyFactor } from '#inside/model/panels/loop/plate.ts'
import { said } from '#model/basis/words'
import { FLUIDS, LAYOUTS } from '#inside/model/panels/loop/spec.ts'

/** The remarks as one text. */
const remarkText = ({ remarks }: LoopDuty): string => remarks.map((remark) => said(remark).message).join(' ')

const SPEC: LoopSpec = {
  fluid: 'water',
  glycol_frac: 0.3,
  flow_kgsm2: 0.01,
  layout: 'riser',
  plateThickness_m: 0.0007,
  plateConductivity_WmK: 200,
  tubeSpacing_m: 0.12,
  tubeOuterDiameter_m: 0.012,
  tubeInnerDiameter_m: 0.01,
  moduleLength_m: 2,
  moduleWidth_m: 1,
  pipeLength_m: 16,
  pipeInnerDiameter_m: null,
  pipeInsulation_m: 0.013,
  lift_m: 0,
  pumpEfficiency_frac: 0.2,
}
const AIR: LoopSpec = {
  ...SPEC,
  fluid: 'air',
  layout: 'wetted',
  tubeOuterDiameter_m: 0.05,
  tubeInnerDiameter_m: 0.049,
}
const NUMBERS = [
  'flow_kgs',
  'capacityRate_WK',
  'fluidToPlate_Wm2K',
  'pipeGain_WK',
  'pressureDrop_Pa',
  'pumpPower_W',
  'pipeInnerDiameter_m',
  'headerInnerDiameter_m',
] as const satisfies readonly (keyof LoopDuty)[]

describe('no panel, no duty', () => {
  it('area 0 has no module, flow, pressure, power or remark', () => {
    const duty = loopDuty(SPEC, 0)
    const { area_m2, modules, flow_kgs, capacityRate_WK, pipeGain_WK, pressureDrop_Pa, pumpPower_W } = duty
    expect([area_m2, modules, flow_kgs, capacityRate_WK, pipeGain_WK, pressureDrop_Pa, pumpPower_W]).toEqual([
      0, 0, 0, 0, 0, 0, 0,
    ])
    expect(duty.remarks).toEqual([])
  })
  it('no flow has no duty either', () => {
    expect(loopDuty({ ...SPEC, flow_kgsm2: 0 }, 10).pumpPower_W).toBe(0)
  })
})

describe.each([
  ['water risers', SPEC],
  ['water serpentine', { ...SPEC, layout: 'serpentine' as const }],
  ['glycol', { ...SPEC, fluid: 'glycol' as const }],
  ['air channels', AIR],
  ['a given bore', { ...SPEC, pipeInnerDiameter_m: 0.02 }],
])('%s: smooth in area', (_name, spec) => {
  it('no figure jumps by more than 1.5 % for 0.3 % of area, from 0.3 to 300 m²', () => {
    const jumps: string[] = []
    let before = loopDuty(spec, 0.3)
    for (let area = 0.3; area < 300; area *= 1.003) {
      const after = loopDuty(spec, area * 1.003)
      for (const name of NUMBERS)
        if (!(Math.abs(after[name] / before[name] - 1) < 0.015))
          jumps.push(`${name} at ${area.toFixed(2)} m²`)
      before = after
    }
    expect(jumps).toEqual([])
  })
  it('heat capacity rate and pump power grow with area', () => {
    for (let area = 0.5; area < 200; area *= 1.1) {
      expect(loopDuty(spec, area * 1.1).capacityRate_WK).toBeGreaterThan(loopDuty(spec, area).capacityRate_WK)
      expect(loopDuty(spec, area * 1.1).pumpPower_W).toBeGreaterThan(loopDuty(spec, area).pumpPower_W)
    }
  })
})

describe('12 m² of water risers', () => {
  const duty = loopDuty(SPEC, 12)
  it('6 modules, 0.12 kg/s, 502.6 W/K (0.12 × 4188.5 of IAPWS)', () => {
    expect(duty.modules).toBe(6)
    expect(duty.flow_kgs).toBeCloseTo(0.12, 12)
    expect(duty.capacityRate_WK).toBeCloseTo(502.62, 1)
  })
  it('risers: 0.0025 kg/s each in 10 mm, Re 280 and 23.2 Pa of Hagen–Poiseuille + 0.8 Pa of ends, 2 %', () => {
    expect(Math.abs(duty.riserReynolds / ((4 * 0.0025) / (Math.PI * 0.01 * 1.1376e-3)) - 1)).toBeLessThan(
      1e-3,
    )
    const velocity = 0.0025 / 999.103 / (0.25 * Math.PI * 1e-4)
    const want = (32 * 1.1376e-3 * velocity * 2) / 1e-4 + 1.5 * 0.5 * 999.103 * velocity ** 2
    expect(Math.abs(duty.riserLoss_Pa / want - 1)).toBeLessThan(2e-3)
  })
  it('pump power is volume flow × pressure / efficiency', () => {
    expect(duty.pumpPower_W).toBeCloseTo(((0.12 / 999.1) * duty.pressureDrop_Pa) / 0.2, 4)
  })
  it('pressure is the sum of its parts', () => {
    const { headerLoss_Pa, riserLoss_Pa, pipeLoss_Pa, liftLoss_Pa } = duty
    expect(duty.pressureDrop_Pa).toBeCloseTo(headerLoss_Pa + riserLoss_Pa + pipeLoss_Pa + liftLoss_Pa, 9)
  })
  it('fluid to plate: F′ = 1/(1 + U/G) is Duffie & Beckman’s F′ at U = 8 for Nu 3.66…5, the laminar span', () => {
    const efficiency = 1 / (1 + 8 / duty.fluidToPlate_Wm2K)
    expect(efficiency).toBeGreaterThan(efficiencyFactor(SPEC, 8, (3.66 * 0.5888) / 0.01))
    expect(efficiency).toBeLessThan(efficiencyFactor(SPEC, 8, (5 * 0.5888) / 0.01))
  })
  it('lifting water 3 m costs 3 × 9797.8 Pa (1 m of water at 15 °C, handbook)', () => {
    const lifted = loopDuty({ ...SPEC, lift_m: 3 }, 12)
    expect(lifted.liftLoss_Pa).toBeCloseTo(3 * 9797.8, 0)
    expect(lifted.pressureDrop_Pa - duty.pressureDrop_Pa).toBeCloseTo(lifted.liftLoss_Pa, 6)
    expect(remarkText(lifted)).toMatch(/lift water 3 m/)
  })
})

describe('as it will be built', () => {
  it('rounds modules up, takes bores that are sold, and loses no more pressure than was reckoned with', () => {
    for (const area of [0.4, 3, 12, 13, 29, 80]) {
      const built = builtDuty(SPEC, area)
      const smooth = loopDuty(SPEC, built.area_m2)
      expect(built.modules).toBe(Math.ceil(area / 2))
      expect(built.area_m2).toBe(area)
      expect(WATER_PIPES.map((pipe) => pipe.bore_m)).toContain(built.pipeInnerDiameter_m)
      expect(WATER_PIPES.map((pipe) => pipe.bore_m)).toContain(built.headerInnerDiameter_m)
      expect(built.pipeLoss_Pa).toBeLessThanOrEqual(smooth.pipeLoss_Pa * (1 + 1e-9) + 2 * 2 * 400)
      expect(built.pipeVelocity_ms).toBeLessThanOrEqual(smooth.pipeVelocity_ms * (1 + 1e-9))
    }
  })
  it('is the smooth loop when modules are whole, in one row, and the bore is given', () => {
    const spec = { ...SPEC, pipeInnerDiameter_m: 0.0202 }
    expect(builtDuty(spec, 8).pipeLoss_Pa).toBeCloseTo(loopDuty(spec, 8).pipeLoss_Pa, 9)
  })
})

describe('remarks', () => {
  it('slow water leaves air behind; 0.6 m/s and more carries it (common practice, no source)', () => {
    expect(remarkText(loopDuty({ ...SPEC, pipeInnerDiameter_m: 0.03 }, 6))).toMatch(/too slow to carry air/)
    expect(remarkText(loopDuty({ ...SPEC, pipeInnerDiameter_m: 0.0136 }, 12))).not.toMatch(/too slow/)
  })
  it('water above 2.4 m/s wears copper (handbook limit for cold copper)', () => {
    expect(remarkText(loopDuty({ ...SPEC, pipeInnerDiameter_m: 0.007 }, 12))).toMatch(/wears copper/)
  })
  it('uneven flow beyond ± 10 % is named with what it costs; the built loop has headers wide enough, or says so', () => {
    const knee = { ...SPEC, flow_kgsm2: 0.008 }
    const wide = { ...SPEC, layout: 'wetted' as const, tubeInnerDiameter_m: 0.0118 }
    expect(remarkText(loopDuty(SPEC, 12))).toMatch(/share the flow unevenly/)
    expect(remarkText(loopDuty({ ...SPEC, layout: 'serpentine' }, 12))).not.toMatch(/unevenly/)
    expect(remarkText(builtDuty(knee, 12))).not.toMatch(/unevenly/)
    expect(builtDuty(knee, 12).flowSpread_frac).toBeLessThanOrEqual(0.1)
    expect(builtDuty(wide, 12).flowSpread_frac).toBeGreaterThan(0.1)
    expect(remarkText(builtDuty(wide, 12))).toMatch(/unevenly, by (more than )?± \d+ %; that costs/)
  })
  it('transitional flow in the tubes is flagged with its Reynolds number', () => {
    const duty = loopDuty({ ...SPEC, layout: 'serpentine', flow_kgsm2: 0.0135 }, 12)
    expect(duty.riserReynolds).toBeGreaterThan(2300)
    expect(duty.riserReynolds).toBeLessThan(4000)
    expect(remarkText(duty)).toMatch(/between smooth and turbulent/)
  })
  it('air squeezed through water tubes is called out', () => {
    expect(remarkText(loopDuty({ ...SPEC, fluid: 'air' }, 12))).toMatch(/roars/)
  })
})

it('any sane loop of any area gives finite, non-negative figures (200 random loops)', () => {
  const spec = fc.record({
    fluid: fc.constantFrom(...FLUIDS),
    glycol_frac: fc.double({ min: 0.1, max: 0.6, noNaN: true }),
    flow_kgsm2: fc.double({ min: 0.0005, max: 0.1, noNaN: true }),
    layout: fc.constantFrom(...LAYOUTS),
    plateThickness_m: fc.double({ min: 0.0001, max: 0.01, noNaN: true }),
    plateConductivity_WmK: fc.double({ min: 0.1, max: 400, noNaN: true }),
    tubeSpacing_m: fc.double({ min: 0.05, max: 0.5, noNaN: true }),
    tubeOuterDiameter_m: fc.constant(0.05),
    tubeInnerDiameter_m: fc.double({ min: 0.002, max: 0.048, noNaN: true }),
    moduleLength_m: fc.double({ min: 0.3, max: 6, noNaN: true }),
    moduleWidth_m: fc.double({ min: 0.2, max: 3, noNaN: true }),
    pipeLength_m: fc.double({ min: 0, max: 200, noNaN: true }),
    pipeInnerDiameter_m: fc.option(fc.double({ min: 0.006, max: 0.3, noNaN: true })),
    pipeInsulation_m: fc.double({ min: 0, max: 0.1, noNaN: true }),
    lift_m: fc.double({ min: 0, max: 20, noNaN: true }),
    pumpEfficiency_frac: fc.double({ min: 0.02, max: 0.8, noNaN: true }),
  })
  fc.assert(
    fc.property(spec, fc.double({ min: 0, max: 1000, noNaN: true }), (loop, area) => {
      for (const duty of [loopDuty(loop, area), builtDuty(loop, area)])
        for (const value of Object.values(duty))
          if (typeof value === 'number' && !(Number.isFinite(value) && value >= 0)) return false
      return true
    }),
    { numRuns: 200, seed: 7 },
  )
})

it('refuses what is no loop, with quantity, value and range', () => {
  expect(() => loopDuty(SPEC, -1)).toThrow(/area.*-1/)
  expect(() => loopDuty({ ...SPEC, pumpEfficiency_frac: 0 }, 1)).toThrow(/pumpEfficiency_frac/)
  expect(() => loopDuty({ ...SPEC, tubeInnerDiameter_m: 0.013 }, 1)).toThrow(/tubeInnerDiameter_m/)
})
