import type { Chat, Found, Outgoing, Sent } from '../../src/bot/chat-ports.js'

/** What the fake chat does with the next message: whether it shows in the history is apart from what it answers. */
export interface Turn {
  readonly answer: Sent | Error
  readonly arrives: boolean
}

export interface FakeChat extends Chat {
  /** Messages as they stand in the channels. */
  readonly shown: Outgoing[]
  readonly calls: string[]
  /** The next answers, in order; then everything is sent. */
  readonly turns: Turn[]
  /** `away`: the history cannot be read for now. */
  history: 'readable' | 'unreadable' | 'away'
}

export function fakeChat(...turns: readonly Turn[]): FakeChat {
  const shown: Outgoing[] = []
  const calls: string[] = []
  const chat: FakeChat = {
    shown,
    calls,
    turns: [...turns],
    history: 'readable',
    post: async (message) => {
      calls.push(`post ${message.key}`)
      const turn = chat.turns.shift() ?? { answer: { kind: 'sent', ts: `${shown.length + 1}.0` }, arrives: true }
      if (turn.arrives) shown.push(message)
      if (turn.answer instanceof Error) throw turn.answer
      return turn.answer
    },
    edit: async (message, ts) => {
      calls.push(`edit ${message.key}`)
      const turn = chat.turns.shift() ?? { answer: { kind: 'sent', ts }, arrives: true }
      if (turn.arrives) shown.splice(Number.parseInt(ts, 10) - 1, 1, { ...message, key: shown[Number.parseInt(ts, 10) - 1]?.key ?? message.key })
      if (turn.answer instanceof Error) throw turn.answer
      return turn.answer
    },
    find: async (workspace, channel, key): Promise<Found> => {
      calls.push(`find ${key}`)
      if (chat.history === 'unreadable') return { kind: 'unreadable' }
      if (chat.history === 'away') return { kind: 'later', afterS: 60 }
      const index = shown.findIndex((message) => message.workspace === workspace && message.channel === channel && message.key === key)
      return index < 0 ? { kind: 'absent' } : { kind: 'found', ts: `${index + 1}.0` }
    }
  }
  return chat
}
