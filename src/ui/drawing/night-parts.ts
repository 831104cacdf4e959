import type { ChartConfiguration } from 'chart.js'
import type { PanelParts } from '#model/panels/plate'
import type { LiveAnswer } from '#live/messages.ts'
import { baseOptions, quantityAxis } from '#ui/chart/base-options.ts'
import type { TableOf } from '#ui/chart/DataTable.svelte'
import type { Ink } from '#ui/chart/ink.ts'
import { clockLabel, wallClock } from '#ui/words/calendar.ts'

const WEEK_DAYS = 7
const NIGHT_HOURS = [9, 10, 11, 12, 13, 14, 15]

const PARTS = [
  ['sky_Wm2', 'Sky'],
  ['air_Wm2', 'Air'],
  ['water_Wm2', 'Dew'],
  ['back_Wm2', 'Back'],
  ['sun_Wm2', 'Sun'],
] as const

/** First hour, a noon, of the day of the hottest week in whose night the panel gives off most. */
export function nightHours({ year, weather, hottestWeekStart_h }: LiveAnswer): number {
  const toNoon = (36 - wallClock(weather, hottestWeekStart_h).hour) % 24
  const noons = Array.from({ length: WEEK_DAYS }, (_, day) => hottestWeekStart_h + toNoon + 24 * day)
  const inside = noons.filter((noon) => noon + 24 <= year.hours)
  const given = (noon: number) => NIGHT_HOURS.reduce((sum, h) => sum + year.panelHeat_W[noon + h]!, 0)
  return inside.reduce((best, noon) => (given(noon) > given(best) ? noon : best), inside[0] ?? 0)
}

const sum = (rows: readonly PanelParts[], part: keyof PanelParts): number =>
  rows.reduce((all, row) => all + row[part], 0)

/** Hours of the night: where there is no sun on the panel. */
const dark = (rows: readonly PanelParts[]): readonly PanelParts[] => rows.filter((row) => row.sun_Wm2 > -0.5)

/** "In the dark hours 620 Wh/m² go to the sky; 140 come from the air, 22 from dew." */
export function nightWords(rows: readonly PanelParts[]): string {
  const night = dark(rows)
  const flow = (part: keyof PanelParts, from: string, to: string): string => {
    const all = sum(night, part)
    return `${Math.abs(all).toFixed(0)} Wh/m² ${all < 0 ? from : to}`
  }
  const dew =
    sum(night, 'water_Wm2') < -0.5 ? `, ${flow('water_Wm2', 'come from dew', 'go with drying')}` : ''
  return `In the ${night.length} dark hours ${flow('sky_Wm2', 'come from the sky', 'go to the sky')}; ${flow('air_Wm2', 'come from the air', 'go to the air')}${dew}. At the plate’s mean temperature of each hour, before the field factor.`
}

export function nightConfig(
  answer: LiveAnswer,
  from_h: number,
  rows: readonly PanelParts[],
  ink: Ink,
): ChartConfiguration {
  const look: Readonly<Record<(typeof PARTS)[number][0], object>> = {
    sky_Wm2: { backgroundColor: ink.room },
    air_Wm2: { backgroundColor: ink.without },
    water_Wm2: { backgroundColor: ink.store },
    back_Wm2: { backgroundColor: 'transparent', borderColor: ink.without },
    sun_Wm2: { backgroundColor: ink.outdoor },
  }
  const base = baseOptions(ink)
  return {
    type: 'bar',
    data: {
      labels: rows.map((_, i) => clockLabel(wallClock(answer.weather, from_h + i).hour)),
      datasets: PARTS.map(([part, label]) => ({
        label,
        data: rows.map((row) => row[part]),
        borderColor: ink.text,
        borderWidth: 0.5,
        pointStyle: 'rect' as const,
        ...look[part],
      })),
    },
    options: {
      ...base,
      scales: {
        x: {
          stacked: true,
          ticks: { color: ink.soft, maxTicksLimit: 7, maxRotation: 0 },
          grid: { display: false },
        },
        y: quantityAxis(ink, 'W/m²', { stacked: true }),
      },
    },
  }
}

export function nightTable(answer: LiveAnswer, from_h: number, rows: readonly PanelParts[]): TableOf {
  return {
    caption: 'Heat leaving (+) and taken up (−) by a square metre of panel, W/m²',
    columns: ['Hour from', ...PARTS.map(([, label]) => `${label}, W/m²`)],
    rows: rows.map((row, i) => [
      clockLabel(wallClock(answer.weather, from_h + i).hour),
      ...PARTS.map(([part]) => row[part].toFixed(0)),
    ]),
  }
}
