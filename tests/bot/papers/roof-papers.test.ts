import { parse } from 'csv-parse/sync'
import { describe, expect, it } from 'vitest'
import { roofPapers } from '../../../src/bot/papers/roof-papers.js'
import { takeoffTable } from '../../../src/bot/papers/takeoff-paper.js'
import { texts } from '../../../src/bot/text/index.js'
import { takeoff } from '../../../src/core/sheets/takeoff.js'
import { draw } from '../../../src/wiring/papers.js'
import { hows } from '../../support/answers.js'
import { sheet } from '../../support/facts.js'
import { fiveRoofs } from '../../support/roof-pictures.js'

const { demo } = fiveRoofs()
if (demo === undefined) throw new Error('demo')
const { layout, zones, site, invented } = demo
const all = takeoff(layout, zones, sheet())
const roof = { site, invented, now: 1_777_888_000, layout, zones, takeoff: all, voids: [], laidM2: 400 }
const metric = { lang: 'en', units: 'metric', zone: 'utc' } as const

describe('the files of a roof', () => {
  it('are a picture, the same as SVG, a document and a table, each with its alt text', async () => {
    const papers = roofPapers(roof, metric)
    const files = await Promise.all(papers.map(draw))
    expect(files.map(({ kind, name, mime }) => [kind, name, mime])).toEqual([
      ['roof', 'demo-roof.png', 'image/png'],
      ['roof-svg', 'demo-roof.svg', 'image/svg+xml'],
      ['record', 'demo-roof.pdf', 'application/pdf'],
      ['table', 'demo-takeoff.csv', 'text/csv']
    ])
    for (const { alt, bytes } of files) {
      expect(alt.length).toBeGreaterThan(10)
      expect(bytes.length).toBeGreaterThan(200)
    }
    expect(new TextDecoder('latin1').decode(files[2]?.bytes.slice(0, 5))).toBe('%PDF-')
  })

  // Read back by a library of its own (csv-parse): RFC 4180.
  it('the table is read back as it was, numbers as numbers', async () => {
    const csv = roofPapers(roof, metric).find(({ kind }) => kind === 'table')
    const { bytes } = await draw(csv as NonNullable<typeof csv>)
    const rows = parse(Buffer.from(bytes), { bom: true, columns: true }) as readonly Record<string, string>[]
    const { items, heads } = texts.en.takeoff
    expect(rows.map((row) => row[heads.item])).toEqual(Object.values(all).map(({ item }) => items[item]))
    expect(rows.map((row) => Number(row[heads.amount]))).toEqual(Object.values(all).map(({ value }) => expect.closeTo(value, 6)))
    for (const row of rows) expect(row[heads.sum] ?? '').not.toMatch(/^[=+\-@\t\r]|undefined|null|NaN/)
  })
})

describe('the words of a takeoff', () => {
  it.each(hows)('$lang, $units: every line with its sum', (how) => {
    const { rows, head } = takeoffTable({ takeoff: all, roofM2: layout.areaMm2 / 1e6, laidM2: 0 }, { ...how, zone: 'utc' }, texts[how.lang])
    expect(new Set(head).size).toBe(7)
    for (const row of rows) expect(row.join(' ')).not.toMatch(/undefined|NaN|\[object/)
    const kits = rows.find(([name]) => name === texts[how.lang].takeoff.items.kits)
    for (const zone of ['F', 'G', 'H', 'I']) expect(kits?.at(-1)).toContain(texts[how.lang].takeoff.zone(zone))
  })

  it('a sum can be done again by hand', () => {
    const { rows } = takeoffTable({ takeoff: all, roofM2: 864, laidM2: 432 }, metric, texts.en)
    const sums = Object.fromEntries(rows.map(([name, , , , , , sum]) => [name, sum]))
    const plain = (text: unknown) => String(text).replace(/\u00a0/g, ' ')
    expect(plain(sums.nozzles)).toBe(`${all.kits.value} × 10; up to whole`)
    expect(plain(sums.kits)).toMatch(/^\(zone F: 41 m² × 100 % ÷ 90 m² \+ zone G: 140.8 m² × 100 % ÷ 90 m² \+ .*\) \+ 5 % waste; up to whole$/)
    expect(plain(sums['bare-back rolls'])).toMatch(/^[\d.]+ m ÷ 20 m; as cut from rolls: \d+, no plan needs fewer than \d+$/)
    expect(plain(sums['fasteners at bases'])).toBe(
      'edge of the roof 24 m: 80 × 2 + edge of the roof 36 m: 120 × 2; every 300 mm at most, first 150 mm from the corner'
    )
    expect(sums.rolls).toBe('')
    const left = Object.fromEntries(rows.map(([name, , , , , each]) => [name, each]))
    expect(left.rolls).toBe(Math.ceil(all.rolls.value / 2))
    expect(left['staging load']).toBeNull()
  })
})
