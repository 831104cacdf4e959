import type { Check } from '../check.ts'
import { airChecks } from './air.ts'
import { convectionChecks } from './convection.ts'
import { loopChecks } from './loop.ts'
import { sunChecks } from './sun.ts'

/** Every check, by theme in the order of the chain. */
export const CHECKS: readonly Check[] = [...sunChecks, ...airChecks, ...convectionChecks, ...loopChecks]
