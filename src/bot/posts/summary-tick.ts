import { type Instant, localDate } from '../../core/instant.js'
import { firstInstantAt, isStale, isWorkday } from '../../core/schedule.js'
import type { SiteKey, SiteSettings } from '../../core/site.js'
import { toJson } from '../json.js'
import type { KnownPerson } from '../ports.js'
import { type Brief, type Row, speakSummary } from './summary.js'
import type { TickPorts } from './tick-ports.js'

export interface Summed {
  readonly key: SiteKey
  readonly settings: SiteSettings
}

/** After the last morning post of the zone, so that its answers are there, s. */
const afterS = 120

/**
 * One direct message a morning for each supervisor who asked for it, of all open sites of a workspace in one zone that post a
 * morning; with one site alone its own post says it all. The slot keys that were queued.
 */
export async function summarize(now: Instant, sites: readonly Summed[], ports: TickPorts): Promise<readonly string[]> {
  const queued: string[] = []
  for (const group of groupsOf(now, sites)) queued.push(...(await summarizeGroup(now, group, ports)))
  return queued
}

interface Group {
  readonly workspace: string
  readonly zone: string
  readonly date: string
  readonly dueAt: Instant
  readonly sites: readonly Summed[]
}

function groupsOf(now: Instant, sites: readonly Summed[]): readonly Group[] {
  const groups = new Map<string, Summed[]>()
  for (const site of sites) {
    const { zone, days, posts } = site.settings
    if (!posts.includes('morning') || !isWorkday(localDate(now, zone), days)) continue
    const name = `${site.key.workspace} ${zone}`
    groups.set(name, [...(groups.get(name) ?? []), site])
  }
  return [...groups.values()].flatMap((own) => groupOf(now, own))
}

function groupOf(now: Instant, sites: readonly Summed[]): readonly Group[] {
  const [first] = sites
  if (first === undefined || sites.length < 2) return []
  const { zone } = first.settings
  const date = localDate(now, zone)
  const times = sites.flatMap(({ settings }) => firstInstantAt(date, settings.morning, zone) ?? [])
  const dueAt = Math.max(...times) + afterS
  return dueAt <= now && !isStale(dueAt, now) ? [{ workspace: first.key.workspace, zone, date, dueAt, sites }] : []
}

async function summarizeGroup(now: Instant, group: Group, ports: TickPorts): Promise<readonly string[]> {
  const { workspace, zone, date } = group
  const wanting = (await ports.store.supervisors(workspace)).filter(({ summary }) => summary === 'on')
  const keyOf = ({ id }: KnownPerson) => `${workspace}/@${id} ${zone}/summary/${date}`
  const taken = await ports.slots.claimed(
    workspace,
    wanting.map((person) => `post/${keyOf(person)}`)
  )
  const people = wanting.filter((person) => !taken.has(`post/${keyOf(person)}`))
  if (people.length === 0) return []
  const rows = await rowsOf(group, ports)
  const queued: string[] = []
  for (const person of people) if (await queueFor(person, keyOf(person), rows, now, group, ports)) queued.push(keyOf(person))
  return queued
}

async function rowsOf({ workspace, date, sites }: Group, { slots }: TickPorts): Promise<readonly Row[]> {
  const claimOf = ({ key }: Summed) => `post/${workspace}/${key.site}/morning/${date}`
  const replies = await slots.kept(workspace, sites.map(claimOf))
  return sites.map((site) => {
    const reply = replies.get(claimOf(site)) as { readonly brief?: Brief | null } | string | null | undefined
    return { site: site.key.site, brief: typeof reply === 'object' ? (reply?.brief ?? null) : null }
  })
}

async function queueFor(person: KnownPerson, key: string, rows: readonly Row[], now: Instant, group: Group, ports: TickPorts): Promise<boolean> {
  const { sites, zone, date, dueAt } = group
  const how = { lang: person.lang ?? ports.lang, units: person.units ?? ports.units, zone }
  const payload = toJson(speakSummary(rows, date, how))
  const { key: site } = sites[0] as Summed
  const post = { key, site: site.site, kind: 'summary', channel: person.id, dueAt, payload }
  const batch = { drafts: [], moved: [], keepsakes: [], posts: [post], reply: key }
  return (await ports.store.append(site, now, { key: `post/${key}` }, async () => batch))?.kind === 'done'
}
