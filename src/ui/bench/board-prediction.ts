import type { Cover, Light, BoardPrediction } from '#model/panels/readings'

/** One line of the board: a coating under a cover, with what it would read in each light. */
export interface BoardLine {
  readonly coating: string
  readonly cover: Cover
  readonly by: Readonly<Partial<Record<Light, BoardPrediction>>>
}

/** The predictions of a board, a line for each coating under each cover. */
export function boardLines(predictions: readonly BoardPrediction[]): BoardLine[] {
  const lines = new Map<string, BoardLine>()
  for (const prediction of predictions) {
    const { coating, cover, light } = prediction
    const key = `${coating} ${cover}`
    lines.set(key, { coating, cover, by: { ...lines.get(key)?.by, [light]: prediction } })
  }
  return [...lines.values()]
}
