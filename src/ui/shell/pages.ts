/** The pages that exist, in the order of the work. A new page adds its row here when it is there. */
export const PAGES = [
  { path: '', label: 'Design', about: 'Describe the room and see the panels it needs' },
  { path: 'weather', label: 'Weather', about: 'Open a weather file, judge it, and look at the climate' },
  { path: 'sheet', label: 'Builder’s sheet', about: 'Two or three pages to build from, ready to print' },
  {
    path: 'trust',
    label: 'How far to trust it',
    about: 'Outside checks, misses, limits and what moves the area',
  },
  { path: 'methods', label: 'Methods', about: 'Every equation, symbol, unit and source' },
] as const
