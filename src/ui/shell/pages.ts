/** The pages that exist, in the order of the work. A new page adds its row here when it is there. */
export const PAGES = [
  { path: '', label: 'Design', about: 'Describe the room and see the panels it needs' },
  {
    path: 'decide',
    label: 'What keeps it cool',
    about: 'Panels, or shade, paint, night air, fans, coolers: which, and for how much',
  },
  {
    path: 'coating',
    label: 'Coating bench',
    about: 'Reflectance and emittance of your own coating, from field readings',
  },
  { path: 'weather', label: 'Weather', about: 'Open a weather file, judge it, and look at the climate' },
  {
    path: 'compare',
    label: 'Compare',
    about: 'Climates, running plans, coatings, covers and baselines side by side',
  },
  { path: 'map', label: 'Map', about: 'Area against store or flow: what meets the target, what is cheapest' },
  { path: 'sheet', label: 'Builder’s sheet', about: 'Two or three pages to build from, ready to print' },
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
] as const
