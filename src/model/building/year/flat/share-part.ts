import type { Flat } from './numbers.ts'

const NEAR_K = 2e-4
const MOST_TRIALS = 12

/**
 * The share tried next after `slack_K` was found at `tried`, or `isFound`: `pump-duty.ts`, shareUsed. Ends first, `firstTried` before
 * the other; then false position between them (Dowell & Jarratt 1971).
 */
export function nextShare(s: Flat): void {
  const { slack_K, firstTried, trial: before } = s
  s.isFound = true
  s.trial++
  if (before === 0) {
    if (firstTried === 1 ? slack_K >= 0 : slack_K <= 0) return
    s.low = s.side = 0
    s.high = 1
    s.lowSlack_K = s.highSlack_K = slack_K
    s.tried = 1 - firstTried
    s.isFound = false
    return
  }
  if (before === 1) {
    if (firstTried === 0 ? slack_K >= 0 : slack_K <= 0) return
    if (firstTried === 0) s.highSlack_K = slack_K
    else s.lowSlack_K = slack_K
  } else {
    if (Math.abs(slack_K) < NEAR_K || before > MOST_TRIALS) return
    narrow(s)
  }
  s.tried = s.low + ((s.high - s.low) * s.lowSlack_K) / (s.lowSlack_K - s.highSlack_K)
  s.isFound = false
}

/** The end on whose side the share tried was; the other counts half where it stays twice. */
export function narrow(s: Flat): void {
  if (s.slack_K > 0) {
    s.low = s.tried
    s.lowSlack_K = s.slack_K
    if (s.side === 1) s.highSlack_K /= 2
    s.side = 1
  } else {
    s.high = s.tried
    s.highSlack_K = s.slack_K
    if (s.side === -1) s.lowSlack_K /= 2
    s.side = -1
  }
}
