import type { Worker } from 'node:worker_threads'
import type { Draw, DrawnFile, Paper, PaperKind } from '../bot/papers/paper.js'
import { openThread, openWorker, type Thread } from './paper-worker.js'

/** Documents take seconds, so that pictures do not stand behind them; tables and drawings as text are made where they are asked for. */
const lanes: Readonly<Record<PaperKind, 'documents' | 'pictures' | null>> = {
  record: 'documents',
  packet: 'documents',
  day: 'pictures',
  roof: 'pictures',
  strip: 'pictures',
  widths: 'pictures',
  'roof-svg': null,
  table: null
}

interface Bounds {
  /** What is not drawn by then never will be, ms. */
  readonly lateMs: number
  /** A thread with nothing to do gives its memory back, ms. */
  readonly idleMs: number
}

export interface DrawnElsewhere {
  readonly draw: Draw
  /** Ends the threads; what is still drawn in them fails. */
  close(): Promise<void>
}

/**
 * Draws in threads, so that whoever answers goes on answering. A thread begins with its first paper and takes one after the other; one
 * that ends takes only the paper in its hands with it (`DrawingError`), the next paper has a new thread. Where none can begin, which
 * `noThread` is told once, it is drawn by `here`.
 */
export function drawElsewhere(
  here: Draw,
  noThread: (why: string) => void,
  { lateMs, idleMs }: Bounds = { lateMs: 120_000, idleMs: 60_000 },
  open: () => Worker = openWorker
): DrawnElsewhere {
  const lane = () => openLane(here, noThread, { lateMs, idleMs }, open)
  const all = { documents: lane(), pictures: lane() }
  return {
    draw: (paper) => {
      const name = lanes[paper.kind]
      return name === null ? here(paper) : all[name].draw(paper)
    },
    close: async () => {
      await Promise.all([all.documents.close(), all.pictures.close()])
    }
  }
}

function openLane(here: Draw, noThread: (why: string) => void, { lateMs, idleMs }: Bounds, open: () => Worker): DrawnElsewhere {
  let last: Promise<unknown> = Promise.resolve()
  let thread: Thread | null = null
  let idle: NodeJS.Timeout | undefined
  let never = false
  const close = async (): Promise<void> => {
    const closing = thread
    thread = null
    await closing?.close('it was told to stop')
  }
  const drawn = async (paper: Paper): Promise<DrawnFile> => {
    clearTimeout(idle)
    if (never) return here(paper)
    if (thread === null || thread.ended() !== null) thread = openThread(open())
    const mine = thread
    if (!(await mine.ready)) {
      never = true
      noThread(mine.ended() ?? '')
      return here(paper)
    }
    try {
      return await mine.draw(paper, lateMs)
    } finally {
      idle = setTimeout(close, idleMs).unref()
    }
  }
  return {
    close,
    draw: (paper) => {
      const turn = last.then(() => drawn(paper))
      last = turn.catch(() => undefined)
      return turn
    }
  }
}
