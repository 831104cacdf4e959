/** Longest stretch of work between two breaths, unless a single step is longer, ms. */
const STRETCH_MS = 40

/**
 * Runs a generator to its end and lets the worker listen between stretches of work: a browser ends a worker that does not
 * listen only seconds after it was asked to, and till then it takes the processor from whatever came in its place.
 */
export async function paced<S, R>(steps: Generator<S, R>, onStep: (step: S) => void): Promise<R> {
  let since_ms = performance.now()
  for (;;) {
    const step = steps.next()
    if (step.done) return step.value
    onStep(step.value)
    if (performance.now() - since_ms < STRETCH_MS) continue
    await new Promise((resolve) => setTimeout(resolve))
    since_ms = performance.now()
  }
}
