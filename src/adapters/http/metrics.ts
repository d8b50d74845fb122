import { BlockList } from 'node:net'
import type { Counted, Readings } from './counted.js'
import type { Counting } from './counting.js'
import type { Handler } from './server.js'

export interface Metrics extends Counted {
  /** `GET /metrics`. */
  readonly handler: Handler
  /** Goes before the handlers: counts what they answer. */
  readonly watch: Handler
}

/** The library that counts is eighty files, and no answer needs it: it is loaded when a start is over, or when somebody looks. */
const loadAfterMs = 10_000

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
  const { counting, count } = loadedLater(version, readings)
  return {
    handler: scrape(counting),
    watch: (req, res) => {
      const start = process.hrtime.bigint()
      const route = routes[(req.url ?? '').split('?')[0] ?? ''] ?? 'other'
      res.once('close', () => {
        const seconds = secondsSince(start)
        count((to) => to.requested(route, res.writableEnded ? `${Math.floor(res.statusCode / 100)}xx` : 'cut', seconds))
      })
      return false
    },
    answered: (...what) => count((to) => to.answered(...what)),
    bug: () => count((to) => to.bug()),
    appended: (...what) => count((to) => to.appended(...what)),
    posted: (...what) => count((to) => to.posted(...what)),
    weather: (...what) => count((to) => to.weather(...what)),
    ticked: (...what) => count((to) => to.ticked(...what))
  }
}

/** What comes before the library is there is counted when it is. */
function loadedLater(version: string, readings: Readings) {
  let loaded: Counting | null = null
  let load = (): void => undefined
  const wanted = new Promise<void>((resolve) => {
    load = resolve
  })
  setTimeout(load, loadAfterMs).unref()
  const made = wanted.then(async () => {
    const { createCounting } = await import('./counting.js')
    loaded = createCounting(version, readings)
    return loaded
  })
  return {
    counting: () => {
      load()
      return made
    },
    count: (run: (to: Counting) => void): void => {
      if (loaded === null) void made.then(run)
      else run(loaded)
    }
  }
}

function scrape(counting: () => Promise<Counting>): Handler {
  return async (req, res) => {
    if (req.method !== 'GET' || (req.url ?? '').split('?')[0] !== '/metrics') return false
    const inside = isInside(req.socket.remoteAddress)
    const counted = inside ? await counting() : null
    const body = counted === null ? '' : await counted.text()
    res.writeHead(inside ? 200 : 403, { 'content-type': counted?.contentType ?? 'text/plain', 'cache-control': 'no-store' })
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
  const plain = address.replace(/^::ffff:(?=\d+\.)/i, '').replace(/%.*/s, '')
  return inside.check(plain, plain.includes(':') ? 'ipv6' : 'ipv4')
}

/** Seconds since a reading of the steady clock. */
export function secondsSince(start: bigint): number {
  return Number(process.hrtime.bigint() - start) / 1e9
}
