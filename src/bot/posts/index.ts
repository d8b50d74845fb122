import type { Scheduled } from '../../core/schedule.js'
import type { SiteKey, SiteSettings } from '../../core/site.js'
import { evening } from './evening.js'
import { morning } from './morning.js'
import type { Post } from './post.js'
import { wrapUp } from './wrap-up.js'

/** Every kind of post that is due at a time of day. A new one is a file and a line here. */
export const posts = { evening, morning, 'wrap-up': wrapUp } as const satisfies Record<string, Post>

export type PostKind = keyof typeof posts
export const postKinds = Object.keys(posts) as readonly PostKind[]

/** What the schedule of a site hangs on, of its settings. */
export function scheduleOf({ workspace, site }: SiteKey, settings: SiteSettings): Scheduled {
  const { zone, days, posts: wanted, closed } = settings
  return { workspace, name: site, zone, times: postTimes(settings), days, posts: wanted, closed }
}

/** When each kind is due at a site, local time HH:MM. */
function postTimes(settings: SiteSettings): Readonly<Record<PostKind, string>> {
  return Object.fromEntries(postKinds.map((kind) => [kind, posts[kind].time(settings)])) as Record<PostKind, string>
}
