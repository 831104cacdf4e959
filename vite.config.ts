import { sveltekit } from '@sveltejs/kit/vite'
import { defineConfig } from 'vitest/config'
import { firstAnswerPlugin } from './src/shell/first-answer-plugin.ts'

const WORKED_EXAMPLE = new URL('./src/live/worked-example.ts', import.meta.url)

export default defineConfig({
  plugins: [firstAnswerPlugin(WORKED_EXAMPLE), sveltekit()],
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
          // Shared machines are at times at a third of their speed.
          testTimeout: 300_000,
          // All cores: by itself one of two is left to the thread that hands out the files and does little else.
          maxWorkers: '100%',
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
