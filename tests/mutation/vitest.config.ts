import { defineConfig } from 'vitest/config'
import { BaseSequencer, type TestSpecification } from 'vitest/node'
import { Unloaded } from './unloaded.ts'

/** Whole years, and panels held against their full solution: they come last, since most mutants fall to a quicker test. */
const SLOW = /(limits|against-odex|reduction)\.test\.ts$/

class QuickFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    return files.toSorted((a, b) => Number(SLOW.test(a.moduleId)) - Number(SLOW.test(b.moduleId)))
  }
}

/** The tests of the one room under mutation, named by run.ts, without the plugins of the pages. */
export default defineConfig({
  test: {
    include: [`tests/rooms/${process.env.MUTATED_ROOM}/**/*.test.ts`],
    // Thirty whole years take longer than all other tests of the room together.
    exclude: ['tests/rooms/building/year/ledger.test.ts'],
    // The reduction's tests look at every 23rd of their hours.
    env: { SPARSER_HOURS: '23' },
    sequence: { sequencer: QuickFirst },
    testTimeout: 120_000,
    reporters: [new Unloaded()],
  },
})
