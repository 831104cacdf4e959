/** A fan is credited only above this operative temperature, °C (ASHRAE 55, EN 16798-1; from memory). */
const FROM_C = 25
/** Its effect fades from the first to nothing at the second, near the skin's temperature, °C (common practice, no source). */
const FADES_C = 32
const GONE_C = 35

/** Kelvins that moving air is worth by its speed at the person, m/s (ASHRAE 55 adaptive, EN 16798-1; from memory). */
const OFFSETS = [
  [0.3, 0],
  [0.6, 1.2],
  [0.9, 1.8],
  [1.2, 2.2],
] as const

/** What a fan is worth to people at an air speed, K: the cautious one of two rules that disagree; 2.2 at most. */
export function fanOffset_K(speed_ms: number): number {
  const above = OFFSETS.findIndex(([speed]) => speed >= speed_ms)
  if (above === 0) return 0
  if (above < 0) return OFFSETS.at(-1)![1]
  const [[from, low], [to, high]] = [OFFSETS[above - 1]!, OFFSETS[above]!]
  return low + ((speed_ms - from) / (to - from)) * (high - low)
}

/** Counted hours in which a ceiling fan is on: those in which it is credited. @param limit_C  NaN where an hour does not count */
export function fanHours_h(room_C: Float64Array, limit_C: Float64Array): number {
  return room_C.reduce((n, temp_C, h) => n + (temp_C > FROM_C && !Number.isNaN(limit_C[h]!) ? 1 : 0), 0)
}

/**
 * Operative temperature as it feels in moving air, °C: lowered by the offset, never below 25 °C, and less and less above
 * 32 °C. The room itself is not cooled.
 */
export function felt_C(room_C: Float64Array, offset_K: number): Float64Array {
  if (offset_K === 0) return room_C
  return room_C.map((temp_C) => {
    if (!(temp_C > FROM_C)) return temp_C
    const share = Math.min(1, Math.max(0, (GONE_C - temp_C) / (GONE_C - FADES_C)))
    return Math.max(FROM_C, temp_C - offset_K * share)
  })
}

/**
 * Operative temperature that in moving air feels like a limit, °C: the inverse of `felt_C`. A limit under 25 °C stays as
 * it is, because a fan is not credited there.
 */
export function limitInMovingAir_C(limit_C: number, offset_K: number): number {
  if (offset_K === 0 || !(limit_C >= FROM_C) || limit_C >= GONE_C) return limit_C
  const plain_C = limit_C + offset_K
  if (plain_C <= FADES_C) return plain_C
  // t − o (35 − t) / (35 − 32) = limit, solved for t
  const perKelvin = offset_K / (GONE_C - FADES_C)
  return (limit_C + perKelvin * GONE_C) / (1 + perKelvin)
}
