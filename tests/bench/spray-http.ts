import { mkdtempSync, rmSync } from 'node:fs'
import { Agent, createServer, type RequestListener, request, type Server } from 'node:http'
import type { AddressInfo } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { App, HTTPReceiver } from '@slack/bolt'
import { readSheets } from '../../src/adapters/limits/files.js'
import { createSlack } from '../../src/adapters/slack/app.js'
import { openSqlite } from '../../src/adapters/store/open-sqlite.js'
import { sqliteApi } from '../../src/adapters/store/sqlite-api.js'
import { createStore } from '../../src/adapters/store/store.js'
import { sampleWeather } from '../../src/adapters/weather/index.js'
import { createTalk } from '../../src/bot/talk/create-talk.js'
import { draw } from '../../src/wiring/papers.js'
import { arrayLog, botToken, secret, sign, startService } from '../support/slack.js'
import type { BenchResult } from './rules.js'

interface Side {
  readonly port: number
  readonly close: () => Promise<void>
}

/** Readings a crew would send; each another value, so that every one is new. */
function sprayText(n: number): string {
  return `air ${14 + (n % 9)} deck ${18 + (n % 7)} rh ${50 + (n % 20)} wind ${8 + (n % 6)} gust ${14 + (n % 8)} rain 5 % dry clean`
}

async function serve(listener: RequestListener, after: () => Promise<void>): Promise<Side> {
  const server: Server = createServer(listener)
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve))
  const close = async () => {
    server.closeAllConnections()
    await new Promise<void>((resolve) => server.close(() => resolve()))
    await after()
  }
  return { port: (server.address() as AddressInfo).port, close }
}

/** Ours as it runs: the adapter, the talk, the dispatcher, the store (WAL, synchronous=FULL), the invented week as weather. */
async function ours(folder: string, apiUrl: string): Promise<Side> {
  const store = createStore(await openSqlite(folder, { server: true }))
  const talk = createTalk(
    {
      store,
      weather: sampleWeather(),
      sheets: readSheets(null),
      draw,
      lang: 'en',
      units: 'metric',
      report: (error) => {
        throw error
      }
    },
    { siteOfChannel: async () => 'demo' }
  )
  const slack = await createSlack({
    mode: { kind: 'http', signingSecret: secret, botToken },
    apiUrl,
    talk,
    workspaceOf: () => 'local',
    room: false,
    now: () => Math.floor(Date.now() / 1000),
    log: arrayLog([])
  })
  await slack.start()
  return serve(slack.listener, async () => {
    await slack.stop()
    await store.close()
  })
}

/** The peer: the framework with one command that writes one row durably and acknowledges with the row's text. */
async function peer(folder: string, apiUrl: string): Promise<Side> {
  const database = (await sqliteApi())(join(folder, 'peer.db'))
  for (const pragma of ['journal_mode = wal', 'synchronous = full']) database.exec(`pragma ${pragma}`)
  database.exec('create table rows (n integer primary key, text text not null) strict')
  const insert = database.prepare('insert into rows (text) values (?)')
  const receiver = new HTTPReceiver({ signingSecret: secret })
  const app = new App({
    receiver,
    token: botToken,
    clientOptions: { slackApiUrl: apiUrl },
    deferInitialization: true,
    botId: 'B0BOT',
    botUserId: 'U0BOT'
  })
  app.command('/spray', async ({ command, ack }) => {
    insert.run(JSON.stringify({ user: command.user_id, text: command.text, fill: 'x'.repeat(300) }))
    await ack({ response_type: 'in_channel', text: command.text })
  })
  await app.init()
  return serve(receiver.requestListener, async () => database.close())
}

const agent = new Agent({ keepAlive: true, maxSockets: 1 })

/** Milliseconds of one signed command on a kept connection. */
function ask(port: number, n: number): Promise<number> {
  const body = new URLSearchParams({
    team_id: 'T0',
    channel_id: 'C1',
    user_id: 'U1',
    command: '/spray',
    text: sprayText(n),
    api_app_id: 'A0',
    is_enterprise_install: 'false',
    response_url: 'http://127.0.0.1:1/',
    trigger_id: `bench.${n}`
  }).toString()
  const ts = Math.floor(Date.now() / 1000)
  const headers = {
    'content-type': 'application/x-www-form-urlencoded',
    'content-length': Buffer.byteLength(body),
    'x-slack-request-timestamp': String(ts),
    'x-slack-signature': sign(body, ts)
  }
  const start = performance.now()
  return new Promise((resolve, reject) => {
    const sent = request({ port, host: '127.0.0.1', path: '/slack/events', method: 'POST', agent, headers }, (response) => {
      const parts: Buffer[] = []
      response.on('data', (part: Buffer) => parts.push(part))
      response.on('end', () => {
        const text = Buffer.concat(parts).toString('utf8')
        if (response.statusCode === 200 && text.includes('in_channel')) resolve(performance.now() - start)
        else reject(new Error(`${response.statusCode}: ${text.slice(0, 200)}`))
      })
    })
    sent.on('error', reject)
    sent.end(body)
  })
}

function at(times: readonly number[], share: number): number {
  const sorted = [...times].sort((a, b) => a - b)
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? Number.NaN
}

/** `/spray` with seven readings and two statements over signed HTTP on loopback, beside the peer, in turn, one at a time. */
export async function benchSprayHttp(count = 1000, warm = 200): Promise<readonly BenchResult[]> {
  const folder = mkdtempSync(join(tmpdir(), 'seamhand-bench-'))
  const service = await startService()
  const [one, other] = [await ours(folder, service.apiUrl), await peer(folder, service.apiUrl)]
  const took = { ours: [] as number[], peer: [] as number[] }
  try {
    for (let n = 0; n < count + warm; n += 1) {
      const times = [await ask(one.port, n), await ask(other.port, n)] as const
      if (n < warm) continue
      took.ours.push(times[0])
      took.peer.push(times[1])
    }
  } finally {
    await one.close()
    await other.close()
    await service.close()
    rmSync(folder, { recursive: true, force: true })
  }
  const row = (name: string, share: number, bar: number): BenchResult => {
    const value = at(took.ours, share) / at(took.peer, share)
    const figures = `${at(took.ours, share).toFixed(2)} against ${at(took.peer, share).toFixed(2)} ms`
    return {
      name: `/spray over signed HTTP, readings logged and decided, ${name} (${figures})`,
      peer: 'a bare Bolt 5 command with one insert (WAL, synchronous=FULL), in the same run, one at a time',
      value,
      bar,
      ok: value <= bar
    }
  }
  return [row('median', 0.5, 1.5), row('p99', 0.99, 2)]
}
