/* Second implementation: three rooms simulated by a fine finite-volume building (5 mm cells, 5-minute steps), boundary
 * fed, so that the room alone is judged. Read from ../shared/room-cases; nothing in the model was chosen on them.
 * Tolerances: what a design can bear (0.15 K in the year's peak, 2 % in degree-hours and energy). */
import { describe, expect, test } from 'vitest'
import { idealLoad } from '#inside/model/building/year/ideal-load.ts'
import { REFERENCE_ROOMS, referenceAnswer, referenceRoom, ROOMS_ARE_THERE } from './reference-rooms.ts'

if (!ROOMS_ARE_THERE)
  console.warn('reference rooms: ../shared/room-cases is not there, so they are not compared')

describe.runIf(ROOMS_ARE_THERE).each([...REFERENCE_ROOMS])('%s', (name) => {
  const USUAL = { by: 'operative', stepsPerHour: 4, warmUp_h: 1440 } as const

  test('left alone: peak within 0.15 K, degree-hours over 26 °C within 2 %', () => {
    const want = referenceAnswer(name)
    const { operative_C } = idealLoad(referenceRoom(name), { heat_C: null, cool_C: null, ...USUAL })
    const peak_C = operative_C.reduce((top, value) => Math.max(top, value), -Infinity)
    const degreeHours = operative_C.reduce((sum, value) => sum + Math.max(0, value - 26), 0)
    console.log(
      `${name}: peak ${(peak_C - want.peak_op_C).toFixed(3)} K, degree-hours ${(100 * (degreeHours / want.degree_hours_26_Kh - 1)).toFixed(2)} %`,
    )
    expect(Math.abs(peak_C - want.peak_op_C)).toBeLessThan(0.15)
    expect(Math.abs(degreeHours / want.degree_hours_26_Kh - 1)).toBeLessThan(0.02)
  })

  test('held between 20 and 26 °C: energy within 2 %', () => {
    const { cool_kWh, heat_kWh } = referenceAnswer(name).hold_20_26_operative
    const found = idealLoad(referenceRoom(name), { heat_C: 20, cool_C: 26, ...USUAL })
    const [cooling, heating] = [
      found.cooling_J / 3.6e6 / cool_kWh - 1,
      found.heating_J / 3.6e6 / heat_kWh - 1,
    ]
    console.log(`${name}: cooling ${(100 * cooling).toFixed(2)} %, heating ${(100 * heating).toFixed(2)} %`)
    expect(Math.abs(cooling)).toBeLessThan(0.02)
    expect(Math.abs(heating)).toBeLessThan(0.02)
  })
})
