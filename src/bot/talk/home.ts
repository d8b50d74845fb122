import type { HomeView, KnownBlock } from '@slack/types'
import type { Folded, States } from '../../core/log/fold.js'
import { emptySite } from '../../core/log/states/site.js'
import type { Lang } from '../answer.js'
import type { Ports } from '../context.js'
import { handle } from '../handle.js'
import { nameOf } from '../posts/tell-dead.js'
import { texts } from '../text/index.js'
import { escapeText } from '../views/escape.js'
import { askFor } from './asks.js'
import { formButton, sayButton } from './buttons.js'
import type { Delivery } from './talk.js'

/** Sites shown at the most: two blocks each within the service's hundred. */
const most = 20
const givenUpS = 2 * 86_400
const mostGivenUp = 10

/** My sites now: outcome of spraying, what binds, voids not settled, and the next thing to do. */
export async function homeView(delivery: Delivery, lang: Lang, ports: Ports): Promise<HomeView> {
  const { talk } = texts[lang]
  const names = (await ports.store.sites(delivery.workspace)).slice(0, most)
  if (names.length === 0) return { type: 'home', blocks: [section(`*${talk.noSites}*\n${escapeText(talk.howToBegin, 200)}`)] }
  const rows = await Promise.all(names.map((name) => siteRows(delivery, name, lang, ports)))
  const head: KnownBlock = { type: 'header', text: { type: 'plain_text', text: talk.home(names.length), emoji: false } }
  return { type: 'home', blocks: [head, ...(await givenUp(delivery, lang, ports)), ...rows.flat()] }
}

/** To supervisors: posts of the last days that did not get out. */
async function givenUp({ workspace, user, at }: Delivery, lang: Lang, ports: Ports): Promise<KnownBlock[]> {
  const { role } = await ports.store.person(workspace, user)
  if (role !== 'supervisor') return []
  const posts = await ports.store.givenUp(workspace, at - givenUpS, mostGivenUp)
  if (posts.length === 0) return []
  const text = texts[lang]
  const lines = posts.map((post) => `${escapeText(post.site, 60)}${text.frame.colon}${nameOf(post, lang, text)}`)
  return [section([`*${text.posts.notSent(posts.length)}*`, ...lines, text.posts.whyNotSent].join('\n'))]
}

async function siteRows(delivery: Delivery, site: string, lang: Lang, ports: Ports): Promise<KnownBlock[]> {
  const { talk } = texts[lang]
  const ask = await askFor({ ...delivery, lang, claim: null }, 'spray', site, ports)
  const { reply } = await handle({ ...ask, log: false }, ports)
  const view = await ports.store.view({ workspace: delivery.workspace, site })
  const folded = (await view?.state('site'))?.state as unknown as Folded<States['site']> | undefined
  const unsettled = Object.keys((folded?.is ?? emptySite).voids.unsettled).length
  const voids = unsettled === 0 ? '' : `\n${talk.openVoids(unsettled)}`
  const invented = view?.base.invented ? ` (${talk.inventedSite})` : ''
  const [first = '', second = ''] = reply.text.split('\n')
  return [
    section(`*${escapeText(site)}*${invented}\n${first} · ${talk.askNow}\n${second}${voids}`),
    {
      type: 'actions',
      elements: [sayButton('spray', 'spray', site, lang, true), formButton('readings', site, lang, false), formButton('void', site, lang, false)]
    }
  ]
}

function section(text: string): KnownBlock {
  return { type: 'section', text: { type: 'mrkdwn', text, verbatim: true } }
}
