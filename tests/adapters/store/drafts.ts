import type { DayDraft } from '../../../src/adapters/store/entries.js'
import type { Batch } from '../../../src/bot/ports.js'
import type { Json } from '../../../src/core/log/entry.js'
import type { SiteKey } from '../../../src/core/site.js'

export const demo: SiteKey = { workspace: 'local', site: 'demo' }
/** 2026-05-04T06:10:00Z */
export const at = 1_777_875_000

export function draft(change: Partial<DayDraft> = {}): DayDraft {
  return {
    at: '2026-05-04T06:10:00Z',
    author: 'U7',
    via: 'ask',
    type: 'reading',
    subject: 'site',
    data: { airC: 14.5 },
    day: '2026-05-04',
    touches: ['site'],
    ...change
  }
}

export function batch<Reply extends Json = Json>(change: Partial<Batch<Reply>> & { readonly reply: Reply }): Batch<Reply> {
  return { drafts: [], moved: [], keepsakes: [], posts: [], ...change }
}
