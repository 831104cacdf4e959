import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { infraredWarning, irThermometerTrue_C } from '#model/panels/readings'
import { irThermometerShown_C } from '#inside/model/panels/readings/ir-thermometer.ts'
import { wordingText } from '#model/basis/words'

/** Planck's law summed in the test itself: emission of a black surface inside 8–13 µm, W/m². */
function planckWindow_Wm2(temp_C: number): number {
  const T = temp_C + 273.15
  const c1 = 3.741771852e8 // W µm⁴/m², CODATA 2018
  const c2 = 14387.76877
  const steps = 2000
  let sum = 0
  for (let i = 0; i < steps; i++) {
    const um = 8 + ((i + 0.5) * 5) / steps
    sum += (c1 / um ** 5 / (Math.exp(c2 / (um * T)) - 1)) * (5 / steps)
  }
  return sum
}

describe('infrared thermometer', () => {
  it('shows what Planck’s law says it gathers (independent integration, CODATA constants, 0.05 K)', () => {
    // A paint of 0.94 at 15 °C, sky of 60 W/m² in the window, instrument set to 0.95 at 20 °C.
    const gathered = 0.94 * planckWindow_Wm2(15) + 0.06 * 60
    const taken = (gathered - 0.05 * planckWindow_Wm2(20)) / 0.95
    const shown = irThermometerShown_C(15, {
      emittance_frac: 0.94,
      setting_frac: 0.95,
      skyWindow_Wm2: 60,
      assumedSurroundings_C: 20,
    })
    expect(Math.abs(planckWindow_Wm2(shown) - taken)).toBeLessThan(0.09) // 0.05 K at about 1.8 W/m²K
    expect(shown).toBeLessThan(15)
  })

  it('is right when the surface is black and the setting is 1 (limit)', () => {
    const view = { emittance_frac: 1, setting_frac: 1, skyWindow_Wm2: 20, assumedSurroundings_C: 30 }
    expect(irThermometerTrue_C(12.3, view)).toBeCloseTo(12.3, 9)
  })

  it('is right indoors: surroundings at the assumed temperature, setting equal to emittance (limit)', () => {
    const view = {
      emittance_frac: 0.8,
      setting_frac: 0.8,
      skyWindow_Wm2: planckWindow_Wm2(22),
      assumedSurroundings_C: 22,
    }
    expect(Math.abs(irThermometerTrue_C(35, view) - 35)).toBeLessThan(0.01)
  })

  it('true and shown undo each other (identity, 1e-8 K)', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -5, max: 55, noNaN: true }),
        fc.double({ min: 0.6, max: 1, noNaN: true }),
        fc.double({ min: 0.6, max: 1, noNaN: true }),
        (true_C, emittance_frac, setting_frac) => {
          const view = { emittance_frac, setting_frac, skyWindow_Wm2: 70, assumedSurroundings_C: 20 }
          expect(irThermometerTrue_C(irThermometerShown_C(true_C, view), view)).toBeCloseTo(true_C, 8)
        },
      ),
    )
  })

  it('warns of the cold sky in a poor emitter and is silent for a good one under cloud', () => {
    const sky = planckWindow_Wm2(-40)
    const poor = { emittance_frac: 0.6, setting_frac: 0.95, skyWindow_Wm2: sky, assumedSurroundings_C: 20 }
    expect(wordingText(infraredWarning(5, poor)!, 'si')).toContain('too low')
    const overcast = planckWindow_Wm2(18)
    const good = {
      emittance_frac: 0.95,
      setting_frac: 0.95,
      skyWindow_Wm2: overcast,
      assumedSurroundings_C: 20,
    }
    expect(infraredWarning(18, good)).toBeNull()
  })
})
