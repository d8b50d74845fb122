import { mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { gunzipSync } from 'node:zlib'
import { describe, expect, test } from 'vitest'
import { verifySite } from '../src/bot/verify.js'
import { parseAnchor } from '../src/core/log/chain.js'
import { freshFolder, type Seamhand, seamhands } from './support/seamhand.js'

const open = seamhands()
const key = { workspace: 'local', site: 'demo' }

/** The anchor that version 0.1.0 printed for its own store. */
const anchor = 'demo:29:d11f56aa7640d20d5b69db8062f430cbd761036fda3a9e6cea4d8d840233aac4'

/** A store as it was left by an earlier version, opened by this one. */
async function recorded(version: string): Promise<Seamhand> {
  const folder = join(freshFolder(), 'recorded')
  mkdirSync(folder)
  const packed = readFileSync(join(import.meta.dirname, `fixtures/recorded/${version}.db.gz`))
  writeFileSync(join(folder, 'seamhand.db'), gunzipSync(packed))
  return open({ folder, weather: 'sample' })
}

describe('a store of version 0.1.0', () => {
  test('is whole up to the anchor that it printed, and its states are as this version folds them', async () => {
    const { store } = await recorded('0.1.0')
    const verdict = await verifySite(
      store,
      key,
      [parseAnchor(anchor)].filter((each) => each !== null)
    )
    expect(verdict).toMatchObject({ entries: 29, firstBad: null })
  })

  test('every decision replays to the same answer, or says which version differs', async () => {
    const seamhand = await recorded('0.1.0')
    const decisions = (await seamhand.entries()).filter(({ type }) => type === 'decision')
    expect(decisions).toHaveLength(8)
    expect(new Set(decisions.map(({ data }) => (data.limits as { id: string }).id))).toEqual(new Set(['common-practice', 'crew-sheet']))
    for (const { seq, data } of decisions) {
      const replayed = await seamhand.replay(`demo-${seq}`)
      expect(replayed).toMatchObject({ outcome: data.outcome, recordedEngine: '0.1.0' })
      if (replayed?.same === false) expect([replayed.engine, replayed.differs.length]).not.toEqual(['0.1.0', 0])
      if (replayed?.engine === '0.1.0') expect(replayed.differs).toEqual([])
    }
  })

  test('goes on where it stood: the open void, the welder whose coupon failed, metres welded', async () => {
    const seamhand = await recorded('0.1.0')
    const at = '2026-05-05T09:00:00Z'
    expect((await seamhand.ask('probe 1 passed', { at })).ok).toBe(true)
    expect((await seamhand.ask('weld robot 42 mm film', { at })).outcome).toBe('go')
    const record = await seamhand.ask('day record 2026-05-04', { at })
    expect(record.files).toHaveLength(1)
    expect(seamhand.bugs).toEqual([])
  })
})
