/* The check's quarter hours of dew and frost against steps of a fortieth of an hour, worked out here (second
 * implementation of the stepping alone; the plate's balance is the program's own). */
import { expect, test } from 'vitest'
import { AS_DESIGNED } from '#inside/model/handover/as-built/departure.ts'
import { departedHours } from '#inside/model/handover/as-built/departed.ts'
import type { AsBuiltInputs } from '#inside/model/handover/as-built/inputs-type.ts'
import { predictedFall_K } from '#inside/model/handover/as-built/plant.ts'
import { loopDuty } from '#model/panels/loop'
import { panelTangent, waterAfter_kgm2 } from '#model/panels/plate'
import { panelExchange_WK } from '#model/building/year'
import { builtPanel } from './panel.ts'

const STEPS = 40

/** Mean heat of the running hours, W, in steps of 90 s. */
function finelyStepped_W(inputs: AsBuiltInputs): number {
  const { hours } = departedHours(inputs, AS_DESIGNED)[0]!
  const duty = loopDuty(inputs.loop, inputs.area_m2)
  const out = { q_Wm2: 0, slope_Wm2K: 0, water_kgm2s: 0 }
  let water = 0
  let heat_W = 0
  for (let h = 0; h < inputs.log.hours; h++) {
    for (let k = 0; k < STEPS; k++) {
      let [low, high] = [-60, 120]
      const in_C = inputs.log.panelIn_C[h]!
      while (high - low > 1e-6) {
        const plate_C = 0.5 * (low + high)
        panelTangent(hours, h, plate_C, water, out)
        const sheds_W = inputs.fieldFactor_frac * duty.area_m2 * out.q_Wm2
        if (sheds_W > panelExchange_WK(duty, inputs.fieldFactor_frac * out.slope_Wm2K) * (in_C - plate_C))
          high = plate_C
        else low = plate_C
      }
      heat_W += (inputs.fieldFactor_frac * duty.area_m2 * out.q_Wm2) / (STEPS * inputs.log.hours)
      water = waterAfter_kgm2(water, out.water_kgm2s, 3600 / STEPS, low, hours.waterLimit_kgm2)
    }
  }
  return heat_W
}

test.each([
  ['humid-subtropical', 200],
  ['continental', 180],
])('mean heat of a dewy panel in %s is that of fine steps within 1 %%', (place, firstDay) => {
  const inputs = builtPanel({ place, firstDay, days: 14, seed: 1, allDay: true, fault: {} })
  const duty = loopDuty(inputs.loop, inputs.area_m2)
  const fall_K = predictedFall_K(inputs, AS_DESIGNED)
  const mean_W = (duty.capacityRate_WK * fall_K.reduce((sum, fall) => sum + fall, 0)) / fall_K.length
  const fine_W = finelyStepped_W(inputs)
  console.log(`${place}: ${mean_W.toFixed(1)} W, finely stepped ${fine_W.toFixed(1)} W`)
  expect(Math.abs(mean_W / fine_W - 1)).toBeLessThan(0.01)
})
