/** How a predicted series compares with a measured one; hours where either is missing do not count. */
export interface Agreement {
  readonly hours: number
  /** Mean of predicted − measured. */
  readonly bias: number
  /** Root mean square of predicted − measured. */
  readonly rmse: number
  /** Standard deviation about the bias. */
  readonly spread: number
  readonly measuredMean: number
  readonly predictedMean: number
}

/** Bias and spread of predicted against measured values, in their own unit. NaN means with no common hour. */
export function agreement(predicted: ArrayLike<number>, measured: ArrayLike<number>): Agreement {
  let hours = 0
  let sum = 0
  let squares = 0
  let measuredSum = 0
  for (let i = 0; i < Math.min(predicted.length, measured.length); i++) {
    const difference = predicted[i]! - measured[i]!
    if (!Number.isFinite(difference)) continue
    hours += 1
    sum += difference
    squares += difference * difference
    measuredSum += measured[i]!
  }
  const bias = sum / hours
  const meanSquare = squares / hours
  return {
    hours,
    bias,
    rmse: Math.sqrt(meanSquare),
    spread: Math.sqrt(Math.max(0, meanSquare - bias * bias)),
    measuredMean: measuredSum / hours,
    predictedMean: measuredSum / hours + bias,
  }
}

/** Store and room as logged against a simulation of the same hours; null where not logged. */
export function houseAgreement(
  log: { readonly store_C: Float64Array | null; readonly room_C: Float64Array | null },
  simulated: { readonly store_C: ArrayLike<number>; readonly room_C: ArrayLike<number> },
): { readonly store: Agreement | null; readonly room: Agreement | null } {
  return {
    store: log.store_C === null ? null : agreement(simulated.store_C, log.store_C),
    room: log.room_C === null ? null : agreement(simulated.room_C, log.room_C),
  }
}
