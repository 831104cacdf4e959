import { readFileSync } from 'node:fs'
import { CONVECTION_INSIDE_Wm2K, FILM_INSIDE_Wm2K, RADIATION_INSIDE_Wm2K } from '#model/building/room'
import type { YearInputs } from '#model/building/year'
import {
  EVAPORATION_HEAT_FALL_JKGK,
  EVAPORATION_HEAT_JKG,
  SATURATION_PA,
  SUBLIMATION_HEAT_JKG,
} from '#model/outdoors/air'
import type { PanelHours } from '#model/panels/plate'
import { RATED_DIFFERENCE_K } from '#inside/model/building/year/delivery-law.ts'
import { LoopFlow } from '#inside/model/building/year/loop-flow.ts'
import { nodesOf } from '#inside/model/building/year/nodes.ts'
import { fadedAt_K } from '#inside/model/building/year/open-valve.ts'
import { roomAt } from '#inside/model/building/year/room-start.ts'

const HEADER = new URL('twin-input.h', import.meta.url)
const STEPS_PER_HOUR = 4
const STEP_S = 900
const FREEZE: Readonly<Record<string, number>> = { glycol: 0, drainBack: 1 }

/** Bytes of what the twin in C reads: bare panels with a mixed tank and a coil kept dry, by the names of `twin-input.h`. */
export function twinInput(inputs: YearInputs, warmUp_h: number): Buffer {
  const values = valuesOf(inputs, warmUp_h)
  const header = readFileSync(HEADER, 'utf8')
  const written = ['WHOLE_NUMBERS', 'NUMBERS', 'COLUMNS'].flatMap((list) => {
    const names = header.match(new RegExp(`#define ${list}\\(X\\)((?:.*\\\\\\n)*.*)`))![1]!
    return [...names.matchAll(/X\((\w+)\)/g)].flatMap(([, name]) => {
      const value = values[name!]
      if (value === undefined) throw new RangeError(`twin-input.h asks for ${name}, which is not known`)
      return typeof value === 'number' ? [value] : [value.length, ...value]
    })
  })
  return Buffer.from(Float64Array.from(written).buffer)
}

function valuesOf(
  inputs: YearInputs,
  warmUp_h: number,
): Readonly<Record<string, number | (ArrayLike<number> & Iterable<number>)>> {
  const { room, nightVentStop_C } = inputs
  const { panel, loop, store, plan, allowed, fieldFactor_frac } = inputs.plant!
  if (panel.gap !== null || store.layerCapacity_JK.length !== 1 || store.drained)
    throw new RangeError('the twin is of a bare panel with a mixed tank and a coil kept dry')
  const rows = room.rowsOf(STEP_S)
  const start = roomAt(room, room.hours - warmUp_h)
  const flow = new LoopFlow(loop, 1)
  return {
    ...rows,
    groups: rows.groups.length,
    hours: room.hours,
    stepsPerHour: STEPS_PER_HOUR,
    warmUp_h,
    airCapacity_JK: room.airCapacity_JK,
    nightVent_WK: room.nightVent_WK,
    ventStop_C: nightVentStop_C,
    startAir_C: start.air_C,
    startMasses: start.masses,
    convection_Wm2K: CONVECTION_INSIDE_Wm2K,
    radiation_Wm2K: RADIATION_INSIDE_Wm2K,
    film_Wm2K: FILM_INSIDE_Wm2K,
    evaporation_Jkg: EVAPORATION_HEAT_JKG,
    evaporationFall_JkgK: EVAPORATION_HEAT_FALL_JKGK,
    sublimation_Jkg: SUBLIMATION_HEAT_JKG,
    outdoor_C: room.outdoor_C,
    indoorDew_C: room.indoorDewPoint_C,
    ventAllowed: room.ventAllowed,
    allowed,
    backLoss_Wm2K: panel.backLoss_Wm2K,
    heatCapacity_Jm2K: panel.heatCapacity_Jm2K,
    waterLimit_kgm2: panel.waterLimit_kgm2,
    conductance_Wm2K: panel.conductance_Wm2K,
    equilibrium_C: panel.equilibrium_C,
    coldSpan_K: panel.cold.span_K,
    hotSpan_K: panel.hot.span_K,
    dryEmission: panel.dryExchange.plateEmission,
    wetEmission: panel.wetExchange.plateEmission,
    faces: facesOf(panel),
    saturation_Pa: SATURATION_PA,
    field_frac: fieldFactor_frac,
    area_m2: loop.area_m2,
    rate_WK: loop.capacityRate_WK,
    pump_W: loop.pumpPower_W,
    fluidToPlate_Wm2K: loop.fluidToPlate_Wm2K,
    pipeShare: flow.pipeShare,
    tankCapacity_JK: nodesOf(inputs).capacity_JK[0]!,
    tankLoss_WK: store.layerLoss_WK[0]!,
    tankOutside: store.lossTo === 'outside' ? 1 : 0,
    delivery_WK: store.delivery_WK,
    demand_WK: (store.delivery_WK * RATED_DIFFERENCE_K) / plan.band_K,
    fan_W: store.deliveryPower_W,
    faded_K: fadedAt_K(store),
    dewMargin_K: store.dewMargin_K,
    setpoint_C: plan.setpoint_C,
    stopDifference_K: plan.stopDifference_K,
    startDifference_K: plan.startDifference_K,
    lowestStore_C: plan.lowestStore_C,
    freezeLimit_C: plan.freezeLimit_C,
    freeze: FREEZE[plan.freeze] ?? 2,
  }
}

/** The numbers of each hour that a face reads, side by side. */
function facesOf({
  hours,
  air_C,
  vapour_Pa,
  massTransfer,
  dryGain,
  wetGain,
  cold,
  hot,
}: PanelHours): Float64Array {
  const columns = [
    air_C,
    vapour_Pa,
    massTransfer,
    dryGain.plate_Wm2,
    wetGain.plate_Wm2,
    ...[cold, hot].flatMap((curve) => [curve.constant, curve.first, curve.second, curve.third]),
  ]
  return Float64Array.from({ length: hours * columns.length }, (_, i) => {
    const hour = Math.floor(i / columns.length)
    return columns[i % columns.length]![hour]!
  })
}
