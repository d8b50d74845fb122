import { createRequire } from 'node:module'
import type * as Module from 'kysely'

const require = createRequire(import.meta.url)
const folder = require.resolve('kysely').replace(/index\.js$/, '')

/**
 * A file of Kysely in the form for `require`, by its path without the ending: as an ES module it is 260 files that are each looked
 * for, read and linked by themselves, a tenth of the time from start to the first answer. The version is pinned; `kysely.test.ts`
 * holds that what is used are the very things of the index.
 */
export function load(file: string): typeof Module {
  return require(`${folder}${file}.js`) as typeof Module
}
