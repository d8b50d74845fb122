import parse from 'parse-prometheus-text-format'
import { afterEach, describe, expect, it } from 'vitest'
import type { Readings } from '../../../src/adapters/http/counted.js'
import { createMetrics, isInside, type Metrics } from '../../../src/adapters/http/metrics.js'
import { type Listening, listen } from '../../../src/adapters/http/server.js'

interface Family {
  readonly name: string
  readonly help: string
  readonly type: string
  readonly metrics: readonly {
    readonly value?: string
    readonly labels?: Readonly<Record<string, string>>
    readonly count?: string
    readonly sum?: string
  }[]
}

const open: Listening[] = []
afterEach(async () => {
  for (const one of open.splice(0)) await one.close()
})

const quiet: Readings = {
  outbox: async () => ({ queued: 2, sending: 0, unknown: 1 }),
  overdueS: async () => 40,
  ready: async () => ({ store: true, chat: false })
}

async function serving(readings: Readings = quiet): Promise<{ metrics: Metrics; base: string }> {
  const metrics = createMetrics('1.2.3', readings)
  const listening = await listen('127.0.0.1', 0, [metrics.watch, metrics.handler], () => undefined)
  open.push(listening)
  return { metrics, base: listening.base }
}

/** Read by a parser that is not ours: parse-prometheus-text-format, a port of the Python client's. */
async function families(base: string): Promise<ReadonlyMap<string, Family>> {
  const answer = await fetch(`${base}/metrics`)
  expect(answer.headers.get('content-type')).toBe('text/plain; version=0.0.4; charset=utf-8')
  const text = await answer.text()
  expect(text.endsWith('\n')).toBe(true)
  return new Map((parse(text) as Family[]).map((family) => [family.name, family]))
}

describe('metrics', () => {
  it('are what a general parser reads, each with help and type', async () => {
    const { metrics, base } = await serving()
    metrics.appended('done', 3, 0.02)
    metrics.appended('failed', 0, 0.5)
    metrics.answered('say', 0.03)
    metrics.posted('sent', 4)
    metrics.weather('met', 'fresh')
    metrics.ticked(true, 0.2)
    metrics.bug()
    await fetch(`${base}/nowhere?user=U1`)
    const read = await families(base)

    for (const { name, help, type } of read.values()) expect(`${help} ${type}`, name).toMatch(/^.{10,} (COUNTER|GAUGE|HISTOGRAM|SUMMARY)$/)
    const value = (name: string) => read.get(name)?.metrics[0]?.value
    expect(value('seamhand_entries_total')).toBe('3')
    expect(value('seamhand_bugs_total')).toBe('1')
    expect(value('seamhand_outbox_overdue_seconds')).toBe('40')
    expect(read.get('seamhand_outbox_posts')?.metrics).toContainEqual({ value: '2', labels: { state: 'queued' } })
    expect(read.get('seamhand_ready')?.metrics).toEqual([
      { value: '1', labels: { part: 'store' } },
      { value: '0', labels: { part: 'chat' } }
    ])
    expect(read.get('seamhand_build_info')?.metrics[0]?.labels).toEqual({ version: '1.2.3', node: process.version })
    expect(read.get('seamhand_append_duration_seconds')?.type).toBe('HISTOGRAM')
    // The parser keeps no labels of a histogram: the lines themselves do.
    const text = await (await fetch(`${base}/metrics`)).text()
    expect(text).toContain('seamhand_append_duration_seconds_count{result="done"} 1')
    expect(text).toContain('seamhand_append_duration_seconds_bucket{le="0.025",result="done"} 1')
    expect(text).toContain('seamhand_append_duration_seconds_sum{result="failed"} 0.5')
    expect(read.get('process_cpu_seconds_total')?.type).toBe('COUNTER')
  })

  it('have labels of fixed lists: what people send makes no new ones', async () => {
    const { base } = await serving()
    for (let n = 0; n < 20; n += 1) await fetch(`${base}/sites/s${n}?user=U${n}`)
    const text = await (await fetch(`${base}/metrics`)).text()
    const routes = [...text.matchAll(/request_duration_seconds_count\{route="([^"]+)",status="([^"]+)"\} (\d+)/g)].map((found) =>
      found.slice(1).join(' ')
    )
    expect(routes).toEqual(['other 4xx 20'])
  })

  it('are there while the store is away', async () => {
    const { base } = await serving({ outbox: async () => null, overdueS: async () => null, ready: async () => ({ store: false }) })
    const read = await families(base)
    expect(read.get('seamhand_ready')?.metrics).toEqual([{ value: '0', labels: { part: 'store' } }])
    expect(read.get('seamhand_outbox_overdue_seconds')?.metrics ?? []).toEqual([])
  })

  it('of two servers of one process do not mix', async () => {
    const [one, two] = [await serving(), await serving()]
    one.metrics.appended('done', 5, 0.1)
    expect((await families(two.base)).get('seamhand_entries_total')?.metrics[0]?.value).toBe('0')
  })

  it.each([
    ['127.0.0.1', true],
    ['::1', true],
    ['::ffff:127.0.0.1', true],
    ['10.1.2.3', true],
    ['172.31.0.1', true],
    ['192.168.1.1', true],
    ['fd00::1', true],
    ['fe80::1%eth0', true],
    ['172.32.0.1', false],
    ['8.8.8.8', false],
    ['::ffff:8.8.8.8', false],
    ['2001:db8::1', false],
    [undefined, false]
  ])('are for this machine and networks that are not public: %s %s', (address, is) => {
    expect(isInside(address)).toBe(is)
  })
})
