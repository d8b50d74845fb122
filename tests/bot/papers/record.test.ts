import { parse } from 'csv-parse/sync'
import { unzipSync } from 'fflate'
import { describe, expect, test } from 'vitest'
import { readSheets } from '../../../src/adapters/limits/files.js'
import type { DocumentData, DocumentPart } from '../../../src/bot/papers/document.js'
import type { Paper } from '../../../src/bot/papers/paper.js'
import { exported } from '../../../src/bot/papers/record/export.js'
import { photoFile } from '../../../src/bot/papers/record/record-papers.js'
import { draw } from '../../../src/wiring/papers.js'
import { hows } from '../../support/answers.js'
import { blockProblems } from '../../support/blocks.js'
import { iso } from '../../support/instant.js'
import { fullSpray, numbersOf, type Seamhand, seamhands } from '../../support/seamhand.js'

const open = seamhands()
const day = '2026-05-04'

/** A day with something of everything, one entry undone, one corrected weeks later, and words that would be formulas. */
async function aDay(): Promise<Seamhand> {
  const seamhand = await open({ weather: 'sample' })
  await seamhand.ask(fullSpray, { at: '08:00' })
  await seamhand.ask('weld robot 41 40 42 mm film set 480 speed 2.5', { at: '08:20' })
  await seamhand.ask('laid 42 m2 sheets 2 course 4 kit K1 robot 20 hand 4', { at: '09:00' })
  await seamhand.ask('probe course 4 end 3.2 m 40 mm cold', { at: '10:00' })
  await seamhand.ask('spray override =cmd|dried by hand <!channel>', { at: '10:01' })
  await seamhand.ask('air 21', { at: '10:05' })
  await seamhand.ask('undo', { at: '10:06' })
  await seamhand.ask('air 19 @09:30', { at: '10:20' })
  return seamhand
}

async function paperOf(seamhand: Seamhand, format: 'pdf' | 'csv' | 'zip', days = [day], now = '2026-05-04T16:00:00Z'): Promise<Paper> {
  const view = await seamhand.store.view({ workspace: 'local', site: 'demo' })
  if (view === null) throw new Error('no demo')
  const paper = await exported({ view, kept: seamhand.store, sheets: readSheets(null), now: iso(now), lang: null }, format, days)
  if (paper === null) throw new Error('nothing to export')
  return paper
}

function wordsOf({ parts }: DocumentData<Paper>): string {
  const words = (part: DocumentPart<Paper>): readonly string[] => {
    if (part.kind === 'facts') return part.rows.flat()
    if (part.kind === 'table') return [part.head, ...part.rows].flat()
    return part.kind === 'picture' ? [part.title ?? '', part.words ?? ''] : part.kind === 'photo' ? [part.caption] : [part.text]
  }
  return parts.flatMap(words).join('\n')
}

describe('the record of a day', () => {
  test('holds what was said, decided, welded, laid, probed, and the anchor of the whole log', async () => {
    const seamhand = await aDay()
    const { data } = (await paperOf(seamhand, 'pdf')) as Paper<'record'>
    const { seq, hash } = await seamhand.head()
    const words = wordsOf(data)
    for (const part of ['air: 20 °C', 'narrowest: 40 mm', 'area: 42 m²', 'course 4, end joint, at 3.2 m', 'override of', `demo:${seq}:${hash}`]) {
      expect(words).toContain(part)
    }
    // The font of the document has no signs of outcomes.
    expect(words).not.toMatch(/[✓△✕]/)
    expect(words).toContain('no-go: void 1')
    for (const { hash: own } of await seamhand.kept()) expect(words).toContain(own)
    expect(data.foot).toContain(hash)
    expect(data.labels.join()).toMatch(/invented/)
    // What was undone, and when an entry was logged if that was not when it happened.
    expect(words).toMatch(/undone by demo-\d+/)
    expect(words).toMatch(/logged 10:20/)
    // The picture is of the forecast that the first decision kept, not of the one in force.
    const picture = data.parts.find(({ kind }) => kind === 'picture') as Extract<DocumentPart<Paper>, { kind: 'picture' }>
    expect(picture.words).toContain('08:00')
    expect((picture.paper as Paper<'day'>).data.now).toBe(iso('2026-05-04T06:00:00Z'))
  })

  test('weeks later it comes out the same but for a correction since, which it names', async () => {
    const seamhand = await aDay()
    const before = ((await paperOf(seamhand, 'pdf')) as Paper<'record'>).data
    const laid = (await seamhand.entries()).find(({ type }) => type === 'laid')
    expect(
      (await seamhand.ask(`correct demo-${laid?.seq} 40 m2 sheets 2 course 4 kit K1 robot 20 hand 4`, { at: '2026-05-20T08:00:00Z' })).error
    ).toBeNull()
    const after = ((await paperOf(seamhand, 'pdf', [day], '2026-05-20T09:00:00Z')) as Paper<'record'>).data
    expect(wordsOf(after)).toMatch(/corrected by demo-\d+/)
    const pictures = [before, after].map(({ parts }) => parts.find(({ kind }) => kind === 'picture'))
    expect(pictures[0]).toBeDefined()
    expect(pictures[1]).toEqual(pictures[0])
  })

  test('as a table: one row an entry, read by a general reader, no cell a formula', async () => {
    const seamhand = await aDay()
    const { bytes } = await draw(await paperOf(seamhand, 'csv'))
    const rows = parse(new TextDecoder().decode(bytes), { columns: true, bom: true }) as Record<string, string>[]
    expect(rows.map(({ entry }) => entry).sort()).toEqual((await seamhand.entries()).map(({ seq }) => `demo-${seq}`).sort())
    for (const row of rows) for (const cell of Object.values(row)) expect(cell).not.toMatch(/^[=+\-@]/)
    expect(rows.find(({ kind }) => kind === 'override')?.what).toContain('=cmd|dried by hand')
  })

  test('the packet of a site holds every day', async () => {
    const seamhand = await aDay()
    await seamhand.ask('air 12', { at: '2026-05-05T08:00:00Z' })
    const { data } = (await paperOf(seamhand, 'zip', [day, '2026-05-05'])) as Paper<'packet'>
    expect(data.papers.map(({ name }) => name)).toEqual(['demo.pdf', 'demo.csv', 'demo-2026-05-04.csv', 'demo-2026-05-05.csv'])
    expect(data.raw).toEqual([])
  })

  test('photos are files of the packet, named by what they show; the bytes are those that are kept', async () => {
    const photo = { entry: 'demo-14', at: '2026-05-04T10:00:00Z', subject: 'void:3', mime: 'image/png', base64: 'AQID' }
    expect(photoFile({ ...photo, base64: null })).toEqual([])
    expect(photoFile({ ...photo, mime: 'image/jpeg' })).toEqual([{ name: 'photo-void-3-demo-14.jpg', base64: 'AQID' }])
    const raw = [...photoFile(photo), { name: 'demo.jsonl', text: '{"é":1}\n' }]
    const { bytes } = await draw({ kind: 'packet', name: 'demo.zip', alt: '', data: { madeAt: '2026-05-04T16:00:00Z', papers: [], raw } })
    const inside = unzipSync(bytes)
    expect(Object.keys(inside)).toEqual(['photo-void-3-demo-14.png', 'demo.jsonl'])
    expect([...(inside['photo-void-3-demo-14.png'] ?? [])]).toEqual([1, 2, 3])
    expect(Buffer.from(inside['demo.jsonl'] ?? []).toString()).toBe('{"é":1}\n')
  })
})

describe('/day record, /day csv, /day start', () => {
  test('answer with the file and the anchor, and log nothing', async () => {
    const seamhand = await aDay()
    const head = await seamhand.head()
    for (const [words, name] of [
      ['day record', 'demo-2026-05-04.pdf'],
      ['day csv 2026-05-04', 'demo-2026-05-04.csv'],
      ['day registro', 'demo-2026-05-04.pdf']
    ] as const) {
      const reply = await seamhand.ask(words, { at: '18:00' })
      expect(reply.files).toMatchObject([{ name, sha256: expect.stringMatching(/^[0-9a-f]{64}$/) }])
      expect(numbersOf(reply).anchor).toBe(`demo:${head.seq}:${head.hash}`)
      expect(reply.text).toContain(head.hash)
    }
    expect(await seamhand.head()).toEqual(head)
  })

  test('a day without entries is not found; today is, and says that nothing was logged', async () => {
    const seamhand = await open({ weather: 'none' })
    expect((await seamhand.ask('day record 2026-05-03')).error?.code).toBe('not-found')
    expect((await seamhand.ask('day record')).ok).toBe(true)
    expect((await seamhand.ask('day start 2026-05-03')).error?.code).toBe('inconsistent')
  })

  test('in every language and system, within the limits of a message', async () => {
    const seamhand = await aDay()
    for (const { lang, units } of hows) {
      for (const words of ['day record', 'day start']) {
        const reply = await seamhand.ask(words, { at: '11:00', lang, units })
        expect(reply.ok).toBe(true)
        expect(blockProblems(reply)).toEqual([])
      }
    }
  })

  test('day start tells what is to be stated and what must be in place, and stays unknown until it is', async () => {
    const seamhand = await open({ weather: 'none' })
    const reply = await seamhand.ask('day start', { at: '08:00' })
    expect(reply.outcome).toBe('unknown')
    expect(reply.text).toMatch(/permit/)
    await seamhand.ask(fullSpray, { at: '08:00' })
    expect((await seamhand.ask('day start', { at: '08:01' })).outcome).toBe('go')
  })
})
