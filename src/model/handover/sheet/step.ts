import type { Wording } from '#model/basis/words'

/** A thing to do before the plant is trusted, with what the measurement should show. */
export interface Step {
  readonly what: string
  readonly expect: Wording
}
