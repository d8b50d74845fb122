import { defineConfig } from 'vitest/config'

/** The bench runs where the tests run, so that TypeScript needs no second tool; it asserts nothing of time. */
export default defineConfig({
  test: {
    root: new URL('../..', import.meta.url).pathname,
    include: ['tests/bench/run.ts'],
    testTimeout: 900_000,
    reporters: ['default'],
    env: { LOG_LEVEL: 'silent' }
  }
})
