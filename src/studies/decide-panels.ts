/** Panels in a combination: guessed in a few years, or sized just as the design page sizes them. */
import { HOUR_S } from '#model/basis/hours'
import { simulateYear } from '#model/building/year'
import { builtOf, designOf, taskOf, type Prepared } from '#model/design/assembly'
import { areaOnly, sizePanels, type SizingTask } from '#model/design/sizing'
import { exceedance } from '#model/design/target'

/** A year with a plant, and what it used. */
export interface PlantYear {
  readonly room_C: Float64Array
  readonly electric_J: number
  readonly water_kg: number
  readonly mostHumid_frac: number
  readonly panelArea_m2: number
  readonly storeVolume_m3: number
}

/** Tank for each m² of panel while guessing, m³/m²; and how closely the area is guessed. */
const GUESSED_STORE_m3m2 = 0.2
const GUESS_TOLERANCE = 0.02

/** Sized, of whole modules, the tank at its knee: the very numbers of the design page. */
export function builtPanels(prepared: Prepared): PlantYear {
  const { design, year } = builtOf(prepared, sizePanels(taskOf(prepared), false))
  const { area_m2: panelArea_m2, storeVolume_m3 } = design.candidate
  const electric_J = year.electric_W.reduce((sum, watts) => sum + watts, 0) * HOUR_S
  return { ...used(electric_J), room_C: year.room_C, panelArea_m2, storeVolume_m3 }
}

/** How far a design of a known area and tank is from a target: 0 or less when it is met. */
export function missOf(prepared: Prepared, area_m2: number, storeVolume_m3: number): number {
  const candidate = { area_m2, storeVolume_m3, flow_kgsm2: prepared.flow_kgsm2(area_m2) }
  const { room_C } = simulateYear(designOf(prepared, candidate, 'built').inputs, { lean: true })
  return exceedance(room_C, prepared.yardstick).measure
}

/** The smallest area that meets the target with a tank in proportion, or the largest there is room for. */
export class PanelGuess {
  private last_m2: number | null = null

  year(prepared: Prepared): PlantYear {
    const task = taskOf(prepared)
    const most = this.last_m2 === task.maxArea_m2 ? yearWith(prepared, task, task.maxArea_m2) : null
    // Where the largest area was not enough, the next one begins with it: one run then settles most.
    if (most !== null && exceedance(most.room_C, prepared.yardstick).measure > 0) return most
    const guess_m2 = this.last_m2 ?? task.guess_m2
    const start = { ratio_m3m2: GUESSED_STORE_m3m2, guess_m2, slope: null, tolerance: GUESS_TOLERANCE }
    const panelArea_m2 = areaOnly(task, start) ?? task.maxArea_m2
    this.last_m2 = panelArea_m2 > 0 ? panelArea_m2 : null
    return yearWith(prepared, task, panelArea_m2)
  }
}

function yearWith(prepared: Prepared, task: SizingTask, panelArea_m2: number): PlantYear {
  const storeVolume_m3 = task.storeVolume_m3 ?? GUESSED_STORE_m3m2 * panelArea_m2
  const candidate = { area_m2: panelArea_m2, storeVolume_m3, flow_kgsm2: task.flow_kgsm2(panelArea_m2) }
  const { room_C, ledger } = simulateYear(designOf(prepared, candidate).inputs, { lean: true })
  return { ...used(ledger.pumpHeat_J), room_C, panelArea_m2, storeVolume_m3 }
}

const used = (electric_J: number) => ({ electric_J, water_kg: 0, mostHumid_frac: 0 })
