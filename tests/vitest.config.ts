import { defineConfig } from 'vitest/config'

export default defineConfig({
  test: {
    root: new URL('..', import.meta.url).pathname,
    include: ['tests/**/*.test.ts'],
    setupFiles: ['tests/support/setup.ts'],
    testTimeout: 30_000,
    hookTimeout: 60_000,
    reporters: process.env.CI ? ['default', ['json', { outputFile: 'node_modules/.cache/tests.json' }]] : ['default'],
    env: { TZ: 'Pacific/Kiritimati', LOG_LEVEL: 'silent' }
  }
})
