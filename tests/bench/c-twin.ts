import { execFileSync } from 'node:child_process'
import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { evaporationHeat_Jkg, saturationPressure_Pa, SUBLIMATION_HEAT_JKG } from '#model/air/moist-air.ts'
import { STILL_SPAN_K } from '#model/air/convection.ts'
import { DRY_KGM2, FULL_COVER_KGM2, LONGEST_STEP_S } from '#model/panel/water.ts'
import type { YearInputs } from '#model/year/inputs.ts'
import { nodesOf } from '#model/year/nodes.ts'

const SOURCE = fileURLToPath(new URL('./year.c', import.meta.url))
/** The saturation table of `air/saturation-table.ts`, and the patchy span of `panel/water.ts`. */
const TABLE = { lowest_C: -100, perK: 10, segments: 2200 }
const PATCHY_K = 0.5
const WARM_UP_h = 21 * 24
const STEP_S = 900

export interface TwinRun {
  readonly seconds: readonly number[]
  readonly room_C: Float64Array
}

/** Compiles `year.c` and says how to run it; null where there is no gcc. */
export function compileTwin(folder: string): ((inputs: YearInputs, runs: number) => TwinRun) | null {
  const program = join(folder, 'year')
  try {
    execFileSync('gcc', ['-O3', '-o', program, SOURCE, '-lm'])
  } catch {
    return null
  }
  return (inputs, runs) => {
    const [from, to] = [join(folder, 'inputs.bin'), join(folder, 'room.bin')]
    writeFileSync(from, new Uint8Array(twinInputs(inputs).buffer))
    const printed = execFileSync(program, [from, to, String(runs)], { encoding: 'utf8' })
    const bytes = readFileSync(to)
    const room_C = new Float64Array(bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.byteLength))
    return { seconds: printed.trim().split('\n').map(Number), room_C }
  }
}

/** Scalars, hourly columns and the saturation table in the order `year.c` reads them. Bare panel and mixed tank only. */
function twinInputs({ room, plant, nightVentStop_C }: YearInputs): Float64Array {
  if (plant === null || plant.panel.gap !== null || plant.store.kind !== 'mixed') {
    throw new RangeError('the C twin knows bare panels with a mixed tank only')
  }
  const { panel, loop, store, plan } = plant
  const nodes = nodesOf({ room, plant, nightVentStop_C })
  const scalars = [
    [room.hours, WARM_UP_h, STEP_S],
    [
      nodes.plateCapacity_JK,
      loop.area_m2,
      plant.fieldFactor_frac,
      panel.backLoss_Wm2K,
      panel.waterLimit_kgm2,
    ],
    [panel.cold.span_K, panel.hot.span_K, STILL_SPAN_K],
    [loop.capacityRate_WK, loop.fluidToPlate_Wm2K, loop.pipeGain_WK, loop.pumpPower_W],
    [nodes.capacity_JK[0]!, store.layerLoss_WK[0]!, Number(store.lossTo === 'outside')],
    [store.delivery_WK, store.deliveryPower_W, store.dewMargin_K],
    [plan.setpoint_C, plan.band_K, plan.startDifference_K, plan.stopDifference_K, plan.lowestStore_C],
    [plan.freezeLimit_C, Number(plan.freeze === 'glycol'), Number(plan.freeze === 'drainBack')],
    [room.airCapacity_JK, room.fabricCapacity_JK, room.slabCapacity_JK],
    [room.airFabric_WK, room.airSlab_WK, room.slabLoss_WK, room.nightVent_WK, nightVentStop_C],
    room.operativeWeights,
    [...panel.dryExchange.plateEmission],
    [...panel.wetExchange.plateEmission],
    [TABLE.lowest_C, TABLE.perK, TABLE.segments],
    [FULL_COVER_KGM2, DRY_KGM2, LONGEST_STEP_S, PATCHY_K, SUBLIMATION_HEAT_JKG],
    [evaporationHeat_Jkg(0), evaporationHeat_Jkg(1) - evaporationHeat_Jkg(0)],
  ].flat()
  const curve = ({ constant, first, second, third }: typeof panel.cold) => [constant, first, second, third]
  const columns = [
    ...[panel.air_C, panel.vapour_Pa, panel.massTransfer, ...curve(panel.cold), ...curve(panel.hot)],
    ...[panel.dryGain.plate_Wm2, panel.wetGain.plate_Wm2, room.outdoor_C, room.airLoss_WK, room.airDrive_W],
    ...[room.fabricLoss_WK, room.fabricDrive_W, room.slabDrive_W, room.indoorDewPoint_C],
    ...[Float64Array.from(room.night), Float64Array.from(plant.allowed)],
  ]
  const table = Array.from({ length: TABLE.segments + 1 }, (_, i) =>
    saturationPressure_Pa(TABLE.lowest_C + i / TABLE.perK),
  )
  return Float64Array.from([scalars, ...columns.map((column) => [...column]), table].flat())
}
