import { createServer, type IncomingMessage, type ServerResponse } from 'node:http'
import type { AddressInfo } from 'node:net'

/** A message as people see it. */
export interface Visible {
  readonly channel: string
  readonly key: string
  readonly ts: string
  /** It shows in the history from then on, ms. */
  readonly listedAt: number
}

export interface PostService {
  readonly apiUrl: string
  readonly visible: readonly Visible[]
  /** Calls by what became of them. */
  readonly counts: Readonly<Record<string, number>>
  close(): Promise<void>
}

/** Chances of each fault of one call, in thousandths. */
export interface Faults {
  /** Told to come later: not posted. */
  readonly limited: number
  /** 500, or the connection cut: posted all the same. */
  readonly lostAnswer: number
  /** 500: not posted. */
  readonly lostMessage: number
  /** Answered only so late. */
  readonly slowMs: number
  /** Longest until a message shows in the history, ms. */
  readonly listedMs: number
}

type Args = Record<string, string>

/** A stand-in for the chat service that fails as it is told by `random` (0 … 1), and counts what is visible. */
export async function startPostService(random: () => number, faults: Faults): Promise<PostService> {
  const visible: Visible[] = []
  const counts: Record<string, number> = {}
  const count = (what: string) => {
    counts[what] = (counts[what] ?? 0) + 1
  }
  function post(args: Args, res: ServerResponse): void {
    const draw = random() * 1000
    const { limited, lostMessage, lostAnswer } = faults
    if (draw < limited) {
      count('limited')
      return void res.writeHead(429, { 'retry-after': '1' }).end()
    }
    if (draw < limited + lostMessage) {
      count('lost message')
      return void res.writeHead(500).end('oops')
    }
    const ts = `${Math.floor(Date.now() / 1000)}.${String(visible.length).padStart(6, '0')}`
    const metadata = JSON.parse(args.metadata ?? '{}') as { event_payload?: { key?: string } }
    const listedAt = Date.now() + random() * faults.listedMs
    visible.push({ channel: args.channel ?? '', key: metadata.event_payload?.key ?? '', ts, listedAt })
    if (draw < limited + lostMessage + lostAnswer) {
      count('lost answer')
      if (random() < 0.5) return void res.writeHead(500).end('oops')
      return void res.writeHead(200, { 'content-type': 'application/json' }).write('{"ok":tr', () => res.socket?.destroy())
    }
    count('posted')
    answer(res, { ok: true, ts, channel: args.channel })
  }
  function history(args: Args, res: ServerResponse): void {
    count('history')
    const found = visible.filter(
      ({ channel, listedAt, ts }) => channel === args.channel && listedAt <= Date.now() && Number(ts) >= Number(args.oldest)
    )
    const messages = found.map(({ ts, key }) => ({ ts, text: '', metadata: { event_type: 'seamhand_post', event_payload: { key } } }))
    answer(res, { ok: true, messages })
  }
  async function serve(req: IncomingMessage, res: ServerResponse): Promise<void> {
    const method = (req.url ?? '').replace('/api/', '')
    const args = Object.fromEntries(new URLSearchParams(await bodyOf(req)))
    await new Promise((resolve) => setTimeout(resolve, random() * faults.slowMs))
    if (method === 'auth.test') return answer(res, { ok: true, user_id: 'U0BOT', bot_id: 'B0BOT', team_id: 'T0' })
    if (method === 'chat.postMessage') return post(args, res)
    if (method === 'conversations.history') return history(args, res)
    answer(res, { ok: false, error: 'unknown_method' })
  }
  const server = createServer((req, res) => void serve(req, res).catch(() => res.destroy()))
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve))
  return {
    apiUrl: `http://127.0.0.1:${(server.address() as AddressInfo).port}/api/`,
    visible,
    counts,
    close: () => {
      server.closeAllConnections()
      return new Promise((resolve) => server.close(() => resolve()))
    }
  }
}

function answer(res: ServerResponse, body: object): void {
  res.writeHead(200, { 'content-type': 'application/json' }).end(JSON.stringify(body))
}

async function bodyOf(req: IncomingMessage): Promise<string> {
  const parts: Buffer[] = []
  for await (const part of req) parts.push(part as Buffer)
  return Buffer.concat(parts).toString('utf8')
}
