import type { LiveAnswer } from '#live/messages.ts'

/** What the drawing shows of one hour. */
export interface Moment {
  readonly outdoor_C: number
  readonly room_C: number
  readonly without_C: number
  readonly store_C: number
  readonly slab_C: number
  readonly plate_C: number
  readonly panelHeat_W: number
  readonly delivered_W: number
  /** Share of the hour the pump ran. */
  readonly pump_frac: number
  readonly sunAltitude_deg: number
  readonly cloud_frac: number
  /** Water or frost on the panel, kg/m². */
  readonly water_kgm2: number
}

export function momentOf(answer: LiveAnswer, hour: number): Moment {
  const { year, doNothing, weather, sun } = answer
  return {
    outdoor_C: weather.airTemp_C[hour]!,
    room_C: year.room_C[hour]!,
    without_C: doNothing.room_C[hour]!,
    store_C: year.store_C[hour]!,
    slab_C: year.slab_C[hour]!,
    plate_C: year.plate_C[hour]!,
    panelHeat_W: year.panelHeat_W[hour]!,
    delivered_W: year.delivered_W[hour]!,
    pump_frac: year.pumpRun_frac[hour]!,
    sunAltitude_deg: sun.altitude_deg[hour]!,
    cloud_frac: weather.cloud_frac[hour]!,
    water_kgm2: year.water_kgm2[hour]!,
  }
}

/** What happens in this hour, in a sentence. */
export function happening(m: Moment, panels = true): string {
  const night = m.sunAltitude_deg < 0
  if (!panels) return `${night ? 'Night' : 'Day'}. There are no panels: nothing is pumped.`
  const charging = m.pump_frac > 0.02 && m.panelHeat_W > 1
  const drawing = m.delivered_W > 1
  const dew =
    m.water_kgm2 > 0.005 ? (m.plate_C < 0 ? ' Frost lies on the panel.' : ' Dew lies on the panel.') : ''
  const what =
    charging && drawing
      ? 'The panel charges the store while the room draws on it.'
      : charging
        ? 'The panel charges the store.'
        : drawing
          ? 'The pump rests; the room draws on the store.'
          : 'The pump rests, and the room takes nothing from the store.'
  return `${night ? 'Night' : 'Day'}. ${what}${dew}`
}

/** Fill between cool blue and warm rust for a temperature; used beside the written number, never alone. */
export function warmth(temp_C: number): string {
  const share = Math.min(1, Math.max(0, (temp_C - 8) / 28))
  const mix = (cool: number, warm: number) => Math.round(cool + (warm - cool) * share)
  return `rgb(${mix(126, 214)} ${mix(178, 134)} ${mix(214, 92)})`
}
