import { parentPort } from 'node:worker_threads'
import { posts } from '../bot/posts/index.js'
import type { LimitsSheet } from '../core/limits/sheet.js'
import type { Asked, Told } from './speakers.js'

/** What runs in a thread of `speakers.ts`: each question is answered in its turn, and nothing is kept but the limits sheets. */
const sheets = new Map<string, LimitsSheet>()

function tell({ id, kind, on, sha256, sheet }: Asked): Told {
  if (sheet !== null) sheets.set(sha256, sheet)
  const known = sheets.get(sha256)
  if (known === undefined) return { id, written: null }
  try {
    return { id, written: posts[kind].speak({ ...on, sheet: known }) }
  } catch {
    // Whoever asked tries it again, and reports what is thrown there.
    return { id, written: null }
  }
}

parentPort?.on('message', (asked: Asked) => parentPort?.postMessage(tell(asked)))
