import type { LiveAnswer } from '#live/messages.ts'
import { saysInvented } from '#model/basis/words'
import { wallClock } from '#ui/words/calendar.ts'

/** Hours of the year as a table in SI units: the columns of `duskbank year`, with the weather they rest on. */
export function hoursCsv(answer: LiveAnswer): string {
  const { weather, year, doNothing } = answer
  const columns: Readonly<Record<string, ArrayLike<number>>> = {
    outdoor_C: weather.airTemp_C,
    dewPoint_C: weather.dewPoint_C,
    wind_ms: weather.wind_ms,
    cloud_frac: weather.cloud_frac,
    room_C: year.room_C,
    roomDoNothing_C: doNothing.room_C,
    roomAir_C: year.air_C,
    slab_C: year.slab_C,
    store_C: year.store_C,
    storeBottom_C: year.storeBottom_C,
    plate_C: year.plate_C,
    panelReturn_C: year.panelReturn_C,
    panelHeat_W: year.panelHeat_W,
    delivered_W: year.delivered_W,
    pumpRun_frac: year.pumpRun_frac,
    electric_W: year.electric_W,
    waterOnPanel_kgm2: year.water_kgm2,
  }
  const invented = weather.madeFrom !== undefined || saysInvented(weather.basis)
  // where there are no panels, there is no plant to give columns of
  const named = Object.entries(columns).filter(([name]) => answer.area_m2 > 0 || !OF_PLANT.has(name))
  const values = named.map(([, column]) => column)
  const names = named.map(([name]) => name)
  const lines = [['hour_h', 'month', 'clock_h', ...names, 'inventedWeather'].join(',')]
  for (let h = 0; h < year.hours; h++) {
    const { month, hour } = wallClock(weather, h)
    const cells = values.map((column) => cell(column[h]!))
    lines.push([h, month + 1, hour, ...cells, invented].join(','))
  }
  return `${lines.join('\n')}\n`
}

const OF_PLANT: ReadonlySet<string> = new Set([
  'store_C',
  'storeBottom_C',
  'plate_C',
  'panelReturn_C',
  'panelHeat_W',
  'delivered_W',
  'pumpRun_frac',
  'electric_W',
  'waterOnPanel_kgm2',
])

/** Five significant digits; nothing where there is no value, as of the panel’s return while the pump rests. */
const cell = (value: number): string => (Number.isFinite(value) ? String(Number(value.toPrecision(5))) : '')
