import { describe, expect, test } from 'vitest'
import { outboxTable } from '../../../src/adapters/store/outbox-table.js'
import type { Database } from '../../../src/adapters/store/schema.js'
import { createStore } from '../../../src/adapters/store/store.js'
import type { Chat } from '../../../src/bot/chat-ports.js'
import { drain } from '../../../src/bot/outbox/drain.js'
import type { DrainPorts, PostNote } from '../../../src/bot/outbox/drain-ports.js'
import type { Post } from '../../../src/bot/ports.js'
import { draw } from '../../../src/wiring/papers.js'
import { at, batch, demo } from '../../adapters/store/drafts.js'
import { type FakeChat, fakeChat } from '../../support/chat.js'
import { forEachDatabase } from '../../support/databases.js'

const key = 'local/demo/morning/2026-05-04'

function post(change: Partial<Post> = {}): Post {
  return { key, site: 'demo', kind: 'morning', channel: 'C1', dueAt: at, payload: { text: 'GO', blocks: [] }, ...change }
}

interface Bench {
  readonly notes: PostNote[]
  queue(...posts: readonly Post[]): Promise<void>
  /** One drain at so many seconds after the post was due; another instance with `chat` of its own. */
  drainAt(seconds: number, chat?: Chat | null): Promise<{ readonly sent: readonly string[]; readonly skipped: readonly string[] }>
  state(of?: string): Promise<readonly [string | undefined, number | undefined]>
  ts(): Promise<string | null | undefined>
}

function bench(database: Database, chat: FakeChat, change: Partial<DrainPorts> = {}): Bench {
  const outbox = outboxTable(database)
  const notes: PostNote[] = []
  return {
    notes,
    queue: async (...posts) => void (await createStore(database).append(demo, at, null, async () => batch({ posts, reply: 1 }))),
    drainAt: (seconds, other = chat) =>
      drain(at + seconds, {
        outbox,
        draw,
        chat: other,
        channelOf: () => null,
        clock: () => at + seconds,
        wait: null,
        note: (note) => void notes.push(note),
        ...change
      }),
    state: async (of = key) => {
      const found = await outbox.post('local', of)
      return [found?.state, found?.attempts]
    },
    ts: async () => (await database.read.selectFrom('outbox').select('message_ts').where('key', '=', key).executeTakeFirst())?.message_ts
  }
}

/** A post with a picture, which some draw at once and some after a while. */
const pictured = post({ payload: { text: 'GO', blocks: [], papers: [{ kind: 'day' }] } as never })
const file = { kind: 'day', name: 'a.png', alt: 'A', mime: 'image/png', sha256: '', bytes: new Uint8Array() }

function slowDraw(during: () => unknown): typeof draw {
  return async () => {
    await during()
    return file as never
  }
}

const sentUnseen = { answer: { kind: 'unknown' }, arrives: true } as const
const lost = { answer: { kind: 'unknown' }, arrives: false } as const

forEachDatabase((open) => {
  describe('the outbox', () => {
    test('sends what is queued, once, and keeps the id of the message', async () => {
      const chat = fakeChat()
      const box = bench(await open(), chat)
      await box.queue(post())
      expect(await box.drainAt(0)).toEqual({ sent: [key], skipped: [] })
      expect(await box.state()).toEqual(['sent', 1])
      expect(await box.ts()).toBe('1.0')
      expect(await box.drainAt(60)).toEqual({ sent: [], skipped: [] })
      expect(chat.shown).toEqual([{ workspace: 'local', channel: 'C1', key, text: 'GO', blocks: [], files: [] }])
    })

    test('told to come later it comes later, and that is no attempt', async () => {
      const chat = fakeChat({ answer: { kind: 'later', afterS: 90 }, arrives: false })
      const box = bench(await open(), chat)
      await box.queue(post())
      expect((await box.drainAt(0)).sent).toEqual([])
      expect(await box.state()).toEqual(['queued', 0])
      expect((await box.drainAt(89)).sent).toEqual([])
      expect((await box.drainAt(90)).sent).toEqual([key])
      expect(chat.calls).toEqual([`post ${key}`, `post ${key}`])
    })

    test('of unknown fate, and there: found after 30 s, not sent again', async () => {
      const chat = fakeChat(sentUnseen)
      const box = bench(await open(), chat)
      await box.queue(post())
      expect((await box.drainAt(0)).sent).toEqual([])
      expect(await box.state()).toEqual(['unknown', 1])
      await box.drainAt(29)
      expect(chat.calls).toHaveLength(1)
      expect((await box.drainAt(30)).sent).toEqual([key])
      expect(await box.ts()).toBe('1.0')
      expect(chat.shown).toHaveLength(1)
    })

    test('of unknown fate, and not there: looked up, then sent again; every resend after a look of its own', async () => {
      const chat = fakeChat(lost, lost, lost)
      const box = bench(await open(), chat)
      await box.queue(post())
      for (let second = 0; second <= 600; second += 10) await box.drainAt(second)
      expect(chat.calls).toEqual([`post ${key}`, `find ${key}`, `post ${key}`, `find ${key}`, `post ${key}`, `find ${key}`, `post ${key}`])
      expect(chat.shown).toHaveLength(1)
      expect(await box.state()).toEqual(['sent', 4])
    })

    test('a resend whose answer is lost too is found by the next look', async () => {
      const chat = fakeChat(lost, sentUnseen)
      const box = bench(await open(), chat)
      await box.queue(post())
      for (let second = 0; second <= 600; second += 10) await box.drainAt(second)
      expect(chat.shown).toHaveLength(1)
      expect((await box.state())[0]).toBe('sent')
    })

    test('it is given up after a bounded number of tries, each wait longer than the last', async () => {
      const chat = fakeChat(...Array.from({ length: 50 }, () => lost))
      const posted: number[] = []
      const box = bench(await open(), chat)
      await box.queue(post())
      for (let second = 0; second <= 7200; second += 10) {
        const before = chat.calls.length
        await box.drainAt(second)
        if (chat.calls.slice(before).some((call) => call.startsWith('post'))) posted.push(second)
      }
      expect(posted).toEqual([0, 30, 90, 210, 450, 930])
      expect((await box.state())[0]).toBe('dead')
      expect(box.notes).toEqual([{ workspace: 'local', key, why: 'given-up', detail: null }])
    })

    test('where the history cannot be read it is never sent again, but shown', async () => {
      const chat = fakeChat(lost)
      const database = await open()
      const box = bench(database, chat)
      await box.queue(post())
      await box.drainAt(0)
      chat.history = 'unreadable'
      for (let second = 30; second <= 3600; second += 30) await box.drainAt(second)
      expect(chat.calls).toEqual([`post ${key}`, `find ${key}`])
      expect(await box.state()).toEqual(['dead', 1])
      expect(box.notes).toEqual([{ workspace: 'local', key, why: 'unreadable', detail: null }])
      expect((await createStore(database).givenUp('local', 0, 10)).map((dead) => dead.key)).toEqual([key])
      expect(await createStore(database).givenUp('other', 0, 10)).toEqual([])
    })

    test('where the history cannot be read for a while it is looked up again, and neither sent nor given up meanwhile', async () => {
      for (const turn of [sentUnseen, lost]) {
        const chat = fakeChat(turn)
        const box = bench(await open(), chat)
        await box.queue(post())
        await box.drainAt(0)
        chat.history = 'away'
        await box.drainAt(30)
        await box.drainAt(89)
        await box.drainAt(90)
        expect([await box.state(), box.notes]).toEqual([['unknown', 1], []])
        expect(chat.calls).toEqual([`post ${key}`, `find ${key}`, `find ${key}`])
        chat.history = 'readable'
        expect((await box.drainAt(150)).sent).toEqual([key])
        expect(chat.shown).toHaveLength(1)
      }
    })

    test('where it cannot be read until the post is stale, it is given up and shown', async () => {
      const chat = fakeChat(lost)
      const box = bench(await open(), chat)
      await box.queue(post())
      await box.drainAt(0)
      chat.history = 'away'
      await box.drainAt(3 * 3600)
      expect((await box.state())[0]).toBe('unknown')
      await box.drainAt(3 * 3600 + 60)
      expect([(await box.state())[0], box.notes.map(({ why }) => why), chat.shown.length]).toEqual(['dead', ['unreadable'], 0])
    })

    test('refused is dead at once, with the reason', async () => {
      const chat = fakeChat({ answer: { kind: 'refused', code: 'channel_not_found' }, arrives: false })
      const box = bench(await open(), chat)
      await box.queue(post())
      await box.drainAt(0)
      await box.drainAt(600)
      expect(chat.calls).toHaveLength(1)
      expect(await box.state()).toEqual(['dead', 1])
      expect(box.notes).toEqual([{ workspace: 'local', key, why: 'refused', detail: 'channel_not_found' }])
    })

    test('told later on a resend, its fate is still unknown: looked up again first', async () => {
      const chat = fakeChat(sentUnseen)
      const box = bench(await open(), chat)
      await box.queue(post())
      await box.drainAt(0)
      const late = chat.shown.splice(0)
      chat.turns.push({ answer: { kind: 'later', afterS: 60 }, arrives: false })
      await box.drainAt(30)
      expect(await box.state()).toEqual(['unknown', 1])
      chat.shown.push(...late)
      expect((await box.drainAt(90)).sent).toEqual([key])
      expect(chat.shown).toHaveLength(1)
    })

    test('stale while queued: skipped and noted, also without a chat', async () => {
      const chat = fakeChat()
      const box = bench(await open(), chat)
      await box.queue(post())
      expect(await box.drainAt(3 * 3600 + 1, null)).toEqual({ sent: [], skipped: [key] })
      expect(await box.drainAt(3 * 3600 + 60)).toEqual({ sent: [], skipped: [] })
      expect(box.notes).toEqual([{ workspace: 'local', key, why: 'stale', detail: null }])
      expect(chat.calls).toEqual([])
    })

    test('stale while unknown: looked up once more, never sent again', async () => {
      for (const [first, state] of [
        [sentUnseen, 'sent'],
        [lost, 'skipped']
      ] as const) {
        const chat = fakeChat(first)
        const box = bench(await open(), chat)
        await box.queue(post())
        await box.drainAt(0)
        await box.drainAt(4 * 3600)
        expect((await box.state())[0]).toBe(state)
        expect(chat.calls).toEqual([`post ${key}`, `find ${key}`])
      }
    })

    test('without a chat nothing is sent and all stays queued', async () => {
      const box = bench(await open(), fakeChat())
      await box.queue(post())
      expect(await box.drainAt(60, null)).toEqual({ sent: [], skipped: [] })
      expect(await box.state()).toEqual(['queued', 0])
    })

    test('without a channel: the one of the site now, else skipped and noted', async () => {
      const chat = fakeChat()
      const named = bench(await open(), chat, { channelOf: () => 'C9' })
      await named.queue(post({ channel: null }))
      await named.drainAt(0)
      expect(chat.shown.map(({ channel }) => channel)).toEqual(['C9'])
      const none = bench(await open(), chat)
      await none.queue(post({ channel: null }))
      expect(await none.drainAt(0)).toEqual({ sent: [], skipped: [key] })
      expect(none.notes).toEqual([{ workspace: 'local', key, why: 'no-channel', detail: null }])
    })
  })

  describe('an instance that dies or throws', () => {
    test('killed before the message left: after the hold another one looks, and sends it', async () => {
      const database = await open()
      const chat = fakeChat()
      const box = bench(database, chat)
      await box.queue(post())
      await outboxTable(database).take(at, at + 120, 1)
      expect((await box.drainAt(119)).sent).toEqual([])
      expect((await box.drainAt(120)).sent).toEqual([key])
      expect(chat.calls).toEqual([`find ${key}`, `post ${key}`])
    })

    test('killed after the message left, before that was written: found, not sent again', async () => {
      const database = await open()
      const chat = fakeChat()
      const box = bench(database, chat)
      await box.queue(post())
      await outboxTable(database).take(at, at + 120, 1)
      await chat.post({ workspace: 'local', channel: 'C1', key, text: 'GO', blocks: [], files: [] })
      expect((await box.drainAt(120)).sent).toEqual([key])
      expect(chat.shown).toHaveLength(1)
      expect(await box.ts()).toBe('1.0')
    })

    test('killed during the look or the resend: looked up again', async () => {
      const database = await open()
      const chat = fakeChat(lost)
      const box = bench(database, chat)
      await box.queue(post())
      await box.drainAt(0)
      const [taken] = await outboxTable(database).take(at + 30, at + 150, 1)
      expect(taken?.state).toBe('unknown')
      await chat.post({ workspace: 'local', channel: 'C1', key, text: 'GO', blocks: [], files: [] })
      expect((await box.drainAt(149)).sent).toEqual([])
      expect((await box.drainAt(150)).sent).toEqual([key])
      expect(chat.shown).toHaveLength(1)
    })

    test('a bug in one post is noted and does not stop the next; its own fate counts as unknown', async () => {
      const chat = fakeChat({ answer: new Error('bug'), arrives: true })
      const box = bench(await open(), chat)
      const other = post({ key: 'local/demo/morning/2026-05-05', channel: 'C2', dueAt: at + 1 })
      await box.queue(post(), other)
      expect((await box.drainAt(1)).sent).toEqual([other.key])
      expect(box.notes.map(({ why }) => why)).toEqual(['bug'])
      expect((await box.drainAt(200)).sent).toEqual([key])
      expect(chat.shown).toHaveLength(2)
    })

    test('two instances at once send each post once', async () => {
      const chat = fakeChat()
      const box = bench(await open(), chat)
      const all = Array.from({ length: 8 }, (_, n) => post({ key: `local/demo/morning/${n}`, channel: `C${n}` }))
      await box.queue(...all)
      const drained = await Promise.all([box.drainAt(0), box.drainAt(0), box.drainAt(0)])
      expect(drained.flatMap(({ sent }) => sent).sort()).toEqual(all.map((each) => each.key))
      expect(chat.shown).toHaveLength(8)
    })
  })

  describe('an edit', () => {
    const edit = post({ key: `${key}/02`, dueAt: at + 60, payload: { text: 'NO-GO', blocks: [], edits: key } })

    test('changes the message of the post that it names, and is no message itself', async () => {
      const chat = fakeChat()
      const box = bench(await open(), chat)
      await box.queue(post(), edit)
      expect((await box.drainAt(0)).sent).toEqual([key])
      expect((await box.drainAt(61)).sent).toEqual([edit.key])
      expect(chat.shown.map(({ text }) => text)).toEqual(['NO-GO'])
      expect(chat.calls).toEqual([`post ${key}`, `edit ${edit.key}`])
    })

    test('of unknown fate it is done again without a look', async () => {
      const chat = fakeChat({ answer: { kind: 'sent', ts: '1.0' }, arrives: true }, sentUnseen)
      const box = bench(await open(), chat)
      await box.queue(post(), edit)
      for (let second = 0; second <= 200; second += 10) await box.drainAt(second)
      expect(chat.calls).toEqual([`post ${key}`, `edit ${edit.key}`, `edit ${edit.key}`])
      expect(chat.shown.map(({ text }) => text)).toEqual(['NO-GO'])
      expect((await box.state(edit.key))[0]).toBe('sent')
    })

    test('waits for its message while that is of unknown fate; where there is none it is left out, and nobody is told', async () => {
      const chat = fakeChat(sentUnseen)
      const box = bench(await open(), chat)
      await box.queue(post(), edit)
      await box.drainAt(0)
      expect((await box.drainAt(20)).sent).toEqual([])
      await box.drainAt(70)
      await box.drainAt(71)
      expect(chat.shown.map(({ text }) => text)).toEqual(['NO-GO'])
      const gone = fakeChat({ answer: { kind: 'refused', code: 'channel_not_found' }, arrives: false })
      const none = bench(await open(), gone)
      await none.queue(post(), edit)
      await none.drainAt(0)
      await none.drainAt(61)
      expect([(await none.state())[0], (await none.state(edit.key))[0]]).toEqual(['dead', 'skipped'])
      expect(none.notes.map(({ why }) => why)).toEqual(['refused', 'no-message'])
    })

    test('a message that somebody deleted is past changing', async () => {
      const chat = fakeChat(
        { answer: { kind: 'sent', ts: '1.0' }, arrives: true },
        { answer: { kind: 'refused', code: 'message_not_found' }, arrives: false }
      )
      const box = bench(await open(), chat)
      await box.queue(post(), edit)
      await box.drainAt(0)
      await box.drainAt(61)
      expect((await box.state(edit.key))[0]).toBe('skipped')
    })
  })

  describe('a workspace', () => {
    const two = [post({ key: 'a', channel: 'C1' }), post({ key: 'b', channel: 'C2', dueAt: at + 1 })]

    test('that is limited is left alone as long as the service says, others are not', async () => {
      const chat = fakeChat({ answer: { kind: 'later', afterS: 30 }, arrives: false })
      const pausedUntil = new Map([['T9', at + 1000]])
      const box = bench(await open(), chat, { pausedUntil })
      await box.queue(two[0] as Post)
      await box.drainAt(0)
      await box.queue(two[1] as Post)
      expect((await box.drainAt(29)).sent).toEqual([])
      expect(chat.calls).toEqual(['post a'])
      expect((await box.drainAt(30)).sent).toEqual(['a', 'b'])
    })

    test('whose token is revoked is told of once and tried again; nothing is lost if it comes back in time', async () => {
      const revoked = { answer: { kind: 'refused', code: 'token_revoked' }, arrives: false } as const
      const chat = fakeChat(revoked, revoked)
      const box = bench(await open(), chat, { pausedUntil: new Map() })
      await box.queue(post())
      await box.drainAt(0)
      await box.queue(two[1] as Post)
      expect((await box.drainAt(300)).sent).toEqual([])
      const sent = [...(await box.drainAt(600)).sent, ...(await box.drainAt(1300)).sent]
      expect(sent.sort()).toEqual(['b', key])
      expect(box.notes.map(({ why }) => why)).toEqual(['no-token', 'no-token'])
    })

    test('a pause, a wait and a hold of before the clock went back hold nothing up', async () => {
      const chat = fakeChat({ answer: { kind: 'later', afterS: 3600 }, arrives: false })
      const pausedUntil = new Map<string, number>()
      const database = await open()
      const box = bench(database, chat, { pausedUntil })
      await box.queue(post())
      await box.drainAt(0)
      // A day back: what was to be left alone until then lies a day ahead.
      const back = -86_400
      expect((await box.drainAt(back)).sent).toEqual([key])
      const held = bench(database, chat, { pausedUntil })
      await held.queue(post({ key: 'held' }))
      await outboxTable(database).take(at, at + 120, 1)
      expect((await held.drainAt(back)).sent).toEqual(['held'])
      expect(chat.calls).toContain('find held')
    })
  })

  describe('one channel', () => {
    const three = ['a', 'b', 'c'].map((name, n) => post({ key: name, dueAt: at + n }))

    test('at most one message a second, in order of time', async () => {
      const chat = fakeChat()
      let now = at + 10
      async function wait(seconds: number) {
        now += seconds
      }
      const box = bench(await open(), chat, { clock: () => now, wait })
      await box.queue(...[...three].reverse())
      expect((await box.drainAt(10)).sent).toEqual(['a', 'b', 'c'])
      expect(now - at - 10).toBe(2)
    })

    test('where nobody waits the next tick goes on', async () => {
      const chat = fakeChat()
      const box = bench(await open(), chat)
      await box.queue(...three)
      expect((await box.drainAt(10)).sent).toEqual(['a'])
      expect(await box.state('b')).toEqual(['queued', 0])
      expect((await box.drainAt(70)).sent).toEqual(['b'])
      expect((await box.drainAt(130)).sent).toEqual(['c'])
    })

    test('one that waits holds back the later ones of its channel, not those of others', async () => {
      const chat = fakeChat({ answer: { kind: 'later', afterS: 300 }, arrives: false })
      const box = bench(await open(), chat)
      await box.queue(...three, post({ key: 'd', channel: 'C2', dueAt: at + 5 }))
      expect((await box.drainAt(10)).sent).toEqual(['d'])
      expect((await box.drainAt(70)).sent).toEqual([])
      expect((await box.drainAt(310)).sent).toEqual(['a'])
    })

    test('a post whose pictures take long has its hold renewed before it is sent: no other instance takes it on the way', async () => {
      const [database, chat] = [await open(), fakeChat()]
      const other = outboxTable(database)
      let now = at
      const slow: Chat = {
        ...chat,
        post: async (message) => {
          now = at + 130
          expect(await other.take(now, now + 120, 16)).toEqual([])
          return chat.post(message)
        }
      }
      const box = bench(database, chat, { clock: () => now, draw: slowDraw(() => (now = at + 40)) })
      await box.queue(pictured)
      expect((await box.drainAt(0, slow)).sent).toEqual([key])
      expect(chat.calls).toEqual([`post ${key}`])
    })

    test('a post whose hold ran out while it was drawn is left to the instance that has it', async () => {
      const [database, chat] = [await open(), fakeChat()]
      const other = bench(database, chat)
      let now = at
      const box = bench(database, chat, {
        clock: () => now,
        draw: slowDraw(async () => {
          now = at + 121
          expect((await other.drainAt(121)).sent).toEqual([key])
        })
      })
      await box.queue(pictured)
      expect((await box.drainAt(0)).sent).toEqual([])
      expect(chat.shown).toHaveLength(1)
      expect((await box.state())[0]).toBe('sent')
    })

    test('a look that takes longer than half the hold is not followed by a send: the hold might run out on the way', async () => {
      const chat = fakeChat(lost)
      let now = at
      const slow: Chat = {
        post: chat.post,
        edit: chat.edit,
        find: async (...args) => {
          now += 100
          return chat.find(...args)
        }
      }
      const box = bench(await open(), chat, { clock: () => now })
      await box.queue(post())
      await box.drainAt(0)
      now = at + 30
      const waking: Chat = { ...slow, find: async (...args) => (now < at + 200 ? slow.find(...args) : chat.find(...args)) }
      for (let ticks = 0; ticks < 3; ticks += 1) await box.drainAt(30, waking)
      expect(chat.calls).toEqual([`post ${key}`, `find ${key}`, `find ${key}`, `find ${key}`, `post ${key}`])
      expect(chat.shown).toHaveLength(1)
    })
  })
})
