import type { SiteSettings } from '../../core/site.js'
import { morning } from './morning.js'
import type { Post } from './post.js'

/** Every kind of post. A new one is a file and a line here. */
export const posts = { morning } as const satisfies Record<string, Post>

export type PostKind = keyof typeof posts
export const postKinds = Object.keys(posts) as readonly PostKind[]

/** When each kind is due at a site, local time HH:MM. */
export function postTimes(settings: SiteSettings): Readonly<Record<PostKind, string>> {
  return Object.fromEntries(postKinds.map((kind) => [kind, posts[kind].time(settings)])) as Record<PostKind, string>
}
