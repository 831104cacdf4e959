import type { Check } from '../check.ts'
import { airChecks } from './air.ts'
import { comfortChecks } from './comfort.ts'
import { convectionChecks } from './convection.ts'
import { fieldChecks } from './field.ts'
import { integrationChecks } from './integration.ts'
import { loopChecks } from './loop.ts'
import { panelChecks } from './panel.ts'
import { roomChecks } from './room.ts'
import { skyChecks } from './sky.ts'
import { storeChecks } from './store.ts'
import { sunChecks } from './sun.ts'
import { tradeChecks } from './trade.ts'
import { wholeChecks } from './whole.ts'

/** Every check, by theme in the order of the chain. */
export const CHECKS: readonly Check[] = [
  ...sunChecks,
  ...airChecks,
  ...convectionChecks,
  ...skyChecks,
  ...panelChecks,
  ...fieldChecks,
  ...roomChecks,
  ...storeChecks,
  ...loopChecks,
  ...integrationChecks,
  ...wholeChecks,
  ...comfortChecks,
  ...tradeChecks,
]
