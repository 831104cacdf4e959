import type { Reporter, TestModule, Vitest } from 'vitest/node'

/**
 * Informs the mutation runner of a test file that fails before its first test (a mutant that throws while tests are
 * collected): on its own it looks at tests only and would call such a mutant a survivor.
 */
export class Unloaded implements Reporter {
  private vitest: Vitest | undefined

  onInit(vitest: Vitest): void {
    this.vitest = vitest
  }

  onTestModuleEnd(testModule: TestModule): void {
    for (const error of testModule.errors()) this.vitest?.state.catchError(error, 'Test file did not load')
  }
}
