import { defineConfig } from 'vitest/config'

/**
 * Long runs of what may go wrong: `npm run campaign -- NAME` runs `tests/campaign/NAME.campaign.ts`, without a name all of them.
 * `SEED` and `COUNT` replay one; a short slice of each runs with the tests.
 */
export default defineConfig({
  test: {
    root: new URL('../..', import.meta.url).pathname,
    include: ['tests/campaign/*.campaign.ts'],
    testTimeout: 3_600_000,
    hookTimeout: 120_000,
    fileParallelism: false,
    reporters: ['default'],
    env: { TZ: 'Pacific/Kiritimati', LOG_LEVEL: 'silent' }
  }
})
