import { Worker } from 'node:worker_threads'
import { afterAll, describe, expect, test } from 'vitest'
import type { DrawnFile, Paper } from '../../src/bot/papers/paper.js'
import { draw } from '../../src/wiring/papers.js'
import { sampleDay } from '../support/day-pictures.js'

// A thread needs a file that Node runs as it is: the built one.
const built = new URL('../../dist/wiring/paper-threads.js', import.meta.url).href
const { drawElsewhere } = (await import(built)) as typeof import('../../src/wiring/paper-threads.js')
type Elsewhere = ReturnType<typeof drawElsewhere>

const bounds = { lateMs: 60_000, idleMs: 60_000 }
const opened: Elsewhere[] = []
afterAll(() => Promise.all(opened.map((each) => each.close())))

const day: Paper<'day'> = { kind: 'day', name: 'd.png', alt: 'A day', data: sampleDay('2026-05-06') }
const record: Paper<'record'> = {
  kind: 'record',
  name: 'r.pdf',
  alt: 'A record',
  data: {
    ...{ lang: 'fr', title: 'Journée', subtitle: '6 mai', labels: [], foot: 'ancre', pageWords: ['page', 'sur'], madeAt: '2026-05-06T16:00:00Z' },
    parts: [
      { kind: 'words', text: 'Réalisé' },
      { kind: 'picture', title: 'Météo', words: null, paper: day }
    ]
  }
}
const broken = { ...day, data: null } as unknown as Paper

function never(): Promise<DrawnFile> {
  return Promise.reject(new Error('drawn here'))
}

function elsewhere(
  open?: () => Worker,
  { here = never, ...bound }: Partial<typeof bounds> & { here?: (paper: Paper) => Promise<DrawnFile> } = {}
): { readonly it: Elsewhere; readonly told: string[] } {
  const told: string[] = []
  const it = drawElsewhere(here, (why) => told.push(why), { ...bounds, ...bound }, open)
  opened.push(it)
  return { it, told }
}

/** A thread of a few lines, after it has said that it is ready. */
function lines(code: string): () => Worker {
  const head = "const { parentPort } = require('node:worker_threads'); parentPort.postMessage({ kind: 'ready' });"
  return () => new Worker(`${head}${code}`, { eval: true })
}

const answersButDies = `parentPort.on('message', (paper) => {
  if (paper.name === 'bad') process.exit(3)
  if (paper.name === 'thrown') setTimeout(() => { throw new Error('out of memory') })
  if (paper.name === 'good') parentPort.postMessage({ kind: 'file', file: { ...paper, mime: 'x', sha256: 'x', bytes: new Uint8Array(1) } })
})`

describe('drawing in threads', () => {
  test('gives the same files as here, a document and its pictures too, while this thread goes on', async () => {
    const { it } = elsewhere()
    let turns = 0
    const ticking = setInterval(() => {
      turns += 1
    }, 1)
    const files = await Promise.all([it.draw(record), it.draw(day), it.draw(day)])
    clearInterval(ticking)
    const here = await Promise.all([draw(record), draw(day)])
    expect(files.map(({ sha256 }) => sha256)).toEqual([here[0].sha256, here[1].sha256, here[1].sha256])
    expect(Buffer.from(files[0].bytes).equals(Buffer.from(here[0].bytes))).toBe(true)
    expect([files[0].name, files[0].alt, files[0].mime]).toEqual(['r.pdf', 'A record', 'application/pdf'])
    // Drawn here, the timer would have had no turn between the pieces of work.
    expect(turns).toBeGreaterThan(5)
  })

  test('what the drawing throws is thrown, from where it broke, and the thread goes on', async () => {
    const { it } = elsewhere()
    const error = (await it.draw(broken).catch((thrown) => thrown)) as Error
    expect(error).toBeInstanceOf(Error)
    expect(error.name).not.toBe('DrawingError')
    expect(error.stack).toMatch(/pictures/)
    expect((await it.draw(day)).mime).toBe('image/png')
  })

  test('a table is made where it is asked for', async () => {
    const { it } = elsewhere(lines('process.exit(1)'), { here: draw })
    const csv: Paper<'table'> = { kind: 'table', name: 't.csv', alt: '', data: { head: ['a'], rows: [['b']] } }
    expect((await it.draw(csv)).mime).toBe('text/csv')
  })
})

describe('a thread that ends', () => {
  test.each(['bad', 'thrown'])('%s: the paper in its hands fails with a type, those behind it are drawn in a new one', async (name) => {
    const { it, told } = elsewhere(lines(answersButDies))
    const drawn = await Promise.allSettled(['good', name, 'good', name, 'good'].map((each) => it.draw({ ...day, name: each })))
    expect(drawn.map(({ status }) => status)).toEqual(['fulfilled', 'rejected', 'fulfilled', 'rejected', 'fulfilled'])
    for (const each of drawn) if (each.status === 'rejected') expect(each.reason).toMatchObject({ name: 'DrawingError' })
    expect(told).toEqual([])
  })

  test('one that never answers is ended, and says so', async () => {
    const { it } = elsewhere(lines(answersButDies), { lateMs: 200 })
    await expect(it.draw({ ...day, name: 'silent' })).rejects.toThrow('longer than 200 ms')
    expect((await it.draw({ ...day, name: 'good' })).mime).toBe('x')
  })

  test('with nothing to do it ends, and the next paper has a new one', async () => {
    let begun = 0
    const { it } = elsewhere(
      () => {
        begun += 1
        return lines(answersButDies)()
      },
      { idleMs: 1 }
    )
    await it.draw({ ...day, name: 'good' })
    await new Promise((go) => setTimeout(go, 50))
    expect((await it.draw({ ...day, name: 'good' })).mime).toBe('x')
    expect(begun).toBe(2)
  })

  test('where none can begin, all is drawn here, which is said once', async () => {
    const { it, told } = elsewhere(() => new Worker('throw new Error("no threads here")', { eval: true }), { here: draw })
    expect((await it.draw(day)).mime).toBe('image/png')
    expect((await it.draw(day)).mime).toBe('image/png')
    expect(told).toEqual(['no threads here'])
  })
})
