import svelte from 'eslint-plugin-svelte'
import globals from 'globals'
import ts from 'typescript-eslint'
import svelteConfig from './svelte.config.js'

/** The wings of src/model and their rooms, in order: a room may import only the doors of rooms before it. */
export const WINGS = {
  basis: ['numbers', 'units', 'words', 'hours'],
  outdoors: ['air', 'sun', 'weather', 'intake', 'sky', 'climate', 'place'],
  panels: ['coating', 'paint', 'plate', 'readings', 'notebook', 'loop'],
  building: ['construction', 'room', 'store', 'delivery', 'equipment', 'year'],
  design: ['target', 'cost', 'sizing', 'scenario', 'measures', 'assembly', 'comparison'],
  handover: ['as-built', 'drawing', 'sheet'],
}
export const ROOMS = Object.entries(WINGS).flatMap(([wing, rooms]) => rooms.map((room) => `${wing}/${room}`))

/** Rooms and layers that a file may not import; `regex`, because `group` reads a leading # as a comment. */
const PURE = {
  regex: '^(#(studies|live|ui)(/|$)|svelte(/|$)|node:|\\$app/|\\$env/)',
  message: 'src/model is pure: no Svelte, no Node, nothing of the layers above it.',
}
const INSIDE = { regex: '^#inside/', message: 'Only tests look inside a room.' }
const DEEP = {
  regex: '^#model/(?![\\w-]+/[\\w-]+$)',
  message: 'A room is entered by its door: #model/<wing>/<room>.',
}

/**
 * What files of some folders may not import.
 * @param {string[]} files
 * @param {{ regex: string, message: string }[]} patterns
 * @returns {import('eslint').Linter.Config}
 */
const forbidden = (files, patterns) => ({
  files,
  rules: { 'no-restricted-imports': ['error', { patterns: [INSIDE, DEEP, ...patterns] }] },
})

const roomRules = ROOMS.flatMap((room, index) => {
  const order = {
    regex: `^#model/(${ROOMS.slice(index).join('|')})$`,
    message: `${room} comes before these rooms (or is this one: use ./).`,
  }
  /** @param {number} levels */
  const leaving = (levels) => ({
    regex: `^${'\\.\\./'.repeat(levels)}`,
    message: 'A relative path may not leave its room.',
  })
  return [
    forbidden([`src/model/${room}/*.ts`], [PURE, order, leaving(1)]),
    forbidden([`src/model/${room}/*/*.ts`], [PURE, order, leaving(2)]),
  ]
})

/** From a folder beside it by a relative path, as the shell is reached. */
const SHELL = '^\\.{1,2}/(.*/)?shell/'

/** What only `src/studies/stages.ts` calls: the stages in their order. */
const STAGE_CALLS = {
  regex: '^#model/',
  importNamePattern:
    '^(stressWeather|sunHours|planeIrradiance|skyHours|reducePanelHours|roomNetwork|planHours|flowKnee|simulateYear)$',
  message: 'The order of the stages is in src/studies/stages.ts: ask a study.',
}

const LAYERS = [
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
    [STAGE_CALLS, { regex: `^#ui/|${SHELL}`, message: 'src/live knows neither pages nor shell.' }],
  ),
  forbidden(
    ['src/ui/**', 'src/routes/**'],
    [STAGE_CALLS, { regex: SHELL, message: 'Pages do not know the shell.' }],
  ),
  forbidden(
    ['src/shell/**', 'src/library.ts'],
    [STAGE_CALLS, { regex: '^#(live|ui)/', message: 'The shell knows neither worker nor pages.' }],
  ),
]

/**
 * Rules that need the types: a promise nobody waits for loses its error; a case left out is no answer.
 * @satisfies {import('eslint').Linter.RulesRecord}
 */
export const TYPED_RULES = {
  '@typescript-eslint/await-thenable': 'error',
  '@typescript-eslint/no-floating-promises': 'error',
  '@typescript-eslint/no-misused-promises': 'error',
  '@typescript-eslint/no-unnecessary-type-assertion': 'error',
  '@typescript-eslint/only-throw-error': 'error',
  '@typescript-eslint/prefer-promise-reject-errors': 'error',
  '@typescript-eslint/restrict-plus-operands': 'error',
  '@typescript-eslint/switch-exhaustiveness-check': ['error', { considerDefaultExhaustiveForUnions: true }],
}

/** @type {import('eslint').Linter.Config} */
const TYPED = {
  files: ['src/**/*.ts'],
  ignores: ['src/**/*.svelte.ts', 'src/service-worker.ts'],
  languageOptions: { parserOptions: { projectService: true, tsconfigRootDir: import.meta.dirname } },
  rules: TYPED_RULES,
}

export default ts.config(
  {
    ignores: [
      'build/',
      '.svelte-kit/',
      'node_modules/',
      'coverage/',
      'static/',
      'src/model/building/year/flat/hours.ts',
      'src/model/building/year/flat/hours-wasm.ts',
    ],
  },
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
  TYPED,
  ...LAYERS,
  ...roomRules,
)
