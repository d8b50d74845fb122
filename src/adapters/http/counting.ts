import { Counter, collectDefaultMetrics, Gauge, Histogram, Registry } from 'prom-client'
import type { Counted, Readings } from './counted.js'

/** What is counted, and how it is told. */
export interface Counting extends Counted {
  readonly contentType: string
  /** All of it in the text that Prometheus reads. */
  text(): Promise<string>
  requested(route: string, status: string, seconds: number): void
}

/** Seconds. An answer has two, a tick a minute. */
const answerBuckets = [0.005, 0.01, 0.025, 0.05, 0.1, 0.25, 0.5, 1, 2, 5]
const tickBuckets = [0.1, 0.5, 1, 5, 10, 30, 60, 120, 300]

export function createCounting(version: string, readings: Readings): Counting {
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
    contentType: registry.contentType,
    text: () => registry.metrics(),
    requested: (route, status, seconds) => requests.observe({ route, status }, seconds),
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
