import type { YearInputs } from '#model/building/year'
import { YearKernel } from '#inside/model/building/year/kernel.ts'
import { restingRoom } from '#inside/model/building/year/room-start.ts'
import { CoupledSystem } from './coupled-system.ts'

const STEP_S = 900
/** Both start from where the kernel has settled: a guessed start would be a shock that no year contains. */
const SETTLING_h = 48

/** Largest difference of kernel and adaptive solver over some hours, K. */
export interface Apart {
  readonly tank_K: number
  /** Of the hour's mean, which is what is reported: the air itself leaps within a step when windows open. */
  readonly air_K: number
  /** Of the plate at the end of hours, as it is reported: with the pump running, and at rest. */
  readonly running_K: number
  readonly resting_K: number
  readonly pumped_h: number
}

/** Room, store and plate by the kernel and by odex side by side, under the same decisions of the controls. */
export function besideOdex(inputs: YearInputs, first_h: number, hours: number): Apart {
  const kernel = new YearKernel(inputs, STEP_S)
  const { room } = inputs
  const before = [...Array(720).keys()].map((k) => (first_h - SETTLING_h - k + room.hours) % room.hours)
  const start = restingRoom(room, before)
  kernel.setRoom(start.air_C, start.masses)
  kernel.plate_C = start.air_C
  for (let h = first_h - SETTLING_h; h < first_h; h++) kernel.hour((h + room.hours) % room.hours)
  const exact = new CoupledSystem(inputs, {
    tank_C: kernel.temp_C,
    air_C: kernel.room.air_C,
    plate_C: kernel.plate_C,
    masses: kernel.room.masses,
  })
  exact.water_kgm2 = kernel.water_kgm2
  const worst = { tank_K: 0, air_K: 0, running_K: 0, resting_K: 0, pumped_h: 0 }
  for (let h = first_h; h < first_h + hours; h++) {
    let mean_K = 0
    for (let k = 0; k < 3600 / STEP_S; k++) {
      const before_Cs = kernel.books.air_Cs
      kernel.step(h % room.hours)
      exact.step(h % room.hours, STEP_S, kernel)
      const plate_C = exact.state[exact.plate]!
      const pumping = kernel.controls.pumping
      if (pumping) worst.pumped_h += STEP_S / 3600
      mean_K += ((kernel.books.air_Cs - before_Cs) / STEP_S - exact.airMean_C) * (STEP_S / 3600)
      for (let i = 0; i < kernel.nodes.layers; i++)
        worst.tank_K = Math.max(worst.tank_K, Math.abs(kernel.temp_C[i]! - exact.state[i]!))
      if (k < 3600 / STEP_S - 1) continue
      const plate_K = Math.abs(kernel.plate_C - plate_C)
      if (pumping) worst.running_K = Math.max(worst.running_K, plate_K)
      else worst.resting_K = Math.max(worst.resting_K, plate_K)
    }
    worst.air_K = Math.max(worst.air_K, Math.abs(mean_K))
  }
  return worst
}
