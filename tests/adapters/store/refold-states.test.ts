import { expect, test } from 'vitest'
import { refoldStates } from '../../../src/adapters/store/refold-states.js'
import { createStore } from '../../../src/adapters/store/store.js'
import { verifySite } from '../../../src/bot/verify.js'
import { fromIso } from '../../../src/core/instant.js'
import { addLast, type Folded, refold } from '../../../src/core/log/fold.js'
import { forEachDatabase } from '../../support/databases.js'
import { randomLog } from '../../support/random-log.js'
import { at, batch, demo } from './drafts.js'

forEachDatabase((open) => {
  test('states as an earlier version kept them become those of this one, and the log is intact', async () => {
    const database = await open()
    const store = createStore(database)
    const log = randomLog(300, 21)
    const states = new Map<string, Folded | null>()
    const drafts = log.map(({ seq: _seq, touches, ...entry }, index) => {
      for (const subject of touches) {
        const before = log.slice(0, index + 1).filter((one) => one.touches.includes(subject))
        const last = log[index]
        states.set(subject, (last && addLast(subject, states.get(subject) ?? null, last)) ?? refold(subject, before))
      }
      return { ...entry, author: 'U7', via: 'ask' as const, day: entry.at.slice(0, 10), touches: [...touches] }
    })
    // Of before: less in every state of a welder.
    const moved = [...states].map(([subject, folded]) => {
      const is = subject.startsWith('welder:') && folded !== null ? { name: subject.slice(7), status: 'none' } : (folded?.is ?? null)
      return { subject, state: (folded === null ? null : { ...folded, is }) as never }
    })
    await store.append(demo, Math.max(at, ...log.map((entry) => fromIso(entry.at) ?? 0)), null, async () => batch({ drafts, moved, reply: 1 }))
    expect((await verifySite(store, demo, []))?.firstBad).toMatchObject({ why: 'state' })

    await database.write.transaction().execute((trx) => refoldStates(trx))

    expect((await verifySite(store, demo, []))?.firstBad).toBeNull()
  })
})
