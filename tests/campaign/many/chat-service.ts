import { createServer, type IncomingMessage, type ServerResponse } from 'node:http'
import type { AddressInfo } from 'node:net'
import type { SharedClock } from './clock.js'

/** A message that everybody in the channel sees. */
interface Shown {
  readonly ts: string
  readonly key: string
}

export interface ChatService {
  readonly apiUrl: string
  /** How often each slot key was shown. */
  shown(): ReadonlyMap<string, number>
  /** What was done to callers, by kind. */
  readonly faults: Readonly<Record<string, number>>
  close(): Promise<void>
}

/** Shares of posts that meet each fault; the message of `lost` is shown and its answer is not. */
const shares = { lost: 0.01, failed: 0.01, limited: 0.01, slow: 0.02 } as const

/** A stand-in for the chat service that fails as a real one does: answers lost after the message is shown, 500, 429, slow answers. */
export async function startChatService(clock: SharedClock, random: () => number): Promise<ChatService> {
  const channels = new Map<string, Shown[]>()
  const faults = { lost: 0, failed: 0, limited: 0, slow: 0 }
  let count = 0
  function show(channel: string, key: string): string {
    count += 1
    const ts = `${clock.now()}.${String(count).padStart(6, '0')}`
    channels.set(channel, [...(channels.get(channel) ?? []), { ts, key }])
    return ts
  }
  function post(form: URLSearchParams, res: ServerResponse): void {
    const channel = form.get('channel') ?? ''
    const key = keyOf(form)
    // An answer that came late stands in no slot, and is not counted.
    const kind = key === '' ? null : faultOf(random())
    if (kind !== null) faults[kind] += 1
    if (kind === 'failed') res.writeHead(500).end()
    else if (kind === 'limited') res.writeHead(429, { 'retry-after': '1' }).end()
    else answer(res, kind, { ok: true, ts: show(channel, key), channel })
  }
  function history(form: URLSearchParams, res: ServerResponse): void {
    const since = Number(form.get('oldest') ?? 0)
    const messages = (channels.get(form.get('channel') ?? '') ?? [])
      .filter(({ ts }) => Number(ts) >= since)
      .map(({ ts, key }) => ({ ts, metadata: { event_type: 'seamhand_post', event_payload: { key } } }))
    json(res, { ok: true, messages })
  }
  const server = createServer((req, res) => {
    void formOf(req).then((form) => {
      const method = (req.url ?? '').split('/').at(-1)
      if (method === 'chat.postMessage') post(form, res)
      else if (method === 'conversations.history') history(form, res)
      else json(res, { ok: true, user_id: 'U0BOT', bot_id: 'B0BOT', team_id: 'T0' })
    })
  })
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve))
  return {
    apiUrl: `http://127.0.0.1:${(server.address() as AddressInfo).port}/api/`,
    faults,
    shown: () => counted([...channels.values()].flatMap((all) => all.map(({ key }) => key)).filter((key) => key !== '')),
    close: () => {
      server.closeAllConnections()
      return new Promise((resolve) => server.close(() => resolve()))
    }
  }
}

type Fault = keyof typeof shares

function faultOf(drawn: number): Fault | null {
  let below = 0
  for (const kind of Object.keys(shares) as Fault[]) {
    below += shares[kind]
    if (drawn < below) return kind
  }
  return null
}

function answer(res: ServerResponse, kind: Fault | null, body: object): void {
  if (kind === 'lost') res.destroy()
  else if (kind === 'slow') setTimeout(() => json(res, body), 300)
  else json(res, body)
}

function counted(keys: readonly string[]): ReadonlyMap<string, number> {
  const counts = new Map<string, number>()
  for (const key of keys) counts.set(key, (counts.get(key) ?? 0) + 1)
  return counts
}

function keyOf(form: URLSearchParams): string {
  const metadata = JSON.parse(form.get('metadata') ?? '{}') as { event_payload?: { key?: string } }
  return metadata.event_payload?.key ?? ''
}

async function formOf(req: IncomingMessage): Promise<URLSearchParams> {
  const parts: Buffer[] = []
  for await (const part of req) parts.push(part as Buffer)
  return new URLSearchParams(Buffer.concat(parts).toString('utf8'))
}

function json(res: ServerResponse, body: object): void {
  res.writeHead(200, { 'content-type': 'application/json' })
  res.end(JSON.stringify(body))
}
