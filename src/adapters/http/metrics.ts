import { BlockList } from 'node:net'
import { Counter, collectDefaultMetrics, Gauge, Histogram, Registry } from 'prom-client'
import type { Handler } from './server.js'

/** Read when somebody looks; each answers soon, and null is not known now. */
export interface Readings {
  /** Posts that are not ended, by state. */
  readonly outbox: () => Promise<Readonly<Record<string, number>> | null>
  /** Seconds that the oldest of them is overdue; 0 for none. */
  readonly overdueS: () => Promise<number | null>
  /** The parts of readiness. */
  readonly ready: () => Promise<Readonly<Record<string, boolean>>>
}

/** What the parts of the server count. Labels are of fixed lists: no site, workspace or person is one. */
export interface Metrics {
  /** `GET /metrics`. */
  readonly handler: Handler
  /** Goes before the handlers: counts what they answer. */
  readonly watch: Handler
  /** An answer of the bot: what came (say, press, submit, home). */
  answered(what: string, seconds: number): void
  /** A bug was reported. */
  bug(): void
  /** An append: done, repeated, no-site or failed, with its entries. */
  appended(how: string, entries: number, seconds: number): void
  posted(how: string, count: number): void
  /** An answer of a weather source: fresh, unchanged or down. */
  weather(source: string, how: string): void
  ticked(ok: boolean, seconds: number): void
}

/** Seconds. An answer has two, a tick a minute. */
const answerBuckets = [0.005, 0.01, 0.025, 0.05, 0.1, 0.25, 0.5, 1, 2, 5]
const tickBuckets = [0.1, 0.5, 1, 5, 10, 30, 60, 120, 300]

const routes: Readonly<Record<string, string>> = {
  '/': 'page',
  '/slack/events': 'events',
  '/slack/install': 'install',
  '/slack/oauth_redirect': 'oauth_redirect',
  '/healthz': 'healthz',
  '/readyz': 'readyz',
  '/metrics': 'metrics'
}

export function createMetrics(version: string, readings: Readings): Metrics {
  const registry = new Registry()
  collectDefaultMetrics({ register: registry })
  const registers = [registry]
  const counter = <L extends string>(name: string, help: string, labelNames: readonly L[]) =>
    new Counter({ name: `seamhand_${name}`, help, labelNames: [...labelNames], registers })
  const histogram = <L extends string>(name: string, help: string, labelNames: readonly L[], buckets = answerBuckets) =>
    new Histogram({ name: `seamhand_${name}`, help, labelNames: [...labelNames], buckets, registers })
  const requests = histogram('http_request_duration_seconds', 'Requests answered, by route and class of status.', ['route', 'status'])
  const answers = histogram('answer_duration_seconds', 'Answers of the bot, by what came.', ['what'])
  const bugs = counter('bugs_total', 'Failures that were logged with a reference.', [])
  const appends = histogram('append_duration_seconds', 'Transactions that log, by how they ended.', ['result'])
  const entries = counter('entries_total', 'Entries logged.', [])
  const posts = counter('posts_total', 'Posts that ended, by how.', ['result'])
  const weather = counter('weather_answers_total', 'Answers of weather sources.', ['source', 'result'])
  const ticks = histogram('tick_duration_seconds', 'Ticks, by whether they failed.', ['result'], tickBuckets)
  gauges(registers, version, readings)
  return {
    handler: scrape(registry),
    watch: (req, res) => {
      const start = process.hrtime.bigint()
      const route = routes[(req.url ?? '').split('?')[0] ?? ''] ?? 'other'
      res.once('close', () =>
        requests.observe({ route, status: res.writableEnded ? `${Math.floor(res.statusCode / 100)}xx` : 'cut' }, secondsSince(start))
      )
      return false
    },
    answered: (what, seconds) => answers.observe({ what }, seconds),
    bug: () => bugs.inc(),
    appended: (result, count, seconds) => {
      appends.observe({ result }, seconds)
      entries.inc(count)
    },
    posted: (result, count) => posts.inc({ result }, count),
    weather: (source, result) => weather.inc({ source, result }),
    ticked: (ok, seconds) => ticks.observe({ result: ok ? 'ok' : 'failed' }, seconds)
  }
}

function gauges(registers: Registry[], version: string, { outbox, overdueS, ready }: Readings): void {
  new Gauge({ name: 'seamhand_build_info', help: 'The version that runs.', labelNames: ['version', 'node'], registers }).set(
    { version, node: process.version },
    1
  )
  new Gauge({
    name: 'seamhand_outbox_posts',
    help: 'Posts that are not ended, by state.',
    labelNames: ['state'],
    registers,
    async collect() {
      this.reset()
      for (const [state, count] of Object.entries((await outbox()) ?? {})) this.set({ state }, count)
    }
  })
  new Gauge({
    name: 'seamhand_outbox_overdue_seconds',
    help: 'How long the oldest post that is not ended is overdue.',
    registers,
    async collect() {
      const seconds = await overdueS()
      if (seconds === null) this.remove()
      else this.set(seconds)
    }
  })
  new Gauge({
    name: 'seamhand_ready',
    help: 'Whether a part is ready (1) or not (0).',
    labelNames: ['part'],
    registers,
    async collect() {
      for (const [part, is] of Object.entries(await ready())) this.set({ part }, is ? 1 : 0)
    }
  })
}

function scrape(registry: Registry): Handler {
  return async (req, res) => {
    if (req.method !== 'GET' || (req.url ?? '').split('?')[0] !== '/metrics') return false
    const inside = isInside(req.socket.remoteAddress)
    const body = inside ? await registry.metrics() : ''
    res.writeHead(inside ? 200 : 403, { 'content-type': inside ? registry.contentType : 'text/plain', 'cache-control': 'no-store' })
    res.end(body)
    return true
  }
}

/** Loopback and the private ranges of RFC 1918, RFC 4193 and RFC 6598: a proxy stands there. */
const inside = new BlockList()
for (const [net, bits] of [
  ['127.0.0.0', 8],
  ['10.0.0.0', 8],
  ['172.16.0.0', 12],
  ['192.168.0.0', 16],
  ['100.64.0.0', 10]
] as const)
  inside.addSubnet(net, bits, 'ipv4')
inside.addAddress('::1', 'ipv6')
inside.addSubnet('fc00::', 7, 'ipv6')
inside.addSubnet('fe80::', 10, 'ipv6')

/** Whether an address is of this machine or of a network that is not public. */
export function isInside(address: string | undefined): boolean {
  if (address === undefined) return false
  const plain = address.replace(/^::ffff:(?=\d+\.)/i, '').replace(/%.*$/, '')
  return inside.check(plain, plain.includes(':') ? 'ipv6' : 'ipv4')
}

/** Seconds since a reading of the steady clock. */
export function secondsSince(start: bigint): number {
  return Number(process.hrtime.bigint() - start) / 1e9
}
