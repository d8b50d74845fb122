import { availableParallelism } from 'node:os'
import { Worker } from 'node:worker_threads'
import type { PostKind } from '../bot/posts/index.js'
import type { PostOn, Written } from '../bot/posts/post.js'
import type { Speaker } from '../bot/posts/speaker.js'
import type { LimitsSheet } from '../core/limits/sheet.js'

/** A question to a thread. A limits sheet goes along once: what is made of it hangs on the very object. */
export interface Asked {
  readonly id: number
  readonly kind: PostKind
  readonly on: Omit<PostOn, 'sheet'>
  readonly sha256: string
  readonly sheet: LimitsSheet | null
}

/** Null: the thread cannot tell. */
export interface Told {
  readonly id: number
  readonly written: Written | null
}

/** Posts in the hands of a thread at once: one in work, and some that wait while this thread is busy. */
const depth = 3
/** More take more memory than they save time: one transaction after the other is what is left then. */
const mostThreads = 2

/**
 * Threads that put posts into words, one less than there are processors; null where there is but one. They begin to load when this is
 * called and end with `close`.
 */
export function openSpeakers(processors = availableParallelism()): Speaker | null {
  const count = Math.min(mostThreads, processors - 1)
  if (!(count >= 1)) return null
  const threads = Array.from({ length: count }, openThread)
  let next = 0
  return {
    width: count * depth,
    speak: (kind, on) => {
      next = (next + 1) % count
      return (threads[next] as Thread).ask(kind, on)
    },
    letIn: () => new Promise((go) => setImmediate(go)),
    close: async () => {
      await Promise.all(threads.map((thread) => thread.close()))
    }
  }
}

interface Thread {
  ask(kind: PostKind, on: PostOn): Promise<Written | null>
  close(): Promise<unknown>
}

function openThread(): Thread {
  const worker = new Worker(new URL('./speaker-thread.js', import.meta.url), { env: {} })
  const waiting = new Map<number, (written: Written | null) => void>()
  const sent = new Set<string>()
  let alive = true
  let asked = 0
  const end = (): void => {
    alive = false
    for (const answer of waiting.values()) answer(null)
    waiting.clear()
  }
  worker.on('message', ({ id, written }: Told) => {
    waiting.get(id)?.(written)
    waiting.delete(id)
  })
  // A thread that dies takes nothing with it: who waits for it speaks for itself.
  worker.on('error', end)
  worker.on('exit', end)
  return {
    ask: (kind, { sheet, ...on }) => {
      if (!alive) return Promise.resolve(null)
      asked += 1
      const { sha256 } = sheet
      const question: Asked = { id: asked, kind, on, sha256, sheet: sent.has(sha256) ? null : sheet }
      sent.add(sha256)
      return new Promise((answer) => {
        waiting.set(question.id, answer)
        worker.postMessage(question)
      })
    },
    close: () => worker.terminate()
  }
}
