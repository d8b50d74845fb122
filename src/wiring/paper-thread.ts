import { parentPort } from 'node:worker_threads'
import type { Paper } from '../bot/papers/paper.js'
import type { Drew } from './paper-worker.js'
import { draw } from './papers.js'

/** What runs in a thread of `paper-threads.ts`: one paper at a time, nothing kept. */
async function drew(paper: Paper): Promise<Drew> {
  try {
    const file = await draw(paper)
    // Small buffers share their memory with others, which must stay here.
    return { kind: 'file', file: { ...file, bytes: new Uint8Array(file.bytes) } }
  } catch (error) {
    return { kind: 'failed', stack: error instanceof Error ? (error.stack ?? error.message) : String(error) }
  }
}

parentPort?.on('message', async (paper: Paper) => {
  const told = await drew(paper)
  parentPort?.postMessage(told, told.kind === 'file' ? [told.file.bytes.buffer as ArrayBuffer] : [])
})
parentPort?.postMessage({ kind: 'ready' } satisfies Drew)
