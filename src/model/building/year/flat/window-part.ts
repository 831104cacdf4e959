import { OPENS_FROM_K, OPENS_OVER_K, SHUTS_OVER_K } from '../night-windows.ts'
import type { Flat } from './numbers.ts'
import { prepareRoom } from './room-part.ts'
import { nextShare } from './share-part.ts'

/** The opening that agrees with the air's mean with it, the room prepared with it: `night-windows.ts`. */
export function openWindows(s: Flat): void {
  s.firstTried = s.opening > 0.5 ? 1 : 0
  s.tried = s.firstTried
  s.trial = 0
  for (;;) {
    s.opening = s.tried
    s.vent_WK = s.opening * s.nightVent_WK
    prepareRoom(s)
    s.airMean_C = s.roomDrive_W / s.room_WK
    const open_K = (s.airMean_C - s.outdoor_C - OPENS_FROM_K) / OPENS_OVER_K
    const above_K = (s.airMean_C - s.ventStop_C) / SHUTS_OVER_K
    s.slack_K = (open_K < above_K ? open_K : above_K) - s.opening
    nextShare(s)
    if (s.isFound) break
  }
  s.vented_s += s.opening * s.step_s
}
