import type { ClimatePlaces } from '#model/outdoors/place'

/** A point of the map. */
export interface MapPoint {
  readonly latitude_deg: number
  readonly longitude_deg: number
}

/** What of the Earth is shown: degrees a pixel grow less as `closer` grows; latitudes are drawn evenly. */
export interface MapView {
  readonly middle: MapPoint
  /** 1 the whole Earth, 2 half of it, … */
  readonly closer: number
}

export const WHOLE_EARTH: MapView = { middle: { latitude_deg: 0, longitude_deg: 0 }, closer: 1 }
export const CLOSEST = 32

/** Degrees of longitude across the whole map. */
const ACROSS_deg = 360

/** The view kept so that it never leaves the Earth northward or southward. */
export function viewAround(middle: MapPoint, closer: number): MapView {
  const half_deg = ACROSS_deg / 4 / closer
  return {
    middle: {
      latitude_deg: Math.max(half_deg - 90, Math.min(90 - half_deg, middle.latitude_deg)),
      longitude_deg: closer === 1 ? 0 : around(middle.longitude_deg),
    },
    closer,
  }
}

/** −180 … 180. */
export const around = (longitude_deg: number): number => ((((longitude_deg + 180) % 360) + 360) % 360) - 180

/** Where a point is drawn, in shares of the map's width and height; outside 0…1 when it is not shown. */
export function shareOf(
  { middle, closer }: MapView,
  point: MapPoint,
): { readonly x: number; readonly y: number } {
  return {
    x: 0.5 + (around(point.longitude_deg - middle.longitude_deg) * closer) / ACROSS_deg,
    y: 0.5 - ((point.latitude_deg - middle.latitude_deg) * closer) / (ACROSS_deg / 2),
  }
}

/** The point under a place of the map. */
export function pointAt({ middle, closer }: MapView, x: number, y: number): MapPoint {
  const latitude_deg = middle.latitude_deg + ((0.5 - y) * ACROSS_deg) / 2 / closer
  return {
    latitude_deg: Math.max(-90, Math.min(90, latitude_deg)),
    longitude_deg: around(middle.longitude_deg + ((x - 0.5) * ACROSS_deg) / closer),
  }
}

interface Colours {
  readonly land: string
  readonly cross: string
}

/** Dots of land (each held place, as large as it stands for) and the cross, on a canvas. */
export function drawLand(
  canvas: HTMLCanvasElement,
  places: ClimatePlaces,
  view: MapView,
  cross: MapPoint,
  { land, cross: line }: Colours,
): void {
  const pen = canvas.getContext('2d')
  if (pen === null) return
  const { width, height } = canvas
  pen.clearRect(0, 0, width, height)
  pen.fillStyle = land
  const dot = Math.max(2, (0.55 * view.closer * width) / ACROSS_deg)
  for (let i = 0; i < places.count; i++) {
    const { x, y } = shareOf(view, {
      latitude_deg: places.latitude_deg[i]!,
      longitude_deg: places.longitude_deg[i]!,
    })
    if (x > -0.05 && x < 1.05 && y > -0.05 && y < 1.05)
      pen.fillRect(x * width - dot / 2, y * height - dot / 2, dot, dot)
  }
  const at = shareOf(view, cross)
  pen.strokeStyle = line
  pen.lineWidth = 2
  pen.beginPath()
  pen.moveTo(at.x * width, 0)
  pen.lineTo(at.x * width, height)
  pen.moveTo(0, at.y * height)
  pen.lineTo(width, at.y * height)
  pen.stroke()
}
