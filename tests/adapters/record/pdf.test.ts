import { unzipSync } from 'fflate'
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs'
import { describe, expect, test, vi } from 'vitest'
import type { DocumentData } from '../../../src/bot/papers/document.js'
import type { Paper } from '../../../src/bot/papers/paper.js'
import { roofPapers } from '../../../src/bot/papers/roof-papers.js'
import { takeoff } from '../../../src/core/sheets/takeoff.js'
import { draw } from '../../../src/wiring/papers.js'
import { sampleDay } from '../../support/day-pictures.js'
import { sheet } from '../../support/facts.js'
import { fiveRoofs } from '../../support/roof-pictures.js'

const { demo } = fiveRoofs()
if (demo === undefined) throw new Error('demo')
const { layout, zones } = demo
const roof = {
  ...{ site: demo.site, invented: true, now: 1_777_888_000 },
  layout,
  zones,
  takeoff: takeoff(layout, zones, sheet()),
  voids: [],
  laidM2: 0
}

function unescaped(words: string): string {
  const signs: Readonly<Record<string, string>> = { '&lt;': '<', '&gt;': '>', '&quot;': '"', '&#39;': "'", '&amp;': '&' }
  return words.replace(/&(lt|gt|quot|#39|amp);/g, (sign) => signs[sign] ?? sign)
}

/** What an independent reader (pdf.js) finds: the words of each page, and what the document says of itself. */
async function read(bytes: Uint8Array) {
  const document = await getDocument({ data: bytes.slice(), verbosity: 0 }).promise
  const pages: string[] = []
  let pictures = 0
  for (let number = 1; number <= document.numPages; number += 1) {
    const page = await document.getPage(number)
    const { items } = await page.getTextContent()
    pages.push(items.map((item) => ('str' in item ? item.str : '')).join(' '))
    const { fnArray } = await page.getOperatorList()
    // 85: paintImageXObject (pdf.js, OPS).
    pictures += fnArray.filter((operation) => operation === 85).length
  }
  const { info } = await document.getMetadata()
  await document.destroy()
  return { pages, pictures, info: info as Readonly<Record<string, unknown>> }
}

function documentOf(part: Partial<DocumentData<Paper>> = {}): Paper<'record'> {
  const data: DocumentData<Paper> = {
    lang: 'es',
    title: 'Registro del día, obra 7',
    subtitle: '4 may 2026',
    labels: ['obra inventada'],
    parts: [],
    foot: 'obra 7 · ancla',
    pageWords: ['página', 'de'],
    madeAt: '2026-05-04T16:00:00Z',
    ...part
  }
  return { kind: 'record', name: 'x.pdf', alt: 'x', data }
}

const table = {
  kind: 'table',
  head: ['hora', 'qué'],
  shares: [1, 4],
  rows: Array.from({ length: 120 }, (_, index) => [`${index}:00`, `soplado número ${index} ñ é ≥ 5 °C`])
} as const

describe('a document as PDF', () => {
  test('holds its words, accents too, and repeats the head of a table and the foot on every page', async () => {
    const { bytes, mime } = await draw(documentOf({ parts: [{ kind: 'heading', text: 'Lecturas' }, table] }))
    expect(mime).toBe('application/pdf')
    const { pages, info } = await read(bytes)
    expect(pages.length).toBeGreaterThan(2)
    expect(pages[0]).toContain('Registro del día, obra 7')
    expect(pages[0]).toContain('obra inventada')
    pages.forEach((page, index) => {
      expect(page).toContain('qué')
      expect(page).toContain('obra 7 · ancla')
      expect(page).toContain(`página ${index + 1} de ${pages.length}`)
    })
    expect(pages.join(' ')).toContain('soplado número 119 ñ é ≥ 5 °C')
    expect(info.Title).toBe('Registro del día, obra 7')
    expect(info.Language).toBe('es')
  })

  test('the same data gives the same bytes', async () => {
    const [first, second] = [await draw(documentOf({ parts: [table] })), await draw(documentOf({ parts: [table] }))]
    expect(second.sha256).toBe(first.sha256)
    expect((await draw(documentOf({ subtitle: 'otro' }))).sha256).not.toBe(first.sha256)
  })

  test('shows pictures with what they say, and photos', async () => {
    const day: Paper<'day'> = { kind: 'day', name: 'd.png', alt: 'Todo el día en palabras', data: sampleDay('2026-05-06') }
    const { bytes: png } = await draw(day)
    const photo = { kind: 'photo', mime: 'image/png', base64: Buffer.from(png).toString('base64'), caption: 'Foto obra-9' } as const
    const { bytes } = await draw(documentOf({ parts: [{ kind: 'picture', title: 'Tiempo', words: 'Como se sabía', paper: day }, photo] }))
    const { pages, pictures } = await read(bytes)
    expect(pictures).toBe(2)
    for (const words of ['Tiempo', 'Como se sabía', 'Todo el día en palabras', 'Foto obra-9']) expect(pages.join(' ')).toContain(words)
  })

  test('words of a drawing in it are words, in the two fonts of the document', async () => {
    const drawing = roofPapers(roof, { lang: 'es', units: 'metric', zone: 'utc' }).find(({ kind }) => kind === 'roof-svg')
    const svg = new TextDecoder().decode((await draw(drawing as Paper)).bytes)
    const words = [...svg.matchAll(/<text[^>]*>([^<]+)<\/text>/g)].map(([, inside]) => inside as string)
    const printed = vi.spyOn(console, 'warn')
    const { bytes } = await draw(documentOf({ parts: [{ kind: 'picture', title: null, words: null, paper: drawing as Paper }] }))
    const { pages } = await read(bytes)
    expect(words.length).toBeGreaterThan(20)
    const found = pages.join('').replace(/\s/g, '')
    for (const each of words) expect(found).toContain(unescaped(each).replace(/\s/g, ''))
    const fonts = new Set(new TextDecoder('latin1').decode(bytes).match(/BaseFont \/\S+/g))
    expect([...fonts].map((font) => font.replace(/^.*\+/, '')).sort()).toEqual(['Inter-Bold', 'Inter-Regular'])
    expect(printed).not.toHaveBeenCalled()
  })

  test('every letter stands in its own width: nothing is drawn together or for another', async () => {
    const words = ['A', 'V', 'T', 'o', 'AVAVTo']
    const { bytes } = await draw(documentOf({ parts: words.map((text) => ({ kind: 'words', text })) }))
    const document = await getDocument({ data: bytes.slice(), verbosity: 0 }).promise
    const { items } = await (await document.getPage(1)).getTextContent()
    await document.destroy()
    const widths = new Map(items.flatMap((item) => ('str' in item ? [[item.str, item.width] as const] : [])))
    const [a, v, t, o, all] = words.map((each) => widths.get(each) ?? Number.NaN) as [number, number, number, number, number]
    expect(all).toBeCloseTo(2 * a + 2 * v + t + o, 2)
  })

  test('a hash longer than its column does not burst the page', async () => {
    const hash = 'f'.repeat(64)
    const { bytes } = await draw(documentOf({ parts: [{ kind: 'table', head: ['h', 'x'], rows: [[hash, 'fin']], shares: [1, 3] }] }))
    const { pages } = await read(bytes)
    expect(pages[0]?.replace(/[\s\u200B]/g, '')).toContain(hash)
    expect(pages[0]).toContain('fin')
  })
})

describe('a packet', () => {
  test('holds its files under their names, the same bytes each time', async () => {
    const csv: Paper<'table'> = { kind: 'table', name: 'obra.csv', alt: '', data: { head: ['a'], rows: [['=x']] } }
    const packet: Paper<'packet'> = {
      kind: 'packet',
      name: 'obra.zip',
      alt: '',
      data: { madeAt: '2026-05-04T16:00:00Z', papers: [documentOf(), csv] }
    }
    const { bytes, mime, sha256 } = await draw(packet)
    const files = unzipSync(bytes)
    expect(mime).toBe('application/zip')
    expect(Object.keys(files)).toEqual(['x.pdf', 'obra.csv'])
    expect(new TextDecoder().decode(files['obra.csv'])).toContain("'=x")
    expect((await draw(packet)).sha256).toBe(sha256)
  })
})
