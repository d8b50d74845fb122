import type { HTTPReceiver, SocketModeReceiver } from '@slack/bolt'
import type { Chat } from '../../bot/chat-ports.js'
import type { Context } from './handlers/context.js'
import { guardedListener } from './listener.js'
import { type Slack, startProblem } from './slack.js'

const drainMs = 8500

/** What changes while it runs. */
export interface State {
  open: boolean
}

export function overHttp(receiver: HTTPReceiver, chat: Chat, { work, origin, workspaces }: Context, state: State): Slack {
  return {
    chat,
    install: null,
    listener: guardedListener(receiver.requestListener, work, origin.now),
    start: async () => {
      state.open = true
    },
    stop: async () => {
      state.open = false
      await work.drained(drainMs)
    },
    ready: () => state.open && workspaces.open()
  }
}

export function overSocket(receiver: SocketModeReceiver, chat: Chat, { work, log, workspaces }: Context, state: State): Slack {
  const { client } = receiver
  client.on('connected', () => {
    state.open = true
  })
  for (const away of ['close', 'reconnecting', 'disconnecting', 'disconnected'])
    client.on(away, () => {
      state.open = false
    })
  return {
    chat,
    install: null,
    listener: (_request, response) => void response.writeHead(404).end(),
    start: async () => {
      await receiver.start().catch((error: unknown) => {
        throw startProblem('app token', error)
      })
    },
    stop: async () => {
      // Replies go back through the connection: it is closed when they are out.
      const left = await work.drained(drainMs)
      if (left > 0) log.warn({ left }, 'stopped with work unfinished')
      await receiver.stop()
    },
    ready: () => state.open && workspaces.open()
  }
}
