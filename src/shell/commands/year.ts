import { answered, studies } from '../answered.ts'
import { inventedParts } from '../invented-parts.ts'
import { machineOf } from '#model/design/scenario'
import { note } from '../output.ts'
import { stampsOf } from '../stamps.ts'
import { yearOf } from '../weather-source.ts'
import type { Command } from './command.ts'

const kWh = (heat_J: number): string => (heat_J / 3.6e6).toFixed(0)

export const year: Command = {
  summary: 'hourly room, store, heat and pump of the sized (or own) design, with and without panels',
  options: {},
  run(options) {
    const weather = yearOf(options)
    const answer = answered(studies.size({ scenario: options.scenario, weather }))
    const { year: run, doNothing, weather: used } = answer
    note(
      `panel ${answer.area_m2.toFixed(2)} m², store ${answer.storeVolume_m3.toFixed(2)} m³, ledger residual ${(run.ledger.residual_J / run.ledger.throughput_J).toExponential(1)} of throughput`,
    )
    const held = answered(studies.idealLoads({ scenario: options.scenario, weather }))
    note(
      `windows shut, an ideal plant takes ${kWh(held.cooling_J)} kWh to hold ${held.cool_C} °C and gives ${kWh(held.heating_J)} kWh to hold ${held.heat_C} °C (operative)`,
    )
    if (answer.area_m2 === 0 && machineOf(answer.scenario) !== 'none')
      note(
        'room_C is with the machine of the way taken, roomDoNothing_C without it; the other columns are without it.',
      )
    const table = {
      time_local: stampsOf(used),
      outdoor_C: used.airTemp_C,
      room_C: run.room_C,
      roomDoNothing_C: doNothing.room_C,
      roomAir_C: run.air_C,
      meanRadiant_C: run.radiant_C,
      idealCooling_W: held.load_W.map((load_W) => Math.max(0, -load_W)),
      idealHeating_W: held.load_W.map((load_W) => Math.max(0, load_W)),
      slab_C: run.slab_C,
      store_C: run.store_C,
      storeBottom_C: run.storeBottom_C,
      plate_C: run.plate_C,
      panelReturn_C: run.panelReturn_C,
      panelHeat_W: run.panelHeat_W,
      delivered_W: run.delivered_W,
      pumpRun_frac: run.pumpRun_frac,
      electric_W: run.electric_W,
      waterOnPanel_kgm2: run.water_kgm2,
    }
    return { body: { kind: 'table', table }, invented: inventedParts(options, weather) }
  },
}
