import { type SiteVerdict, verifySite } from '../../bot/verify.js'
import { type Anchor, parseAnchor } from '../../core/log/chain.js'
import { Stop } from './io.js'
import { readOptions } from './options.js'
import { siteKey } from './site-key.js'
import type { OpenStore, Subcommand } from './tools.js'

const options = {
  site: { type: 'string' },
  anchor: { type: 'string', multiple: true },
  workspace: { type: 'string' },
  json: { type: 'boolean' },
  data: { type: 'string' }
} as const

/** `seamhand verify`: exit 0 intact, 1 not. */
export const verify: Subcommand = async (args, tools) => {
  const { values } = readOptions(args, options)
  const anchors = (values.anchor ?? []).map(anchorOrStop)
  const store = await tools.openStore(values.data ?? null)
  try {
    const sites = await verdicts(store, values.site ?? null, values.workspace ?? null, anchors)
    const ok = sites.every(({ firstBad }) => firstBad === null)
    const report = { ok, sites: sites.map((site) => ({ ...site, head: site.head })) }
    tools.terminal.out(values.json ? `${JSON.stringify(report)}\n` : `${sites.map(sentence).join('\n')}\n`)
    return ok ? 0 : 1
  } finally {
    await store.close()
  }
}

function anchorOrStop(text: string): Anchor {
  const anchor = parseAnchor(text)
  if (anchor === null) throw new Stop(`not an anchor: ${text.slice(0, 100)} (SITE:SEQ:HASH, as printed in a day record)`, 2, 'bad-option')
  return anchor
}

async function verdicts(
  store: OpenStore,
  site: string | null,
  workspace: string | null,
  anchors: readonly Anchor[]
): Promise<readonly SiteVerdict[]> {
  const keys = (await store.allSites()).filter((key) => (site === null || key.site === site) && (workspace === null || key.workspace === workspace))
  if (site !== null && keys.length === 0) throw new Stop(`no such site: ${site}`, 2, 'no-site')
  const unmet = anchors.find((anchor) => !keys.some((key) => key.site === anchor.site))
  if (unmet !== undefined) throw new Stop(`an anchor of a site that is not here: ${unmet.site}`, 1, 'no-site')
  // An anchor names a site, and two workspaces may have one of that name.
  for (const anchor of anchors) await siteKey(store, anchor.site, workspace)
  const found: SiteVerdict[] = []
  for (const key of keys) {
    const verdict = await verifySite(store, key, anchors)
    if (verdict !== null) found.push(verdict)
  }
  return found
}

function sentence({ site, entries, head, firstBad }: SiteVerdict): string {
  if (firstBad === null) return `${site}: intact, ${entries} entries, anchor ${site}:${head.seq}:${head.hash}`
  return `${site}: NOT intact at entry ${firstBad.seq} (${firstBad.why}), ${entries} entries`
}
