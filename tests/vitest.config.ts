import { defineConfig } from 'vitest/config'

const root = new URL('..', import.meta.url).pathname
const env = { TZ: 'Pacific/Kiritimati', LOG_LEVEL: 'silent' }
const shared = { root, setupFiles: ['tests/support/setup.ts'], testTimeout: 30_000, hookTimeout: 60_000, env }
/** Tests of pure functions: nothing they load holds state, so one worker loads it once for all of them. */
const pure = ['tests/core/**/*.test.ts', 'tests/bot/{words,views,text,limits}/**/*.test.ts']

export default defineConfig({
  test: {
    root,
    // By itself it leaves one processor idle: half of what a small machine has.
    maxWorkers: '100%',
    reporters: process.env.CI ? ['default', ['json', { outputFile: 'node_modules/.cache/tests.json' }]] : ['default'],
    projects: [
      { test: { ...shared, name: 'pure', include: pure, isolate: false } },
      { test: { ...shared, name: 'whole', include: ['tests/**/*.test.ts'], exclude: [...pure, '**/node_modules/**'] } }
    ]
  }
})
