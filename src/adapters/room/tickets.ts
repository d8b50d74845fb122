import { randomBytes } from 'node:crypto'

/** Who pressed, in which open page: what a trigger stands for. */
export interface Presser {
  readonly user: string
  readonly tab: string
}

export interface Triggers {
  readonly make: (presser: Presser) => string
  /** The presser, once and in time; else the service's error. */
  readonly spend: (id: unknown) => Presser | 'invalid_trigger_id' | 'expired_trigger_id' | 'exchanged_trigger_id'
}

export function createTriggers(now: () => number, lifeMs: number): Triggers {
  const made = new Map<string, { readonly presser: Presser; readonly at: number; spent: boolean }>()
  return {
    make: (presser) => {
      for (const [id, ticket] of made) if (now() - ticket.at > 10 * lifeMs) made.delete(id)
      const id = `${Math.floor(now())}.${randomBytes(8).toString('hex')}`
      made.set(id, { presser, at: now(), spent: false })
      return id
    },
    spend: (id) => {
      const ticket = made.get(String(id))
      if (ticket === undefined) return /^\d+\.[0-9a-f]{16}$/.test(String(id)) ? 'expired_trigger_id' : 'invalid_trigger_id'
      if (now() - ticket.at > lifeMs) return 'expired_trigger_id'
      if (ticket.spent) return 'exchanged_trigger_id'
      ticket.spent = true
      return ticket.presser
    }
  }
}

/** What an answer through a reply address is about. */
export interface HookTarget {
  readonly channel: string
  readonly user: string
  /** The message whose button was pressed; null for a command. */
  readonly original: string | null
  /** The command as typed, shown to all when an answer is. */
  readonly typed: string | null
  readonly threadTs: string | null
}

export interface Hooks {
  readonly make: (target: HookTarget) => string
  readonly use: (id: string) => HookTarget | null
}

export function createHooks(now: () => number, lifeMs: number, uses: number): Hooks {
  const made = new Map<string, { readonly target: HookTarget; readonly at: number; left: number }>()
  return {
    make: (target) => {
      for (const [id, hook] of made) if (now() - hook.at > lifeMs) made.delete(id)
      const id = randomBytes(16).toString('hex')
      made.set(id, { target, at: now(), left: uses })
      return id
    },
    use: (id) => {
      const hook = made.get(id)
      if (hook === undefined || hook.left <= 0 || now() - hook.at > lifeMs) return null
      hook.left -= 1
      return hook.target
    }
  }
}
