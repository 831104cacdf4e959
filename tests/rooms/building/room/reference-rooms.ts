import { existsSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { gunzipSync } from 'node:zlib'
import { type Construction, modesOf } from '#model/building/construction'
import { withRows, type OutsideHours, type RoomNetwork } from '#model/building/room'
import { merged } from '#inside/model/building/room/outside.ts'
import { solAir } from '#inside/model/building/room/sol-air.ts'
import type { FaceGroup } from '#inside/model/building/room/spec.ts'

const FOLDER = fileURLToPath(new URL('../../../../../shared/room-cases/', import.meta.url))
export const ROOMS_ARE_THERE = existsSync(`${FOLDER}answers.json`)
export const REFERENCE_ROOMS = ['timber-frame', 'solid-brick', 'concrete-outside-insulated'] as const

type GivenLayer = { d: number; k: number; rho: number; c: number } | { R: number }
interface Surface {
  readonly name: string
  readonly kind: 'wall' | 'roof' | 'floor' | 'window' | 'internal'
  readonly area: number
  readonly eps_out: number
  readonly layers: readonly GivenLayer[]
}
interface Boundary {
  readonly rows: readonly string[]
  readonly hours: number
  readonly surfaces: readonly Surface[]
  readonly share_of_sun_absorbed: readonly number[]
  readonly share_of_radiant_gains: readonly number[]
  readonly air_JK: number
  readonly ground_R: number
}

export interface ReferenceAnswer {
  readonly peak_op_C: number
  readonly mean_op_C: number
  readonly degree_hours_26_Kh: number
  readonly hold_20_26_operative: { readonly cool_kWh: number; readonly heat_kWh: number }
}

export function referenceAnswer(room: string): ReferenceAnswer {
  const all = JSON.parse(readFileSync(`${FOLDER}answers.json`, 'utf8')) as Record<
    string,
    Record<string, ReferenceAnswer>
  >
  return all[room]!['mediterranean-coast']!
}

const layersOf = (layers: readonly GivenLayer[]): Construction =>
  layers.map((layer) =>
    'R' in layer
      ? { resistance_m2KW: layer.R }
      : {
          thickness_m: layer.d,
          conductivity_WmK: layer.k,
          density_kgm3: layer.rho,
          specificHeat_JkgK: layer.c,
        },
  )

const KIND = { wall: 'wall', roof: 'roof', floor: 'floor', internal: 'contents' } as const

/** One of the shared rooms as our network, fed with what each face is given, hour by hour. */
export function referenceRoom(room: string): RoomNetwork {
  const { rows, hours, surfaces, ...given } = JSON.parse(
    readFileSync(`${FOLDER}${room}.boundary.json`, 'utf8'),
  ) as Boundary
  const bytes = gunzipSync(readFileSync(`${FOLDER}${room}.boundary.f64.gz`))
  const all = new Float64Array(bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.byteLength))
  const row = (name: string): Float64Array => {
    const at = rows.indexOf(name)
    return all.slice(at * hours, (at + 1) * hours)
  }
  const outdoor_C = row('Ta_C')
  const convection = row('outside_convection_Wm2K')
  const outsideOf = ({ name, eps_out }: Surface): OutsideHours => {
    const sun = row(`absorbed_sun_Wm2 of ${name}`)
    const sky = row(`longwave_arriving_Wm2 of ${name}`)
    const hourly = Array.from(outdoor_C, (air_C, h) =>
      solAir({
        air_C,
        absorbedSun_Wm2: sun[h]!,
        longwave_Wm2: sky[h]!,
        emittance_frac: eps_out,
        convection_Wm2K: convection[h]!,
      }),
    )
    return {
      temp_C: Float64Array.from(hourly, ({ temp_C }) => temp_C),
      film_Wm2K: Float64Array.from(hourly, ({ film_Wm2K }) => film_Wm2K),
    }
  }
  const sumOf = (kind: Surface['kind'], values: readonly number[]) =>
    surfaces.reduce((sum, surface, i) => sum + (surface.kind === kind ? values[i]! : 0), 0)
  const groups = (['wall', 'roof', 'floor', 'internal'] as const).map((kind): FaceGroup => {
    const mine = surfaces.filter((surface) => surface.kind === kind)
    const area_m2 = mine.reduce((sum, { area }) => sum + area, 0)
    const outside =
      kind === 'internal'
        ? null
        : kind === 'floor'
          ? { temp_C: row('ground_C'), film_Wm2K: new Float64Array(hours).fill(1 / given.ground_R) }
          : merged(mine.map((surface) => ({ area_m2: surface.area, outside: outsideOf(surface) })))
    return {
      name: KIND[kind],
      area_m2,
      modes: modesOf(layersOf(mine[0]!.layers), {
        innerFilm_Wm2K: 2.5 + 5.13,
        outerFilm_Wm2K:
          outside === null ? null : outside.film_Wm2K.reduce((sum, film) => sum + film, 0) / hours,
        pipeDepth_m: null,
      }),
      outside,
      sunShare: sumOf(kind, given.share_of_sun_absorbed),
      areaShare: sumOf(kind, given.share_of_radiant_gains),
    }
  })
  const panes = surfaces.filter(({ kind }) => kind === 'window')
  const glass = panes[0]!.layers[0]!
  return withRows({
    hours,
    floor_m2: sumOf(
      'floor',
      surfaces.map(({ area }) => area),
    ),
    volume_m3: 60,
    airCapacity_JK: given.air_JK,
    groups,
    windows: {
      area_m2: panes.reduce((sum, { area }) => sum + area, 0),
      resistance_m2KW: 'R' in glass ? glass.R : NaN,
      outside: merged(panes.map((pane) => ({ area_m2: pane.area, outside: outsideOf(pane) }))),
      sunShare: sumOf('window', given.share_of_sun_absorbed),
      areaShare: sumOf('window', given.share_of_radiant_gains),
    },
    ventilation_WK: row('ventilation_WK'),
    outdoor_C,
    sun_W: row('sun_let_in_W'),
    gains_W: row('gains_W'),
    nightVent_WK: 0,
    ventAllowed: new Uint8Array(hours),
    indoorDewPoint_C: new Float64Array(hours),
    pressure_Pa: 101_325,
  })
}
