import type { SiteRecord } from '../../src/bot/posts/post.js'
import type { Memory } from '../../src/core/gather/memory.js'
import { emptyDay } from '../../src/core/log/states/day.js'
import { emptyKit } from '../../src/core/log/states/kit.js'
import { emptySite } from '../../src/core/log/states/site.js'
import { demoSite, type SiteSettings } from '../../src/core/site.js'

/** A site of which nothing was logged yet. */
export function emptyMemory(settings: Partial<SiteSettings> = {}): Memory {
  return { settings: { ...demoSite, ...settings }, site: emptySite, today: emptyDay, yesterday: emptyDay, kit: emptyKit('K1'), welders: [] }
}

/** No kits, welders or voids, and a chain without entries. */
export const emptyRecord: SiteRecord = { kits: [], welders: [], voids: [], head: { seq: 0, hash: '0'.repeat(64) } }
