/** How unevenly the passages of one row share its flow, fed at one corner and drained at the opposite one. */
export interface RowOfPassages {
  /** Passages side by side in the row. */
  readonly passages: number
  /** Both headers together, friction, Pa. */
  readonly headerLoss_Pa: number
  /** ρ v² where all the row's flow is still in the header, Pa. */
  readonly headerMomentum_Pa: number
  /** One passage with its ends, Pa. */
  readonly passageLoss_Pa: number
  /** How the passage's loss grows with its flow: 1 laminar, 1.75 turbulent. */
  readonly exponent: number
}

/** A spread beyond this is remarked, ± share of the mean flow (common practice, no source). */
export const UNEVEN_frac = 0.1

/** Places along the row at which the pressure is looked at. */
const PLACES = 20

/**
 * Half the difference between the fastest and the slowest passage over the mean flow, first order (it overstates what is
 * larger than about ±30 %). Along the row, u from 0 at the fed end to 1, with flow given up evenly, the pressure across a
 * passage differs from that of the first by
 *   −H (u − u²)            friction of both headers, H together: it bows, and starves the middle;
 *   + ½ρv² (1 − (1 − u)²)  the feeding header slows down and its pressure recovers (Bernoulli);
 *   + ρv² u²               the draining header must speed up what joins it (momentum: what joins brings none along).
 * So with narrow headers the far passages run faster. Between first and last passage only (n − 1)/n of the flow is still
 * in the header. Standard manifold theory with ideal coefficients; buoyancy in the passages is left out.
 */
export function flowSpread_frac(row: RowOfPassages): number {
  if (row.passages <= 1 || row.passageLoss_Pa <= 0) return 0
  const share = ((row.passages - 1) / row.passages) ** 2
  let least_Pa = 0
  let most_Pa = 0
  for (let place = 1; place <= PLACES; place++) {
    const u = place / PLACES
    const friction_Pa = -row.headerLoss_Pa * (u - u * u)
    const momentum_Pa = row.headerMomentum_Pa * (0.5 * (1 - (1 - u) ** 2) + u * u)
    const across_Pa = share * (friction_Pa + momentum_Pa)
    least_Pa = Math.min(least_Pa, across_Pa)
    most_Pa = Math.max(most_Pa, across_Pa)
  }
  return (0.5 * (most_Pa - least_Pa)) / (row.exponent * row.passageLoss_Pa)
}

/**
 * Share of the panel's heat that an uneven flow costs, 0…1: passage flows spread evenly over ± `spread_frac`, each with
 * heat ∝ flow (1 − exp(−N/flow)), second order about the mean: s²/6 · N²/(e^N − 1).
 * @param transferUnits  N = F′U A/(ṁ c), above 0
 */
export function unevenHeatLoss_frac(spread_frac: number, transferUnits: number): number {
  return Math.min(1, ((spread_frac ** 2 / 6) * transferUnits ** 2) / Math.expm1(transferUnits))
}
