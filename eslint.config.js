import svelte from 'eslint-plugin-svelte'
import globals from 'globals'
import ts from 'typescript-eslint'
import svelteConfig from './svelte.config.js'

/** Rooms of src/model in order: a room may import only those before it. */
export const ROOMS = [
  'units',
  'air',
  'sun',
  'weather',
  'sky',
  'climate',
  'coating',
  'panel',
  'bench',
  'loop',
  'construction',
  'room',
  'store',
  'year',
  'sizing',
  'scenario',
  'comparison',
  'sheet',
]

/** Rooms and layers that a file may not import; `regex`, because `group` reads a leading # as a comment. */
const PURE = {
  regex: '^(#(studies|live|ui)(/|$)|svelte(/|$)|node:|\\$app/|\\$env/)',
  message: 'src/model is pure: no Svelte, no Node, nothing of the layers above it.',
}
const LEAVING = { regex: '^\\.\\./', message: 'A relative path may not leave its folder: use #model/….' }
/** What is above all rooms: the order of the stages. */
const ABOVE = '(answer|memory)\\.ts$'

/**
 * What files of some folders may not import.
 * @param {string[]} files
 * @param {{ regex: string, message: string }[]} patterns
 * @returns {import('eslint').Linter.Config}
 */
const forbidden = (files, patterns) => ({
  files,
  rules: { 'no-restricted-imports': ['error', { patterns }] },
})

const roomRules = ROOMS.map((room, index) => {
  const later = ROOMS.slice(index + 1).map((name) => `${name}/`)
  const order = {
    regex: `^#model/(${[...later, ABOVE].join('|')})`,
    message: `${room} comes before these rooms.`,
  }
  return forbidden([`src/model/${room}/**/*.ts`], [PURE, LEAVING, order])
})

/** From a folder beside it by a relative path, as the shell is reached. */
const SHELL = '^\\.{1,2}/(.*/)?shell/'

const LAYERS = [
  forbidden(['src/model/*.ts'], [PURE]),
  forbidden(
    ['src/studies/**'],
    [
      {
        regex: '^(#(live|ui)/|svelte(/|$)|node:|\\$app/|\\$env/)',
        message: 'src/studies is pure, and knows neither worker, pages nor shell.',
      },
      { regex: SHELL, message: 'src/studies does not know the shell.' },
    ],
  ),
  forbidden(
    ['src/live/**'],
    [{ regex: `^#ui/|${SHELL}`, message: 'src/live knows neither pages nor shell.' }],
  ),
  forbidden(['src/ui/**', 'src/routes/**'], [{ regex: SHELL, message: 'Pages do not know the shell.' }]),
  forbidden(
    ['src/shell/**'],
    [{ regex: '^#(live|ui)/', message: 'The shell knows neither worker nor pages.' }],
  ),
]

export default ts.config(
  { ignores: ['build/', '.svelte-kit/', 'node_modules/', 'coverage/', 'static/'] },
  ...ts.configs.recommended,
  ...svelte.configs.recommended,
  {
    languageOptions: { globals: { ...globals.browser, ...globals.node } },
    rules: {
      'no-undef': 'off',
      '@typescript-eslint/no-non-null-assertion': 'off',
      '@typescript-eslint/consistent-type-imports': 'error',
      eqeqeq: 'error',
      'prefer-const': 'error',
      'no-console': ['error', { allow: ['error', 'warn'] }],
    },
  },
  {
    files: ['src/shell/**', 'tests/**'],
    rules: { 'no-console': 'off' },
  },
  {
    files: ['src/model/**'],
    rules: {
      'no-restricted-syntax': [
        'error',
        { selector: 'ImportExpression', message: 'The model imports nothing late.' },
      ],
    },
  },
  {
    files: ['**/*.svelte', '**/*.svelte.ts'],
    languageOptions: { parserOptions: { parser: ts.parser, svelteConfig } },
    rules: { 'svelte/no-navigation-without-resolve': 'off' },
  },
  ...LAYERS,
  ...roomRules,
)
