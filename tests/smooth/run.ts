/**
 * `npm run -s smooth [-- POINTS | steps]`: how smoothly the sized area follows its inputs, and with `steps` what
 * halving the step changes, for every store. Closes with a count of what is over its limit.
 */
import { steps } from './steps.ts'
import { sweeps } from './sweeps.ts'

const asked = process.argv[2] ?? '5'
const points = Number(asked)
if (asked !== 'steps' && (!Number.isInteger(points) || points < 3)) {
  console.error('Usage: npm run -s smooth -- [points of each sweep, at least 3 | steps]')
  process.exit(2)
}
process.exitCode = (asked === 'steps' ? steps() : sweeps(points)) > 0 ? 1 : 0
