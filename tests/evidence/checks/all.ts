import type { Check } from '../check.ts'
import { untabled } from '../untabled.ts'
import { airChecks } from './air.ts'
import { comfortChecks } from './comfort.ts'
import { convectionChecks } from './convection.ts'
import { envelopeCaseChecks } from './envelope-cases.ts'
import { envelopeChecks } from './envelope.ts'
import { fieldChecks } from './field.ts'
import { filmChecks } from './film.ts'
import { fluidChecks } from './fluids.ts'
import { integrationChecks } from './integration.ts'
import { loopChecks } from './loop.ts'
import { measurePhysicsChecks } from './measure-physics.ts'
import { measureChecks } from './measures.ts'
import { pageChecks } from './page.ts'
import { panelChecks } from './panel.ts'
import { roomResponseChecks } from './room-response.ts'
import { roomChecks } from './room.ts'
import { skyNightChecks } from './sky-nights.ts'
import { skyChecks } from './sky.ts'
import { storeChecks } from './store.ts'
import { sunChecks } from './sun.ts'
import { sunlightChecks } from './sunlight.ts'
import { tradeChecks } from './trade.ts'
import { wholeChecks } from './whole.ts'

/** Every check, by theme in the order of the chain. */
export const ALL_CHECKS: readonly Check[] = [
  ...sunChecks,
  ...sunlightChecks,
  ...airChecks,
  ...convectionChecks,
  ...skyChecks,
  ...skyNightChecks,
  ...panelChecks,
  ...pageChecks,
  ...fieldChecks,
  ...filmChecks,
  ...roomChecks,
  ...envelopeChecks,
  ...roomResponseChecks,
  ...envelopeCaseChecks,
  ...storeChecks,
  ...loopChecks,
  ...fluidChecks,
  ...integrationChecks,
  ...wholeChecks,
  ...comfortChecks,
  ...tradeChecks,
  ...measureChecks,
  ...measurePhysicsChecks,
]

/** Those that are evidence: what the table holds. */
export const CHECKS = ALL_CHECKS.filter((check) => untabled(check) === null)
