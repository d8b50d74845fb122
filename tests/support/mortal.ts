import type { Chat, Outbox, Slots } from '../../src/bot/chat-ports.js'
import type { SiteView, Store } from '../../src/bot/ports.js'
import type { TickPorts } from '../../src/bot/posts/tick-ports.js'

/** What happens at one call of a life: the process is killed just before or just after it, or the call fails and life goes on. */
export interface Fate {
  /** Counted from 1 over every call to store, slots, outbox, chat and weather; 0: nothing happens. */
  readonly at: number
  readonly when: 'before' | 'after'
  /** What is thrown; null: the process is dead from then on. */
  readonly failure: Error | null
}

export interface Life {
  readonly ports: TickPorts
  /** Calls made, each by its name. */
  readonly calls: readonly string[]
}

class Killed extends Error {
  override readonly name = 'Killed'
}

/** Ports of one process that counts its calls and meets its fate at one of them. A dead one does nothing any more. */
export function lifeOf(ports: TickPorts, fate: Fate): Life {
  const calls: string[] = []
  const state = { dead: false }
  function mortal<T extends object>(port: T, name: string): T {
    return new Proxy(port, {
      get: (target, member) => {
        const value: unknown = Reflect.get(target, member)
        if (typeof value !== 'function') return value
        return (...args: unknown[]) => call(`${name}.${String(member)}`, () => (value as (...all: unknown[]) => unknown).apply(target, args))
      }
    })
  }
  async function call(name: string, run: () => unknown): Promise<unknown> {
    if (state.dead) throw new Killed()
    calls.push(name)
    const now = calls.length === fate.at
    if (now && fate.when === 'before') end(fate)
    const result = await run()
    if (now && fate.when === 'after') end(fate)
    return result
  }
  function end({ failure }: Fate): never {
    if (failure !== null) throw failure
    state.dead = true
    throw new Killed()
  }
  const { drain } = ports
  const store = mortal<Store>(
    withMortalViews(ports.store, (view) => mortal(view, 'view')),
    'store'
  )
  return {
    calls,
    ports: {
      ...ports,
      store,
      slots: mortal<Slots>(ports.slots, 'slots'),
      weather: mortal(ports.weather, 'weather'),
      drain: {
        ...drain,
        outbox: mortal<Outbox>(drain.outbox, 'outbox'),
        chat: drain.chat === null ? null : mortal<Chat>(drain.chat, 'chat'),
        note: () => undefined
      }
    }
  }
}

/** What is read inside a transaction is a call too: to die there leaves the transaction undone. */
function withMortalViews(store: Store, mortal: (view: SiteView) => SiteView): Store {
  return {
    ...store,
    append: (key, at, claim, compose) => store.append(key, at, claim, (view) => compose(mortal(view)))
  }
}
