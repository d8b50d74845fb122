import type { Migration } from '../migrate.js'
import { first } from './0001-first.js'

/** In order; only ever added to. */
export const migrations: readonly Migration[] = [first]
