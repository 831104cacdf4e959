export { inTypeScript } from './in-typescript.ts'
