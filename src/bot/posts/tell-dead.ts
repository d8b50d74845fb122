import type { Instant } from '../../core/instant.js'
import type { SiteKey } from '../../core/site.js'
import type { Lang } from '../answer.js'
import type { QueuedPost } from '../chat-ports.js'
import { toJson } from '../json.js'
import type { KnownPerson, Post } from '../ports.js'
import { texts } from '../text/index.js'
import type { Text } from '../text/text.js'
import { dateOf } from '../views/clock.js'
import { escapeText } from '../views/escape.js'
import { layOut } from '../views/page.js'
import type { TickPorts } from './tick-ports.js'

/** Older ones are no news any more. */
const newsS = 2 * 86_400
const mostAtOnce = 200
const mostNamed = 15

/**
 * Tells the supervisors of each workspace once, in one direct message, which posts were given up since they were last told. A message
 * to a person that is given up itself is told to nobody. `siteOf`: a site of the workspace whose lock is taken.
 */
export async function tellOfDead(now: Instant, siteOf: (workspace: string) => SiteKey | null, ports: TickPorts): Promise<void> {
  const dead = await ports.drain.outbox.untold(now - newsS, mostAtOnce)
  for (const workspace of new Set(dead.map((post) => post.workspace))) {
    const site = siteOf(workspace)
    const own = dead.filter((post) => post.workspace === workspace)
    const [first] = own
    if (site === null || first === undefined) continue
    const people = await ports.store.supervisors(workspace)
    const posts = people.map((person) => messageTo(person, own, first, now, ports.lang))
    const claims = own.map(({ key }) => `dead/${key}`)
    const batch = { drafts: [], moved: [], keepsakes: [], posts, claims, reply: null }
    await ports.store.append(site, now, { key: claims[0] as string }, async () => batch)
  }
}

function messageTo(person: KnownPerson, dead: readonly QueuedPost[], first: QueuedPost, now: Instant, usual: Lang): Post {
  const lang = person.lang ?? usual
  const text = texts[lang]
  const named = dead.slice(0, mostNamed).map((post) => `${escapeText(post.site, 60)}${text.frame.colon}${nameOf(post, lang, text)}`)
  const more = dead.length > mostNamed ? [text.frame.more(dead.length - mostNamed)] : []
  const page = { head: text.posts.notSent(dead.length), lines: [...named, ...more], details: [], notes: [text.posts.whyNotSent] }
  const payload = toJson(layOut(page, lang))
  return { key: `${first.key}/not-sent/@${person.id}`, site: first.site, kind: 'not-sent', channel: person.id, dueAt: now, payload }
}

/** "morning, 4 May 2026". */
export function nameOf({ kind, key }: Pick<QueuedPost, 'kind' | 'key'>, lang: Lang, text: Text): string {
  const names: Readonly<Record<string, string>> = text.site.posts
  const date = /\d{4}-\d{2}-\d{2}/.exec(key)?.[0] ?? null
  const day = dateOf(date, { lang, units: 'metric', zone: 'UTC' })
  return [Object.hasOwn(names, kind) ? names[kind] : kind, ...(day === null ? [] : [day])].join(', ')
}
