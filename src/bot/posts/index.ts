import type { SiteSettings } from '../../core/site.js'
import { evening } from './evening.js'
import { morning } from './morning.js'
import type { Post } from './post.js'
import { wrapUp } from './wrap-up.js'

/** Every kind of post that is due at a time of day. A new one is a file and a line here. */
export const posts = { evening, morning, 'wrap-up': wrapUp } as const satisfies Record<string, Post>

export type PostKind = keyof typeof posts
export const postKinds = Object.keys(posts) as readonly PostKind[]

/** When each kind is due at a site, local time HH:MM. */
export function postTimes(settings: SiteSettings): Readonly<Record<PostKind, string>> {
  return Object.fromEntries(postKinds.map((kind) => [kind, posts[kind].time(settings)])) as Record<PostKind, string>
}
