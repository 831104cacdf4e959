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

/** What the physics may never touch. */
const OUTSIDE = ['svelte', 'svelte/*', '$app/*', '$env/*', 'node:*', '#live/*', '#ui/*', '../*']

/** @type {import('eslint').Linter.Config[]} */
const roomRules = ROOMS.map((room, index) => ({
  files: [`src/model/${room}/**/*.ts`],
  rules: {
    'no-restricted-imports': [
      'error',
      {
        patterns: [
          { group: OUTSIDE, message: 'src/model is pure: no Svelte, no Node, no ../ between rooms.' },
          {
            group: ['#model/answer.ts', ...ROOMS.slice(index + 1).map((later) => `#model/${later}/**`)],
            message: `${room} comes before these rooms.`,
          },
        ],
      },
    ],
  },
}))

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
    files: ['**/*.svelte', '**/*.svelte.ts'],
    languageOptions: { parserOptions: { parser: ts.parser, svelteConfig } },
    rules: { 'svelte/no-navigation-without-resolve': 'off' },
  },
  ...roomRules,
)
