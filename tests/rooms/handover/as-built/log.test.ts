import { describe, expect, it } from 'vitest'
import { agreement } from '#inside/model/handover/as-built/agreement.ts'
import { houseAgreement, asBuiltCheck, asFoundScenario } from '#model/handover/as-built'
import { AS_DESIGNED } from '#inside/model/handover/as-built/departure.ts'
import type { AsBuiltInputs } from '#inside/model/handover/as-built/inputs-type.ts'
import { ProblemError } from '#model/basis/words'
import { panelSpecOf } from '#model/design/assembly'
import { defaultScenario } from '#model/design/scenario'
import { builtPanel } from './panel.ts'

const QUIET = { place: 'semi-arid-south', firstDay: 10, days: 7, seed: 3, allDay: true }
const sound = () => builtPanel({ ...QUIET, fault: {} })
const DESIGNED = { flow_kgsm2: 0.01, fluidToPlate_Wm2K: 60 }

describe('agreement of two series', () => {
  it('matches arithmetic by hand', () => {
    // predicted − measured: 1, −1, 3; the pair with NaN does not count.
    // bias 1; rmse √(11/3) = 1.91485; spread √(11/3 − 1) = 1.63299; measured mean 4.
    const found = agreement([3, 3, 9, 5], [2, 4, 6, NaN])
    expect(found.hours).toBe(3)
    expect(found.bias).toBeCloseTo(1, 12)
    expect(found.rmse).toBeCloseTo(1.91485, 5)
    expect(found.spread).toBeCloseTo(1.63299, 5)
    expect(found.measuredMean).toBe(4)
    expect(found.predictedMean).toBe(5)
  })
})

describe('store and room as logged', () => {
  it('are compared where there are any', () => {
    const simulated = { store_C: [18, 19], room_C: [24, 25] }
    const found = houseAgreement({ store_C: Float64Array.of(17, 18), room_C: null }, simulated)
    expect(found.store!.bias).toBeCloseTo(1, 12)
    expect(found.room).toBeNull()
  })
})

describe('a logger record', () => {
  it('with its own air temperature is judged by that air, gaps by the weather', () => {
    const inputs = sound()
    const warmer = inputs.weather.airTemp_C.map((t, i) => (i % 7 === 0 ? NaN : t + 3))
    const with_ = asBuiltCheck({ ...inputs, log: { ...inputs.log, air_C: warmer } })
    const same = { ...inputs.log, air_C: inputs.weather.airTemp_C.slice() }
    const without = asBuiltCheck({ ...inputs, log: same })
    expect(with_.outlet.predictedMean).toBeGreaterThan(without.outlet.predictedMean + 0.3)
    expect(without.outlet.bias).toBeCloseTo(asBuiltCheck(inputs).outlet.bias, 12)
  })

  it('of a sound panel agrees with the prediction within its errors (0.2 K bias)', () => {
    const result = asBuiltCheck(sound())
    expect(Math.abs(result.outlet.bias)).toBeLessThan(0.2)
    expect(result.hours.length).toBe(7 * 24)
    // Two causes at once count for both, so that the sum may pass 1.
    expect(Object.values(result.belief).reduce((a, b) => a + b, 0)).toBeGreaterThanOrEqual(1 - 1e-9)
    expect(result.belief.none).toBeGreaterThan(0.6)
  })

  it('with air that comes and goes in the loop speaks of air, and of nothing being sound', () => {
    const airy = builtPanel({ ...QUIET, fault: { airy_frac: 0.35 }, flowMeter: true })
    const codes = asBuiltCheck(airy).inspections.map((i) => i.code)
    expect(codes[0]).toBe('air')
    expect(codes).not.toContain('sound')
  })

  it('whose outlet jumps in a way of no fault is called unexplained', () => {
    const inputs = sound()
    const panelOut_C = inputs.log.panelOut_C.map((t, i) => t + (i % 2 === 0 ? 1.5 : -1.5))
    const result = asBuiltCheck({ ...inputs, log: { ...inputs.log, panelOut_C } })
    expect(result.inspections.map((i) => i.code)).toContain('unexplained')
  })

  it('with a clock six hours out names the clock and by how much', () => {
    const inputs = sound()
    const shifted = (column: Float64Array) => column.map((_, i) => column[(i + 6) % column.length]!)
    const log = {
      ...inputs.log,
      panelIn_C: shifted(inputs.log.panelIn_C),
      panelOut_C: shifted(inputs.log.panelOut_C),
    }
    const result = asBuiltCheck({ ...inputs, log })
    expect(result.fault).toBe('wrongClock')
    expect(Math.abs(result.departure.clock_h + 6)).toBeLessThan(0.5)
  })

  it('that is too short, wild or of another length is refused', () => {
    const inputs = sound()
    const spoilt = (change: Partial<AsBuiltInputs['log']>) => () =>
      asBuiltCheck({ ...inputs, log: { ...inputs.log, ...change } })
    expect(spoilt({ pumpRun_frac: new Float64Array(inputs.log.hours) })).toThrow(/0 hours/)
    expect(spoilt({ panelOut_C: new Float64Array(inputs.log.hours).fill(250) })).toThrow(ProblemError)
    expect(spoilt({ store_C: new Float64Array(3) })).toThrow(RangeError)
    expect(spoilt({ hours: 3 })).toThrow(RangeError)
  })
})

describe('sizing again with the panel as found', () => {
  const scenario = defaultScenario()
  it('as designed changes nothing but rounding', () => {
    const same = asFoundScenario(scenario, AS_DESIGNED, DESIGNED)
    expect(same.coating).toEqual(scenario.coating)
    expect(same.loop).toEqual(scenario.loop)
    expect(same.site.horizon_deg).toBeCloseTo(scenario.site.horizon_deg, 9)
  })

  it('carries dirt, wind, flow and shade over', () => {
    const found = asFoundScenario(
      scenario,
      {
        ...AS_DESIGNED,
        soil_frac: 0.1,
        veil_frac: 0.1,
        windLog: Math.log(1.5),
        flowLog: Math.log(0.5),
        shade_frac: 0.3,
      },
      { ...DESIGNED, flow_kgsm2: 0.012 },
    )
    expect(found.coating.solarReflectance_frac).toBeCloseTo(scenario.coating.solarReflectance_frac - 0.1, 9)
    expect(found.coating.windowEmittance_frac).toBeCloseTo(0.9 * scenario.coating.windowEmittance_frac, 9)
    expect(found.panel.windExposure_frac).toBeCloseTo(1.5 * scenario.panel.windExposure_frac, 9)
    expect(found.loop.flow_kgsm2).toBeCloseTo(0.006, 9)
    expect(found.loop.autoFlow).toBe(false)
    // cos²(h) = 0.7 cos²(5°) → h = 33.5°
    expect(Math.abs(found.site.horizon_deg - 33.5)).toBeLessThan(0.1)
    expect(() => panelSpecOf(found)).not.toThrow()
  })

  it('of a film-covered panel changes the film, not the paint', () => {
    const film = { ...scenario, cover: { ...scenario.cover, kind: 'film' as const } }
    const found = asFoundScenario(film, { ...AS_DESIGNED, soil_frac: 0.1, veil_frac: 0.2 }, DESIGNED)
    expect(found.coating).toEqual(film.coating)
    expect(found.cover.solarTransmittance_frac).toBeCloseTo(film.cover.solarTransmittance_frac - 0.1, 9)
    expect(found.cover.windowTransmittance_frac).toBeCloseTo(0.8 * film.cover.windowTransmittance_frac, 9)
  })
})
