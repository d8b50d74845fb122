import { defineConfig } from 'vitest/config'

const root = new URL('../..', import.meta.url).pathname

/**
 * The bench runs where the tests run, so that TypeScript needs no second tool, but on what was built: the runner rewrites every
 * import of a source file, which makes our code slower than what people run, and its peers not. It asserts nothing of time.
 */
export default defineConfig({
  resolve: { alias: [{ find: /^(?:\.\.\/)+src\/(.*)$/, replacement: `${root}dist/$1` }] },
  test: {
    root,
    include: ['tests/bench/run.ts'],
    testTimeout: 900_000,
    reporters: ['default'],
    server: { deps: { external: [/\/dist\//] } },
    env: { LOG_LEVEL: 'silent' }
  }
})
