import type { Health } from '../adapters/http/health.js'
import { within } from '../adapters/slack/work.js'
import type { Instant } from '../core/instant.js'

/** A look at the store that takes longer is none. */
const lookMs = 2000
/** Sources that are down are asked again every five minutes; without an answer for so long the weather is not there, s. */
const weatherS = 3600

export interface Readiness {
  readonly health: Health
  /** A live source answered, or was down. */
  asked(how: 'fresh' | 'unchanged' | 'down'): void
  /** How a tick ended. */
  ticked(ok: boolean): void
}

export interface ReadinessPorts {
  readonly now: () => Instant
  readonly chat: () => boolean
  /** Throws where the store does not answer. */
  readonly look: () => Promise<unknown>
}

/** What is known of the parts that answers and posts need. */
export function createReadiness({ now, chat, look }: ReadinessPorts): Readiness {
  let [answeredAt, downAt, ticks]: [Instant | null, Instant | null, boolean] = [null, null, true]
  const lately = (at: Instant | null) => at !== null && now() - at <= weatherS
  const looked = async () => {
    const answer = await within(
      look().then(
        () => true,
        () => false
      ),
      lookMs
    )
    return answer !== 'late' && answer.value
  }
  // Whoever asks while a look is under way shares it: readiness asks for store and outbox at once.
  let looking: Promise<boolean> | null = null
  const store = () => {
    looking ??= looked().finally(() => {
      looking = null
    })
    return looking
  }
  return {
    health: {
      store,
      chat,
      // Where nobody asks, because no site wants any or another server asked, nothing is missing.
      weather: () => !lately(downAt) || lately(answeredAt),
      // The outbox is the store's, and is sent by the ticks.
      outbox: async () => ticks && (await store())
    },
    asked: (how) => {
      if (how === 'down') downAt = now()
      else answeredAt = now()
    },
    ticked: (ok) => {
      ticks = ok
    }
  }
}
