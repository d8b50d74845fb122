import { open } from 'node:fs/promises'
import type { SiteKey } from '../../core/site.js'
import { Stop } from './io.js'
import { readOptions } from './options.js'
import { siteKey } from './site-key.js'
import type { OpenStore, Subcommand } from './tools.js'

const options = {
  site: { type: 'string' },
  day: { type: 'string' },
  format: { type: 'string' },
  out: { type: 'string' },
  data: { type: 'string' },
  workspace: { type: 'string' }
} as const
const slice = 1000

/** `seamhand export --format jsonl`: the canonical text of each entry and its hash, a line each. */
export const exportLog: Subcommand = async (args, tools) => {
  const { values } = readOptions(args, options)
  const { site, out, format = 'jsonl', day } = values
  if (site === undefined || out === undefined) throw new Stop('export needs --site NAME and --out FILE', 2, 'missing')
  if (format !== 'jsonl') throw new Stop(`no such format: ${format.slice(0, 40)} (jsonl)`, 2, 'bad-option')
  const store = await tools.openStore(values.data ?? null)
  try {
    const count = await writeLines(store, await siteKey(store, site, values.workspace ?? null), day ?? null, out)
    tools.terminal.out(`${count} entries of ${site} in ${out}\n`)
    return 0
  } finally {
    await store.close()
  }
}

async function writeLines(store: OpenStore, key: SiteKey, day: string | null, path: string): Promise<number> {
  const file = await open(path, 'w').catch((error: Error) => {
    throw new Stop(`cannot write ${path}: ${error.message}`, 1, 'config')
  })
  let count = 0
  try {
    for (let after = 0; ; ) {
      const kept = await store.entries(key, after, slice)
      const wanted = kept.filter((each) => day === null || each.day === day)
      // The canonical text is put in as it is: it is what was hashed.
      await file.write(wanted.map(({ canonical, hash }) => `{"entry":${canonical},"hash":"${hash}"}\n`).join(''))
      count += wanted.length
      if (kept.length < slice) return count
      after = kept.at(-1)?.entry.seq ?? after
    }
  } finally {
    await file.close()
  }
}
