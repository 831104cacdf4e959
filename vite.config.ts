import { sveltekit } from '@sveltejs/kit/vite'
import { defineConfig } from 'vitest/config'
import { firstAnswerPlugin } from './first-answer-plugin.ts'

export default defineConfig({
  plugins: [firstAnswerPlugin(), sveltekit()],
  worker: { format: 'es' },
  build: { target: 'es2022' },
  server: { fs: { allow: ['climate-samples'] } },
  test: {
    projects: [
      {
        extends: true,
        test: {
          name: 'unit',
          include: ['tests/**/*.test.ts'],
          exclude: ['tests/browser/**', 'node_modules/**'],
          testTimeout: 120_000,
        },
      },
      {
        extends: true,
        test: {
          name: 'browser',
          include: ['tests/browser/**/*.browser.ts'],
          testTimeout: 120_000,
          hookTimeout: 240_000,
          fileParallelism: false,
          // A page on a shared machine can be starved past its patience; a true fault fails every time.
          retry: 2,
        },
      },
    ],
  },
})
