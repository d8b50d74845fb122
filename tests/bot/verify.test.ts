import { createHash } from 'node:crypto'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { type DatabaseSync, sqliteApi } from '../../src/adapters/store/sqlite-api.js'
import { type SiteVerdict, verifySite } from '../../src/bot/verify.js'
import { type Anchor, anchorOf } from '../../src/core/log/chain.js'
import { fullSpray, type Seamhand, seamhands } from '../support/seamhand.js'

const open = seamhands()

/** A site with a morning's work: 13 entries, one undone. */
async function worked(): Promise<Seamhand> {
  const seamhand = await open()
  await seamhand.askAll([
    fullSpray,
    'weld robot 41 film',
    'weld robot 40 film',
    'laid 40 m2 robot 20 m kit K1',
    'probe course 4 40 mm',
    'probe 1 fixed',
    'air 21',
    'undo',
    'kit K7 iso 24 resin 25 mixed'
  ])
  return seamhand
}

async function verdict(seamhand: Seamhand, anchors: readonly Anchor[] = []): Promise<SiteVerdict> {
  const found = await verifySite(seamhand.store, { workspace: 'local', site: 'demo' }, anchors)
  if (found === null) throw new Error('no such site')
  return found
}

/** Changes the database behind the store's back, and verifies it anew. */
async function tampered(change: (database: DatabaseSync) => void, anchors: readonly Anchor[] = []): Promise<SiteVerdict> {
  const seamhand = await worked()
  await seamhand.close()
  const database = (await sqliteApi())(join(seamhand.folder, 'seamhand.db'))
  change(database)
  database.close()
  return verdict(await open({ folder: seamhand.folder }), anchors)
}

function sha256(text: string): string {
  return createHash('sha256').update(text, 'utf8').digest('hex')
}

interface Row {
  readonly seq: number
  readonly canonical: string
  readonly hash: string
}

function rowsOf(database: DatabaseSync): readonly Row[] {
  return database.prepare('select seq, canonical, hash from entries order by seq').all() as unknown as readonly Row[]
}

/** Makes the chain anew from a seq on, as someone would who knows how: every hash and prev, and the head. */
function chainAnew(database: DatabaseSync, from: number, changed: (canonical: string) => string): void {
  let prev = rowsOf(database).find(({ seq }) => seq === from - 1)?.hash ?? '0'.repeat(64)
  for (const { seq, canonical } of rowsOf(database).filter((row) => row.seq >= from)) {
    const text = (seq === from ? changed(canonical) : canonical).replace(/"prev":"[0-9a-f]{64}"/, `"prev":"${prev}"`)
    prev = sha256(text)
    database.prepare('update entries set canonical = ?, hash = ? where seq = ?').run(text, prev, seq)
  }
  database.prepare('update sites set hash = ?').run(prev)
}

describe('verify', () => {
  it('finds a log intact, undo, corrections and late entries and all', async () => {
    const seamhand = await worked()
    await seamhand.ask('air 15 @09:30')
    const head = await seamhand.head()

    expect(await verdict(seamhand)).toEqual({ site: 'demo', entries: head.seq, head, firstBad: null })
    expect(await verdict(seamhand, [{ site: 'demo', ...head }])).toMatchObject({ firstBad: null })
    expect(anchorOf('demo', head)).toBe(`demo:${head.seq}:${head.hash}`)
  })

  it('finds a site without entries intact', async () => {
    expect(await verdict(await open())).toEqual({ site: 'demo', entries: 0, head: { seq: 0, hash: '0'.repeat(64) }, firstBad: null })
  })

  it('an anchor of before more was logged still holds', async () => {
    const seamhand = await worked()
    const anchor = { site: 'demo', ...(await seamhand.head()) }
    await seamhand.ask('air 12')

    expect((await verdict(seamhand, [anchor])).firstBad).toBeNull()
  })

  it.each<readonly [how: string, change: (database: DatabaseSync) => void, firstBad: { seq: number; why: string }]>([
    [
      'a changed entry',
      (db) => db.exec('update entries set canonical = replace(canonical, \'"airC":20\', \'"airC":19\') where seq = 1'),
      { seq: 1, why: 'hash' }
    ],
    ['a changed hash', (db) => db.exec("update entries set hash = replace(hash, substr(hash, 1, 1), 'f') where seq = 3"), { seq: 3, why: 'hash' }],
    [
      'a changed entry with its hash made anew',
      (db) => {
        const row = rowsOf(db)[4] as Row
        const text = row.canonical.replace('41', '38')
        db.prepare('update entries set canonical = ?, hash = ? where seq = 5').run(text, sha256(text))
      },
      { seq: 6, why: 'prev' }
    ],
    ['an entry deleted', (db) => db.exec('delete from entries where seq = 4'), { seq: 4, why: 'seq' }],
    ['the first entry deleted', (db) => db.exec('delete from entries where seq = 1'), { seq: 1, why: 'seq' }],
    [
      'an entry inserted',
      (db) => {
        const [row] = rowsOf(db).slice(-1) as [Row]
        const text = row.canonical.replace(/"prev":"[0-9a-f]{64}"/, `"prev":"${row.hash}"`).replace(`"seq":${row.seq}`, `"seq":${row.seq + 1}`)
        db.prepare(
          `insert into entries select workspace, site, seq + 1, ?, ?, at, logged_at, author, type, subject, batch, day from entries where seq = ?`
        ).run(sha256(text), text, row.seq)
      },
      { seq: 14, why: 'head' }
    ],
    [
      'two entries exchanged',
      (db) => {
        const rows = rowsOf(db)
        const [a, b] = [rows[1], rows[2]] as [Row, Row]
        const set = db.prepare('update entries set canonical = ?, hash = ? where seq = ?')
        set.run(b.canonical, b.hash, a.seq)
        set.run(a.canonical, a.hash, b.seq)
      },
      { seq: 2, why: 'seq' }
    ],
    ['the last entry cut', (db) => db.exec('delete from entries where seq = (select max(seq) from entries)'), { seq: 13, why: 'head' }],
    ['all entries cut', (db) => db.exec('delete from entries'), { seq: 1, why: 'head' }],
    [
      'an entry that is no JSON, with its hash',
      (db) => db.prepare('update entries set canonical = ?, hash = ? where seq = 2').run('{', sha256('{')),
      { seq: 2, why: 'seq' }
    ],
    [
      'a state of a kit changed',
      (db) => db.exec("update states set state = replace(state, '\"value\":24', '\"value\":29') where subject = 'kit:K7'"),
      { seq: 13, why: 'state' }
    ],
    ['a state deleted', (db) => db.exec("delete from states where subject = 'void:1'"), { seq: 9, why: 'state' }],
    [
      'a state of nothing',
      (db) => db.exec("insert into states select workspace, site, 'kit:K9', state, seq from states where subject = 'kit:K7'"),
      { seq: 13, why: 'state' }
    ],
    [
      'an undo made undone in the state',
      (db) => db.exec("update states set state = replace(state, '\"value\":20', '\"value\":21') where subject like 'day:%'"),
      { seq: 12, why: 'state' }
    ],
    [
      'an unfixed void settled in the state',
      (db) => db.exec("update states set state = replace(state, 'repaired', 'passed') where subject = 'void:1'"),
      { seq: 9, why: 'state' }
    ]
  ])('finds %s', async (_how, change, firstBad) => {
    expect((await tampered(change)).firstBad).toEqual(firstBad)
  })

  it('cannot see a chain made anew by itself, and sees it by an anchor of before', async () => {
    const seamhand = await worked()
    const anchor = { site: 'demo', ...(await seamhand.head()) }
    const early = { site: 'demo', seq: 2, hash: (await seamhand.kept())[1]?.hash ?? '' }
    await seamhand.close()
    const database = (await sqliteApi())(join(seamhand.folder, 'seamhand.db'))
    // A value that no state holds: what a state shows is found by its fold.
    chainAnew(database, 3, (text) => text.replace('"author":"ask"', '"author":"eve"'))
    database.close()
    const again = await open({ folder: seamhand.folder })

    expect((await verdict(again)).firstBad).toBeNull()
    expect((await verdict(again, [early])).firstBad).toBeNull()
    expect((await verdict(again, [anchor])).firstBad).toEqual({ seq: anchor.seq, why: 'anchor' })
    expect((await verdict(again, [early, anchor])).firstBad).toEqual({ seq: anchor.seq, why: 'anchor' })
  })

  it('sees by an anchor that the tail was cut, head and all', async () => {
    const seamhand = await worked()
    const anchor = { site: 'demo', ...(await seamhand.head()) }
    const cut = await tampered(
      (db) => {
        const rows = rowsOf(db)
        db.exec(`delete from entries where seq > 4; delete from touches where seq > 4; delete from states where seq > 4`)
        db.prepare('update sites set seq = 4, hash = ?').run(rows[3]?.hash ?? '')
      },
      [anchor]
    )

    expect(cut.firstBad).toMatchObject({ why: 'anchor' })
  })
})

describe('an export of the log', () => {
  /** Twenty lines that anyone can write: SHA-256 of each canonical text, each prev, each seq. RFC 8785 text is taken as it stands. */
  function verifyLines(lines: readonly string[]): number | null {
    let prev = '0'.repeat(64)
    for (const [index, line] of lines.entries()) {
      const match = /^\{"entry":(.*),"hash":"([0-9a-f]{64})"\}$/.exec(line)
      if (match === null) return index + 1
      const [, text, hash] = match as unknown as readonly [string, string, string]
      const entry = JSON.parse(text) as { seq: number; prev: string }
      if (sha256(text) !== hash || entry.prev !== prev || entry.seq !== index + 1) return index + 1
      prev = hash
    }
    return null
  }

  it('is verified by an independent verifier, and a changed one is not', async () => {
    const kept = await (await worked()).kept()
    const lines = kept.map(({ canonical, hash }) => `{"entry":${canonical},"hash":"${hash}"}`)

    expect(verifyLines(lines)).toBeNull()
    expect(verifyLines(lines.with(4, (lines[4] as string).replace('41', '42')))).toBe(5)
    expect(verifyLines(lines.toSpliced(4, 1))).toBe(5)
  })

  it('holds canonical texts: members sorted by UTF-16 code units, nothing between them, RFC 8785 §3.2', async () => {
    const sorted = (value: unknown): unknown => {
      if (Array.isArray(value)) return value.map(sorted)
      if (typeof value !== 'object' || value === null) return value
      return Object.fromEntries(
        Object.keys(value)
          .sort()
          .map((key) => [key, sorted((value as Record<string, unknown>)[key])])
      )
    }
    for (const { canonical } of await (await worked()).kept()) expect(JSON.stringify(sorted(JSON.parse(canonical)))).toBe(canonical)
  })
})
