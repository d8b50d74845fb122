import { open, writeFile } from 'node:fs/promises'
import { exported, type RecordFormat } from '../../bot/papers/record/export.js'
import type { SiteKey } from '../../core/site.js'
import { Stop } from './io.js'
import { readOptions } from './options.js'
import { siteKey } from './site-key.js'
import type { OpenStore, Subcommand, Tools } from './tools.js'

const options = {
  site: { type: 'string' },
  day: { type: 'string' },
  format: { type: 'string' },
  out: { type: 'string' },
  data: { type: 'string' },
  workspace: { type: 'string' }
} as const
const formats = ['jsonl', 'csv', 'pdf', 'zip']
const slice = 1000

/** `seamhand export`: the canonical text of each entry and its hash, a line each (jsonl); a day's record (pdf, csv); all days (zip). */
export const exportLog: Subcommand = async (args, tools) => {
  const { values } = readOptions(args, options)
  const { site, out, format = 'jsonl', day = null } = values
  if (site === undefined || out === undefined) throw new Stop('export needs --site NAME and --out FILE', 2, 'missing')
  if (!formats.includes(format)) throw new Stop(`no such format: ${format.slice(0, 40)} (${formats.join(', ')})`, 2, 'bad-option')
  if (day !== null && !/^\d{4}-\d{2}-\d{2}$/.test(day)) throw new Stop(`not a date: ${day.slice(0, 40)} (2026-05-04)`, 2, 'bad-option')
  const store = await tools.openStore(values.data ?? null)
  try {
    const key = await siteKey(store, site, values.workspace ?? null)
    const said = format === 'jsonl' ? await writeLines(store, key, day, out) : await writeRecord(store, key, day, format as RecordFormat, out, tools)
    tools.terminal.out(`${said} in ${out}\n`)
    return 0
  } finally {
    await store.close()
  }
}

async function writeRecord(store: OpenStore, key: SiteKey, day: string | null, format: RecordFormat, path: string, tools: Tools): Promise<string> {
  const view = await store.view(key)
  if (view === null) throw new Stop(`no such site: ${key.site}`, 2, 'no-site')
  const days = day !== null ? [day] : format === 'zip' ? await daysOf(store, key) : []
  const paper = await exported({ view, kept: store, sheets: tools.sheets(null), now: tools.terminal.now() }, format, days)
  if (paper === null) throw new Stop(`nothing was logged of ${key.site}${day === null ? '' : ` on ${day}`}`, 2, 'not-found')
  const { bytes, alt } = await tools.defaults.draw(paper)
  await writeFile(path, bytes).catch((error: Error) => cannotWrite(path, error))
  return alt
}

/** Local days that something was logged of, in order. */
async function daysOf(store: OpenStore, key: SiteKey): Promise<readonly string[]> {
  const days = new Set<string>()
  for (let after = 0; ; ) {
    const kept = await store.entries(key, after, slice)
    for (const { day } of kept) days.add(day)
    if (kept.length < slice) return [...days].sort()
    after = kept.at(-1)?.entry.seq ?? after
  }
}

async function writeLines(store: OpenStore, key: SiteKey, day: string | null, path: string): Promise<string> {
  const file = await open(path, 'w').catch((error: Error) => cannotWrite(path, error))
  let count = 0
  try {
    for (let after = 0; ; ) {
      const kept = await store.entries(key, after, slice)
      const wanted = kept.filter((each) => day === null || each.day === day)
      // The canonical text is put in as it is: it is what was hashed.
      await file.write(wanted.map(({ canonical, hash }) => `{"entry":${canonical},"hash":"${hash}"}\n`).join(''))
      count += wanted.length
      if (kept.length < slice) return `${count} entries of ${key.site}`
      after = kept.at(-1)?.entry.seq ?? after
    }
  } finally {
    await file.close()
  }
}

function cannotWrite(path: string, error: Error): never {
  throw new Stop(`cannot write ${path}: ${error.message}`, 1, 'config')
}
