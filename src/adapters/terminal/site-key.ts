import type { SiteKey } from '../../core/site.js'
import { Stop } from './io.js'
import type { OpenStore } from './tools.js'

/** The site of a name: in the workspace given, else the only one of that name in any workspace. Throws a Stop that says which is missing. */
export async function siteKey(store: OpenStore, site: string, workspace: string | null): Promise<SiteKey> {
  const found = (await store.allSites()).filter((key) => key.site === site && (workspace === null || key.workspace === workspace))
  const [only] = found
  if (only === undefined) throw new Stop(`no such site: ${site.slice(0, 80)}`, 2, 'no-site')
  if (found.length === 1) return only
  throw new Stop(`${site} is in several workspaces: say --workspace ${found.map((key) => key.workspace).join(' or ')}`, 2, 'no-site')
}
