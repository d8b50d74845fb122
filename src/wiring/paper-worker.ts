import { Worker } from 'node:worker_threads'
import { DrawingError } from '../bot/papers/drawing-error.js'
import type { DrawnFile, Paper } from '../bot/papers/paper.js'

/** What a thread says: first that it has loaded, then one of the others for each paper. */
export type Drew =
  | { readonly kind: 'ready' }
  | { readonly kind: 'file'; readonly file: DrawnFile }
  | { readonly kind: 'failed'; readonly stack: string }

export interface Thread {
  /** False: it ended before it had loaded. */
  readonly ready: Promise<boolean>
  /** One paper at a time. Throws what the drawing threw, or `DrawingError` where the thread ends first or is late. */
  draw(paper: Paper, lateMs: number): Promise<DrawnFile>
  /** Why it ended; null: it has not. */
  ended(): string | null
  close(why: string): Promise<unknown>
}

export function openWorker(): Worker {
  return new Worker(new URL('./paper-thread.js', import.meta.url), { env: {} })
}

/** It keeps the process only while it draws. */
export function openThread(worker: Worker): Thread {
  let ended: string | null = null
  let answer: (drew: Drew | null) => void = () => undefined
  const ask = () => new Promise<Drew | null>((told) => (answer = told))
  const end = (why: string): void => {
    ended ??= why
    answer(null)
  }
  const close = (why: string): Promise<unknown> => {
    end(why)
    return worker.terminate()
  }
  worker.on('message', (drew: Drew) => answer(drew))
  worker.on('error', ({ message }) => end(message))
  worker.on('exit', (code) => end(`it left with ${code}`))
  return {
    ready: ask().then((drew) => drew !== null),
    ended: () => ended,
    close,
    draw: async (paper, lateMs) => {
      if (ended !== null) return fileOf(null, ended)
      const late = setTimeout(() => close(`it took longer than ${lateMs} ms`), lateMs)
      worker.ref()
      try {
        const drew = ask()
        worker.postMessage(paper)
        return fileOf(await drew, ended)
      } finally {
        clearTimeout(late)
        worker.unref()
      }
    }
  }
}

function fileOf(drew: Drew | null, ended: string | null): DrawnFile {
  if (drew?.kind === 'file') return drew.file
  if (drew?.kind !== 'failed') throw new DrawingError(`the thread that draws ended: ${ended}`)
  const error = new Error(drew.stack.split('\n')[0] ?? '')
  // Where it broke, there.
  error.stack = drew.stack
  throw error
}
