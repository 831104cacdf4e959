export { AGEING_RANGES, type AgeingRange } from './ageing-ranges.ts'
export { agedCoating, agedFilm } from './ageing.ts'
export { KNOWN_COATINGS } from './library.ts'
export type { CoatingOptics, FilmOptics } from './optics.ts'
