/** A page, with the words of its links. */
export interface PageRow {
  readonly path: string
  readonly label: string
  readonly about: string
}

/** The path from nothing to a sheet: six steps, one question each, one word for each on every screen. */
export const PATH = [
  { path: '', label: 'Place', about: 'Where the room is, and the weather of a year there' },
  { path: 'room', label: 'Room', about: 'What it is built of, and how warm it may get' },
  {
    path: 'decide',
    label: 'Cooling',
    about: 'Panels, or shade, paint, night air, fans, coolers: which, and for how much',
  },
  {
    path: 'plant',
    label: 'Panel',
    about: 'Panel, loop, store and when it runs',
  },
  {
    path: 'range',
    label: 'Range',
    about: 'How sure the answer is, and what it hangs on',
  },
  {
    path: 'sheet',
    label: 'Sheet',
    about: 'Drawings, parts and start-up, ready to print',
  },
] as const satisfies readonly PageRow[]

/** What helps on the way. A new page adds its row here when it is there. */
export const FURTHER = [
  { path: 'design', label: 'Everything at once', about: 'The whole description and all charts on one page' },
  { path: 'weather', label: 'Weather', about: 'Open a weather file, judge it, and look at the climate' },
  {
    path: 'coating',
    label: 'Coating bench',
    about: 'Reflectance and emittance of your own coating, from field readings',
  },
  {
    path: 'compare',
    label: 'Compare',
    about: 'Climates, running plans, coatings, covers and baselines side by side',
  },
  { path: 'map', label: 'Map', about: 'Area against store or flow: what meets the target, what is cheapest' },
  { path: 'batch', label: 'Batch', about: 'What to weigh and measure of your recipe for the panel area' },
  {
    path: 'asbuilt',
    label: 'As-built',
    about: 'The finished panel against its prediction, and what to inspect',
  },
  {
    path: 'trust',
    label: 'Trust',
    about: 'Outside checks, misses, limits and what moves the area',
  },
  { path: 'methods', label: 'Methods', about: 'Every equation, symbol, unit and source' },
  { path: 'glossary', label: 'Glossary', about: 'One name for each quantity, with unit and meaning' },
] as const satisfies readonly PageRow[]

/** Which step of the path a route is, from 0; −1 for a page beside it. */
export function stepOf(routeId: string | null): number {
  return PATH.findIndex(({ path }) => routeId === `/${path}`)
}
