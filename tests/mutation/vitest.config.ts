import { defineConfig } from 'vitest/config'
import { Unloaded } from './unloaded.ts'

/** The tests of the one room under mutation, named by run.ts, without the plugins of the pages. */
export default defineConfig({
  test: {
    include: [`tests/stages/${process.env.MUTATED_ROOM}/**/*.test.ts`],
    // Thirty whole years take longer than all other tests of the room together; their books are closed on shorter runs too.
    exclude: ['tests/stages/year/ledger.test.ts'],
    reporters: [new Unloaded()],
  },
})
