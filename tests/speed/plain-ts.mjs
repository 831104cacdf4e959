import { register } from 'node:module'

// Runs TypeScript as it is written, line by line and with its comments: a profile by lines says then whose they are.
register('./plain-ts-hooks.mjs', import.meta.url)
