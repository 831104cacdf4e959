import { createRequire } from 'node:module'

/** What the tests use of odex 2.0.4, an extrapolation solver after Hairer, Nørsett & Wanner, Solving ODEs I, II.9. */
export interface OdexSolver {
  absoluteTolerance: number
  relativeTolerance: number
  maxSteps: number
  solve(
    slopes: (t: number, y: number[]) => number[],
    start: number,
    y0: readonly number[],
    end: number,
  ): { readonly y: number[] }
}

/**
 * The solver's constructor. The package is CommonJS beside TypeScript source of its own that neither bundles nor
 * passes a strict compiler, so it is taken as Node takes it and typed here.
 */
export const { Solver } = createRequire(import.meta.url)('odex') as {
  Solver: new (size: number) => OdexSolver
}
