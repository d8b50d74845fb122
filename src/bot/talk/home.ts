import type { HomeView, KnownBlock } from '@slack/types'
import { fromIso } from '../../core/instant.js'
import { emptySite } from '../../core/log/states/site.js'
import type { Lang } from '../answer.js'
import type { Ports } from '../context.js'
import { nameOf } from '../posts/tell-dead.js'
import { stateOf } from '../session/states.js'
import { texts } from '../text/index.js'
import type { Text } from '../text/text.js'
import { escapeText } from '../views/escape.js'
import type { How } from '../views/how.js'
import { section } from '../views/page.js'
import { formButton, nowhere } from './buttons.js'
import { cardOf } from './home/card.js'
import { type Look, lookAt, needOf } from './home/look.js'
import type { Delivery } from './talk.js'

/** Sites whose rows are read to see which need somebody; of a company with more the others are only counted. */
const mostRead = 500
/** Sites that are judged: of each the roof is reckoned through the day. */
const mostJudged = 30
/** Sites shown: two blocks each within the service's hundred, and no longer than a thumb can scroll. */
const mostShown = 15
const mostNamed = 10
const givenUpS = 2 * 86_400
const mostGivenUp = 10
/** A site is a person's own for so long after they last logged something there. */
const mineS = 14 * 86_400

type Wanted = Pick<How, 'lang' | 'units'>

/** Home: my sites, to a supervisor all of them; what needs somebody first, each with buttons for the next thing. Nothing is written. */
export async function homeView(delivery: Delivery, how: Wanted, ports: Ports): Promise<HomeView> {
  const { lang } = how
  const { talk } = texts[lang]
  const { workspace, user } = delivery
  const { role } = await ports.store.person(workspace, user)
  const supervisor = role === 'supervisor'
  const names = await ports.store.sites(workspace)
  const begin: KnownBlock[] = supervisor || names.length === 0 ? [{ type: 'actions', elements: [formButton('start', nowhere, lang, false)] }] : []
  if (names.length === 0) return { type: 'home', blocks: [section(`*${talk.noSites}*\n${escapeText(talk.howToBegin, 200)}`), ...begin] }
  const ordered = await inOrder(names.slice(0, mostRead), delivery, !supervisor, ports)
  const looks = await looksAt(ordered.slice(0, mostJudged), delivery, how, ports)
  const shown = looks.slice(0, mostShown)
  const rest = [...looks.slice(mostShown).map(({ site }) => site), ...ordered.slice(mostJudged)]
  const more = rest.length + Math.max(0, names.length - mostRead)
  const head: KnownBlock = { type: 'header', text: { type: 'plain_text', text: talk.home(shown.length + more), emoji: false } }
  const reader = { workspace, how, acting: role !== 'inspector', ownChannel: ports.ownChannel ?? (() => null) }
  const cards = shown.flatMap((look) => [{ type: 'divider' as const }, ...cardOf(look, reader)])
  const blocks = [head, ...(supervisor ? await givenUp(delivery, lang, ports) : []), ...cards, ...othersOf(rest, more, texts[lang]), ...begin]
  return { type: 'home', blocks }
}

/** Sites looked at one after the other, the one that needs somebody most first. */
async function looksAt(names: readonly string[], { workspace, user, at, via }: Delivery, how: Wanted, ports: Ports): Promise<readonly Look[]> {
  const ask = { text: '', at, workspace, site: null, channel: null, user, role: 'crew', via, ...how, log: false, claim: null } as const
  const looks: Look[] = []
  for (const name of names) {
    const look = await lookAt(name, ask, ports)
    if (look !== null) looks.push(look)
  }
  return looks.sort((a, b) => needOf(b) - needOf(a) || (a.site < b.site ? -1 : 1))
}

/** Sites that are not shown: the first by name, all of them by number. */
function othersOf(rest: readonly string[], more: number, { frame, home }: Text): KnownBlock[] {
  if (more === 0) return []
  const named = rest.slice(0, mostNamed).map((name) => escapeText(name, 40))
  return [section(`${frame.more(more)}${frame.colon}${named.join(', ')}${more > named.length ? ' …' : ''}\n${home.askSite}`)]
}

/** Open sites, those with the most that stands open first; to a crew its own alone, where it has any. */
async function inOrder(names: readonly string[], { workspace, user, at }: Delivery, mineOnly: boolean, { store }: Ports): Promise<readonly string[]> {
  const rows: { readonly name: string; readonly open: number; readonly mine: boolean }[] = []
  for (const name of names) {
    const view = await store.view({ workspace, site: name })
    if (view === null) continue
    const state = (await stateOf(view, 'site')) ?? emptySite
    if ({ ...view.base, ...state.settings }.closed) continue
    const [latest] = mineOnly ? await view.latestOf(user, 1) : []
    const mine = latest !== undefined && (fromIso(latest.entry.at) ?? 0) > at - mineS
    rows.push({ name, open: Object.keys(state.voids.unsettled).length + (state.punch?.open.length ?? 0), mine })
  }
  const own = rows.filter(({ mine }) => mine)
  return (own.length > 0 ? own : rows).sort((a, b) => b.open - a.open || (a.name < b.name ? -1 : 1)).map(({ name }) => name)
}

/** To supervisors: posts of the last days that did not get out. */
async function givenUp({ workspace, at }: Delivery, lang: Lang, ports: Ports): Promise<KnownBlock[]> {
  const posts = await ports.store.givenUp(workspace, at - givenUpS, mostGivenUp)
  if (posts.length === 0) return []
  const text = texts[lang]
  const lines = posts.map((post) => `${escapeText(post.site, 60)}${text.frame.colon}${nameOf(post, lang, text)}`)
  return [section([`*${text.posts.notSent(posts.length)}*`, ...lines, text.posts.whyNotSent].join('\n'))]
}
