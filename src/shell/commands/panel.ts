import { stop } from '#model/basis/words'
import { answered, studies } from '../answered.ts'
import { inventedParts } from '../invented-parts.ts'
import { stampsOf } from '../stamps.ts'
import { weatherOf } from '../weather-source.ts'
import type { Command } from './command.ts'

const USUAL_FLUID_C = 20

export const panel: Command = {
  summary:
    'hourly equilibrium temperature, plate and film temperature, heat at a given plate temperature, dew',
  options: {
    'plate-temp': { type: 'string', help: `temperature the plate is held at, °C (default ${USUAL_FLUID_C})` },
  },
  run(options) {
    const given = options.values['plate-temp'] ?? String(USUAL_FLUID_C)
    const plate_C = Number(given)
    if (String(given).trim() === '' || !(plate_C >= -60 && plate_C <= 120)) {
      throw stop(
        'bad-plate-temp',
        `--plate-temp ${String(given)} is not a temperature.`,
        'Give °C between −60 and 120.',
      )
    }
    const weather = weatherOf(options)
    const { hours, held } = answered(studies.plate({ scenario: options.scenario, weather, plate_C }))
    const table = {
      time_local: stampsOf(weather),
      airTemp_C: weather.airTemp_C,
      equilibrium_C: hours.equilibrium_C,
      conductance_Wm2K: hours.conductance_Wm2K,
      surfaceAtRest_C: hours.surface_C,
      surfaceWhileHeld_C: held.surface_C,
      heatAtPlate_Wm2: held.heat_Wm2,
      absorbedSun_Wm2: hours.absorbedSun_Wm2,
      waterOnSurface_kgm2: held.water_kgm2,
      dewFormed_kgm2: held.formed_kgm2,
    }
    return { body: { kind: 'table', table }, invented: inventedParts(options, weather) }
  },
}
