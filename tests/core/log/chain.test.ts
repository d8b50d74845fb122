import { createHash } from 'node:crypto'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { Anchor, ChainHead, ChainRow, Linked } from '../../../src/core/log/chain.js'
import { anchorOf, endChain, followChain, link, parseAnchor, startChain, verifyEntries } from '../../../src/core/log/chain.js'
import type { Draft, Entry } from '../../../src/core/log/entry.js'
import { firstPrev } from '../../../src/core/log/entry.js'

const key = { workspace: 'local', site: 'demo' }
const empty: ChainHead = { seq: 0, hash: firstPrev }

function draftOf(n: number): Draft {
  return { at: '2026-05-04T06:10:00Z', author: 'U7', via: 'slack', type: 'note', subject: 'site', data: { n, text: `note ${n} é` } }
}

function append(rows: readonly Linked[], draft: Draft): Linked[] {
  const prev = rows.at(-1)?.hash ?? firstPrev
  return [...rows, link(draft, { ...key, seq: rows.length + 1, loggedAt: '2026-05-04T06:11:02Z', prev })]
}

function chainOf(count: number, from = 0): Linked[] {
  return Array.from({ length: count }).reduce<Linked[]>((rows, _, n) => append(rows, draftOf(from + n)), [])
}

function headOf(rows: readonly Linked[]): ChainHead {
  const last = rows.at(-1)
  return last ? { seq: rows.length, hash: last.hash } : empty
}

const chain = chainOf(12)

/** Text changed and hashed again, as one would who can write to the store; the entries after it are left. */
function rehashed(row: ChainRow, change: Partial<Entry>): ChainRow {
  const canonical = JSON.stringify({ ...(JSON.parse(row.canonical) as Entry), ...change })
  return { canonical, hash: createHash('sha256').update(canonical).digest('hex') }
}

function replaced(seq: number, row: ChainRow): ChainRow[] {
  return chain.map((old, index) => (index === seq - 1 ? row : old))
}

test('an entry is hashed as outside contract section 8 says: sorted members, its own and no others', () => {
  const draft = { ...draftOf(1), extra: 'not kept' }
  const { entry, canonical, hash } = link(draft, { ...key, seq: 1, loggedAt: '2026-05-04T06:11:02Z', prev: firstPrev })
  expect(canonical).toBe(
    `{"at":"2026-05-04T06:10:00Z","author":"U7","data":{"n":1,"text":"note 1 é"},"loggedAt":"2026-05-04T06:11:02Z","prev":"${firstPrev}",` +
      '"seq":1,"site":"demo","subject":"site","type":"note","v":1,"via":"slack","workspace":"local"}'
  )
  // Source: Node's own crypto (OpenSSL).
  expect(hash).toBe(createHash('sha256').update(canonical, 'utf8').digest('hex'))
  expect(entry).toEqual(JSON.parse(canonical))
})

describe('a chain that nobody touched', () => {
  test('is good, also empty, also in slices', () => {
    expect(verifyEntries(key, chain, headOf(chain), [])).toEqual({ entries: 12, head: headOf(chain), firstBad: null })
    expect(verifyEntries(key, [], empty, [])).toEqual({ entries: 0, head: empty, firstBad: null })
    const so = [chain.slice(0, 5), [], chain.slice(5, 6), chain.slice(6)].reduce(followChain, startChain(key, []))
    expect(endChain(so, headOf(chain))).toEqual(verifyEntries(key, chain, headOf(chain), []))
  })

  test('meets its own anchors, at the start, on the way and at the end', () => {
    const anchors = [empty, ...[3, 12].map((seq) => ({ seq, hash: chain[seq - 1]?.hash as string }))]
    const own: Anchor[] = anchors.map((head) => ({ site: 'demo', ...head }))
    const other: Anchor = { site: 'other', seq: 3, hash: firstPrev }
    expect(verifyEntries(key, chain, headOf(chain), [...own, ...own, other]).firstBad).toBeNull()
  })
})

describe('what is wrong, and where first', () => {
  const last = chain[11] as Linked
  test.each<[string, readonly ChainRow[], ChainHead, readonly Anchor[], object]>([
    [
      'text changed',
      replaced(5, { canonical: chain[4]?.canonical.replace('U7', 'U8') as string, hash: chain[4]?.hash as string }),
      headOf(chain),
      [],
      { seq: 5, why: 'hash' }
    ],
    ['hash changed', replaced(5, { canonical: chain[4]?.canonical as string, hash: firstPrev }), headOf(chain), [], { seq: 5, why: 'hash' }],
    ['text changed and hashed again', replaced(5, rehashed(chain[4] as Linked, { author: 'U8' })), headOf(chain), [], { seq: 6, why: 'prev' }],
    ['the last one changed and hashed again', replaced(12, rehashed(last, { author: 'U8' })), headOf(chain), [], { seq: 12, why: 'head' }],
    ['another seq in the text', replaced(5, rehashed(chain[4] as Linked, { seq: 6 })), headOf(chain), [], { seq: 5, why: 'seq' }],
    ['of another site', replaced(5, rehashed(chain[4] as Linked, { site: 'other' })), headOf(chain), [], { seq: 5, why: 'seq' }],
    ['of another workspace', replaced(5, rehashed(chain[4] as Linked, { workspace: 'other' })), headOf(chain), [], { seq: 5, why: 'seq' }],
    [
      'no JSON, hashed again',
      replaced(5, { canonical: '{', hash: createHash('sha256').update('{').digest('hex') }),
      headOf(chain),
      [],
      { seq: 5, why: 'seq' }
    ],
    ['one taken out', chain.filter((_, index) => index !== 4), headOf(chain), [], { seq: 5, why: 'seq' }],
    ['the first taken out', chain.slice(1), headOf(chain), [], { seq: 1, why: 'seq' }],
    ['two swapped', [...chain.slice(0, 3), chain[4] as Linked, chain[3] as Linked, ...chain.slice(5)], headOf(chain), [], { seq: 4, why: 'seq' }],
    ['one twice', [...chain.slice(0, 4), ...chain.slice(3)], headOf(chain), [], { seq: 5, why: 'seq' }],
    ['the tail cut', chain.slice(0, 9), headOf(chain), [], { seq: 10, why: 'head' }],
    ['all cut', [], headOf(chain), [], { seq: 1, why: 'head' }],
    ['more than the head', chain, headOf(chain.slice(0, 9)), [], { seq: 10, why: 'head' }],
    ['tail and head cut', chain.slice(0, 9), headOf(chain.slice(0, 9)), [{ site: 'demo', ...headOf(chain) }], { seq: 12, why: 'anchor' }],
    ['an anchor with another hash', chain, headOf(chain), [{ site: 'demo', seq: 7, hash: firstPrev }], { seq: 7, why: 'anchor' }],
    [
      'the first of two anchors that are missing',
      chain,
      headOf(chain),
      [40, 30].map((seq) => ({ site: 'demo', seq, hash: firstPrev })),
      { seq: 30, why: 'anchor' }
    ],
    ['an anchor of an empty chain with a hash', chain, headOf(chain), [{ site: 'demo', seq: 0, hash: last.hash }], { seq: 0, why: 'anchor' }]
  ])('%s', (_, rows, head, anchors, firstBad) => {
    const verdict = verifyEntries(key, rows, head, anchors)
    expect(verdict.firstBad).toEqual(firstBad)
    expect(verdict.entries).toBe(rows.length)
  })
})

/** One attempt on a chain by someone who can write to the store, hashes included, but not to what was printed. */
interface Attempt {
  readonly rows: readonly ChainRow[]
  readonly head: ChainHead
}

const seqOf = fc.nat({ max: 1_000_000 })
const rowsOf = fc.integer({ min: 3, max: 25 })

function swap(rows: readonly ChainRow[], a: number, b: number): ChainRow[] {
  return rows.map((row, index) => (index === a ? (rows[b] as ChainRow) : index === b ? (rows[a] as ChainRow) : row))
}

function attempt(kind: string, rows: readonly Linked[], n: number, m: number, rehash: boolean): Attempt {
  const head = headOf(rows)
  const at = n % rows.length
  const row = rows[at] as Linked
  switch (kind) {
    case 'change': {
      const place = m % row.canonical.length
      const letter = row.canonical[place] === 'x' ? 'y' : 'x'
      const canonical = row.canonical.slice(0, place) + letter + row.canonical.slice(place + 1)
      const hash = rehash ? createHash('sha256').update(canonical).digest('hex') : row.hash
      return { rows: rows.map((old, index) => (index === at ? { canonical, hash } : old)), head }
    }
    case 'insert': {
      const made = link(draftOf(1000 + m), { ...key, seq: at + 1, loggedAt: '2026-05-04T06:11:02Z', prev: rows[at - 1]?.hash ?? firstPrev })
      return { rows: [...rows.slice(0, at), made, ...rows.slice(at)], head: rehash ? { seq: head.seq + 1, hash: head.hash } : head }
    }
    case 'delete':
      return { rows: rows.filter((_, index) => index !== at), head: rehash ? { seq: head.seq - 1, hash: head.hash } : head }
    case 'reorder':
      return { rows: swap(rows, at, (at + 1 + (m % (rows.length - 1))) % rows.length), head }
    default:
      return { rows: rows.slice(0, at), head }
  }
}

test.each(['change', 'insert', 'delete', 'reorder', 'cut'])('200 generated attempts to %s are all found', (kind) => {
  fc.assert(
    fc.property(rowsOf, seqOf, seqOf, fc.boolean(), (count, n, m, rehash) => {
      const { rows, head } = attempt(kind, chainOf(count), n, m, rehash)
      expect(verifyEntries(key, rows, head, []).firstBad).not.toBeNull()
    }),
    { numRuns: 200, seed: 20260504 }
  )
})

test('200 chains made anew, or cut with their head, hang together and are found by a printed anchor only', () => {
  fc.assert(
    fc.property(rowsOf, seqOf, fc.boolean(), (count, n, cut) => {
      const rows = chainOf(count)
      const from = n % count
      const kept = rows.slice(0, from)
      const anew = cut ? kept : Array.from({ length: count - from }).reduce<Linked[]>((made, _, more) => append(made, draftOf(500 + more)), kept)
      const anchor = parseAnchor(anchorOf('demo', headOf(rows))) as Anchor
      expect(verifyEntries(key, anew, headOf(anew), []).firstBad).toBeNull()
      expect(verifyEntries(key, anew, headOf(anew), [anchor]).firstBad).toEqual({ seq: count, why: 'anchor' })
    }),
    { numRuns: 200, seed: 20260504 }
  )
})

describe('anchors', () => {
  test('are read as they are printed', () => {
    const head = headOf(chain)
    expect(parseAnchor(anchorOf('north-2', head))).toEqual({ site: 'north-2', ...head })
    expect(parseAnchor(` ${anchorOf('a:b', head).toUpperCase().replace('A:B', 'a:b')}\n`)).toEqual({ site: 'a:b', ...head })
    expect(parseAnchor(anchorOf('demo', empty))).toEqual({ site: 'demo', ...empty })
  })

  test.each(['', 'demo', 'demo:1', `demo:01:${firstPrev}`, `demo:-1:${firstPrev}`, `demo:1:${firstPrev}0`, `:1:${firstPrev}`, 'demo:1:xyz'])(
    '%s is none',
    (text) => {
      expect(parseAnchor(text)).toBeNull()
    }
  )
})
