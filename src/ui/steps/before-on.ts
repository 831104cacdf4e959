import type { Workbench } from '#live/workbench.svelte.ts'

/** Before the step “Cooling” leads on: the search of all ways, until it was made or a way is taken; null after that. */
export function beforeOn({ deciding, design, ready, climate }: Workbench) {
  if (deciding.running) return { label: 'Looking …', start: null }
  if (deciding.decision !== null || design.scenario.job.way.length > 0) return null
  const { record } = climate
  const usable = ready && record !== null && !climate.loading
  return {
    label: 'Look at all ways',
    start: usable ? () => void deciding.start(design.scenario, record) : null,
  }
}

/** What is said in place of the panels that would fit, where the first way found has none; empty where a way without them is taken. */
export function noPanelsFound({ deciding, design }: Workbench): string | null {
  const { scenario } = design
  const { way } = scenario.job
  if (way.length > 0) return way.includes('panels') ? null : ''
  const first = deciding.isFor(scenario) ? deciding.decision?.ways[0]?.combination : undefined
  return first === undefined || first.panelArea_m2 > 0 || !first.meets
    ? null
    : 'The first way found here has no panels. Take it, or another, before you go on.'
}
