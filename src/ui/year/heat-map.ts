import type { LiveAnswer } from '#live/tasks.ts'
import type { TableOf } from '#ui/chart/DataTable.svelte'
import { monthLabel, wallClock } from '#ui/words/calendar.ts'
import type { ShownQuantity } from '#ui/words/quantity.ts'

/**
 * Steps of the year map, coolest first. Each is darker than the one before, so that it reads in black and white;
 * the last three lie above the limit.
 */
export const STEPS = [
  { upTo_K: -9, colour: [247, 245, 252] },
  { upTo_K: -6, colour: [216, 226, 244] },
  { upTo_K: -3, colour: [176, 199, 232] },
  { upTo_K: 0, colour: [131, 163, 208] },
  { upTo_K: 2, colour: [196, 98, 45] },
  { upTo_K: 4, colour: [140, 52, 24] },
  { upTo_K: Infinity, colour: [62, 16, 14] },
] as const

/** The steps with their words: `3 to 6 below`, in the reader's degrees from the limit. */
export function stepsInWords(difference: ShownQuantity): { colour: readonly number[]; words: string }[] {
  const size = (of_K: number): string => difference.bare(Math.abs(of_K), 2)
  return STEPS.map(({ upTo_K, colour }, i) => {
    const from_K = STEPS[i - 1]?.upTo_K ?? -Infinity
    const side = upTo_K <= 0 ? 'below' : 'above'
    const [near_K, far_K] = upTo_K <= 0 ? [upTo_K, from_K] : [from_K, upTo_K]
    const span = !Number.isFinite(far_K)
      ? `over ${size(near_K)}`
      : near_K === 0
        ? `up to ${size(far_K)}`
        : `${size(near_K)} to ${size(far_K)}`
    return { colour, words: `${span} ${side}` }
  })
}

/** Step of a temperature, as its place in STEPS. */
export function stepOf(above_K: number): number {
  return STEPS.findIndex(({ upTo_K }) => above_K <= upTo_K)
}

/** One pixel an hour: a column a day, midnight at the top. */
export function paintYear(context: CanvasRenderingContext2D, room_C: Float64Array, limit_C: number): void {
  const days = Math.floor(room_C.length / 24)
  const image = context.createImageData(days, 24)
  for (let day = 0; day < days; day++) {
    for (let hour = 0; hour < 24; hour++) {
      const [r, g, b] = STEPS[stepOf(room_C[day * 24 + hour]! - limit_C)]!.colour
      image.data.set([r, g, b, 255], (hour * days + day) * 4)
    }
  }
  context.putImageData(image, 0, 0)
}

/** Hours above a temperature in each month. */
export function hoursAboveByMonth(
  answer: LiveAnswer,
  room_C: Float64Array,
  limit_C: number,
): readonly number[] {
  const hours = new Array<number>(12).fill(0)
  for (let h = 0; h < room_C.length; h++) {
    if (room_C[h]! > limit_C) hours[wallClock(answer.weather, h).month]! += 1
  }
  return hours
}

export function yearMapTable(answer: LiveAnswer, limit_C: number, temperature: ShownQuantity): TableOf {
  const bare = hoursAboveByMonth(answer, answer.doNothing.room_C, limit_C)
  const helped = hoursAboveByMonth(answer, answer.year.room_C, limit_C)
  const above = `above ${temperature.text(limit_C)}, h`
  return {
    caption: 'Hours above the limit by month, all hours of the day',
    columns: ['Month', `Without panels ${above}`, `With panels ${above}`],
    rows: bare.map((hours, month) => [monthLabel(month), String(hours), String(helped[month])]),
  }
}
