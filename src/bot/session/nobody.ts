import type { Instant } from '../../core/instant.js'
import type { Via } from '../../core/log/entry.js'
import type { SiteKey } from '../../core/site.js'
import type { Ask } from '../ask.js'

/** The question that a post or an export answers: nobody's, and nothing is logged. */
export function nobodyAsks({ workspace, site }: SiteKey, at: Instant, via: Via): Ask {
  const nobody = { user: 'seamhand', role: 'crew', lang: null, units: null, log: false, claim: null, channel: null } as const
  return { text: '', at, workspace, site, via, ...nobody }
}
