/** `npm run -s glossary`: writes the glossary as a page of the repository. */
import { writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { glossaryText } from '#model/basis/words'

writeFileSync(fileURLToPath(new URL('../model/GLOSSARY.md', import.meta.url)), glossaryText())
