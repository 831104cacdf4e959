export { LOAD_CUTS } from './load-cuts.ts'
