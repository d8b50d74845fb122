import { type Metrics, secondsSince } from '../adapters/http/metrics.js'
import type { OpenStore } from '../adapters/terminal/tools.js'
import type { AskedSource } from '../adapters/weather/asked-source.js'
import type { Talk } from '../bot/talk/talk.js'

/** The talk, with its answers counted and timed. */
export function measuredTalk(talk: Talk, metrics: Metrics): Talk {
  const timed = async <T>(what: string, run: () => Promise<T>): Promise<T> => {
    const start = process.hrtime.bigint()
    const answer = await run()
    metrics.answered(what, secondsSince(start))
    return answer
  }
  return {
    ...talk,
    say: (delivery, text) => timed('say', () => talk.say(delivery, text)),
    press: (delivery, actionId, value) => timed('press', () => talk.press(delivery, actionId, value)),
    submit: (delivery, ...form) => timed('submit', () => talk.submit(delivery, ...form)),
    home: (delivery) => timed('home', () => talk.home(delivery))
  }
}

/** The store, with its appends counted and timed. */
export function measuredStore(store: OpenStore, metrics: Metrics): OpenStore {
  return {
    ...store,
    append: async (...args) => {
      const start = process.hrtime.bigint()
      try {
        const appended = await store.append(...args)
        metrics.appended(appended?.kind ?? 'no-site', appended?.kind === 'done' ? appended.kept.length : 0, secondsSince(start))
        return appended
      } catch (error) {
        metrics.appended('failed', 0, secondsSince(start))
        throw error
      }
    }
  }
}

/** How a weather source answered when it was asked for something. */
export type Counted = (what: 'forecast' | 'alerts', source: string, how: 'fresh' | 'unchanged' | 'down') => void

/** A weather source, with its answers counted. */
export function measuredSource<Fresh extends { readonly kind: 'fresh' }>(
  what: 'forecast' | 'alerts',
  source: AskedSource<Fresh>,
  counted: Counted
): AskedSource<Fresh> {
  return {
    ...source,
    fetch: async (...args) => {
      try {
        const fetched = await source.fetch(...args)
        counted(what, source.name, fetched.kind)
        return fetched
      } catch (error) {
        counted(what, source.name, 'down')
        throw error
      }
    }
  }
}
