import { existsSync, readFileSync } from 'node:fs'
import { dirname, join, normalize } from 'node:path'
import { describe, expect, test } from 'vitest'
import { ROOT, sourceFiles } from './source-files.ts'

const DOCS = [
  ...['README.md', 'DEVELOPERS.md'].map((path) => ({ path, text: readFileSync(join(ROOT, path), 'utf8') })),
  ...['src', 'tests', 'climate-samples'].flatMap((folder) => sourceFiles(folder, ['.md'])),
]
const PATH = /`((?:src|tests|static|climate-samples)\/[\w./-]+)`/g
const LINK = /\]\(([^)\s]+)\)/g
const NPM = /`npm (?:run (?:-s )?)?([\w-]+)/g

/** Words npm knows without a script of ours. */
const OWN_WORDS = ['ci', 'install', 'test', 'start', 'run', 'audit']

/** Anchor of a heading as common hosts make it. */
const anchorOf = (heading: string) =>
  heading
    .toLowerCase()
    .replace(/[^\p{L}\p{N}\s_-]/gu, '')
    .trim()
    .replace(/\s/g, '-')

const anchorsOf = (text: string) => [...text.matchAll(/^#+ (.+)$/gm)].map(([, heading]) => anchorOf(heading!))

test('there are documents to check', () => expect(DOCS.length).toBeGreaterThan(4))

describe.each(DOCS)('$path', ({ path, text }) => {
  test('links to files and headings that are there', () => {
    const broken = [...text.matchAll(LINK)]
      .map(([, link]) => link!)
      .filter((link) => !/^https?:|^mailto:/.test(link))
      .filter((link) => {
        const [file, anchor] = link.split('#')
        const to = file === '' ? path : normalize(join(dirname(path), file!))
        if (!existsSync(join(ROOT, to))) return true
        return anchor !== undefined && !anchorsOf(readFileSync(join(ROOT, to), 'utf8')).includes(anchor)
      })
    expect(broken).toEqual([])
  })

  test('names paths and commands that are there', () => {
    const paths = [...text.matchAll(PATH)].map(([, named]) => named!)
    expect(paths.filter((named) => !existsSync(join(ROOT, named)))).toEqual([])
    const { scripts } = JSON.parse(readFileSync(join(ROOT, 'package.json'), 'utf8')) as { scripts: object }
    const words = [...text.matchAll(NPM)].map(([, word]) => word!)
    expect(words.filter((word) => !OWN_WORDS.includes(word) && !Object.hasOwn(scripts, word))).toEqual([])
  })
})
