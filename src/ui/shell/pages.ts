/** The pages that exist, in the order of the work. A new page adds its row here when it is there. */
export const PAGES = [
  { path: '', label: 'Design', about: 'Describe the room and see the panels it needs' },
] as const
