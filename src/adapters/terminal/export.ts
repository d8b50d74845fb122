import { open, writeFile } from 'node:fs/promises'
import { exported, type RecordFormat } from '../../bot/papers/record/export.js'
import type { SiteView } from '../../bot/ports.js'
import { settingsOf } from '../../bot/session/session.js'
import { texts } from '../../bot/text/index.js'
import { dateOf } from '../../bot/views/clock.js'
import { type How, howOf } from '../../bot/views/how.js'
import type { SiteKey } from '../../core/site.js'
import { Stop } from './io.js'
import { langOption, readOptions } from './options.js'
import { siteKey } from './site-key.js'
import type { OpenStore, Subcommand, Tools } from './tools.js'

const options = {
  site: { type: 'string' },
  day: { type: 'string' },
  format: { type: 'string' },
  out: { type: 'string' },
  lang: { type: 'string' },
  data: { type: 'string' },
  workspace: { type: 'string' }
} as const
const formats = ['jsonl', 'csv', 'pdf', 'zip']
const slice = 1000

/** `seamhand export`: the canonical text of each entry and its hash, a line each (jsonl); a day's record (pdf, csv); all days (zip). In a language, else the site's. */
export const exportLog: Subcommand = async (args, tools) => {
  const { values } = readOptions(args, options)
  const { site, out, format = 'jsonl', day = null } = values
  if (site === undefined || out === undefined) throw new Stop('export needs --site NAME and --out FILE', 2, 'missing')
  if (!formats.includes(format)) throw new Stop(`no such format: ${format.slice(0, 40)} (${formats.join(', ')})`, 2, 'bad-option')
  if (day !== null && !/^\d{4}-\d{2}-\d{2}$/.test(day)) throw new Stop(`not a date: ${day.slice(0, 40)} (2026-05-04)`, 2, 'bad-option')
  const lang = langOption(values.lang)
  const store = await tools.openStore(values.data ?? null)
  try {
    const key = await siteKey(store, site, values.workspace ?? null)
    const view = await store.view(key)
    if (view === null) throw new Stop(`no such site: ${key.site}`, 2, 'no-site')
    const how = howOf(await settingsOf(view))
    const asked: Asked = { store, view, day, path: out, how: { ...how, lang: lang ?? how.lang } }
    const said = format === 'jsonl' ? await writeLines(asked) : await writeRecord(asked, format as RecordFormat, tools)
    tools.terminal.out(`${texts[asked.how.lang].exportWords.file(said, out)}\n`)
    return 0
  } finally {
    await store.close()
  }
}

/** What is to be written, where, and in whose words. */
interface Asked {
  readonly store: OpenStore
  readonly view: SiteView
  /** Null: all days, or today where it is the record of one. */
  readonly day: string | null
  readonly path: string
  readonly how: How
}

async function writeRecord(asked: Asked, format: RecordFormat, tools: Tools): Promise<string> {
  const { store, view, day, path, how } = asked
  const { site } = view.key
  const { days, ...log } = format === 'zip' ? await allOf(asked) : { days: day === null ? [] : [day] }
  const paper = await exported({ view, kept: store, sheets: tools.sheets(null), now: tools.terminal.now(), lang: how.lang, ...log }, format, days)
  if (paper === null) throw new Stop(`nothing was logged of ${site}${day === null ? '' : ` on ${day}`}`, 2, 'not-found')
  const { bytes, alt } = await tools.defaults.draw(paper)
  await writeFile(path, bytes).catch((error: Error) => cannotWrite(path, error))
  const { exportWords, decision } = texts[how.lang]
  return format === 'zip' ? exportWords.packet(site, decision.days(days.length)) : alt
}

/** The log in slices, those of one day or all. */
async function* slicesOf(store: OpenStore, key: SiteKey, day: string | null) {
  for (let after = 0; ; ) {
    const kept = await store.entries(key, after, slice)
    yield kept.filter((each) => day === null || each.day === day)
    if (kept.length < slice) return
    after = kept.at(-1)?.entry.seq ?? after
  }
}

/** Local days that something was logged of, in order, and the lines of the log in one text: what a packet takes. */
async function allOf({ store, view, day }: Asked): Promise<{ readonly days: readonly string[]; readonly log: string }> {
  const days = new Set<string>(day === null ? [] : [day])
  const lines: string[] = []
  for await (const kept of slicesOf(store, view.key, day)) {
    for (const each of kept) days.add(each.day)
    lines.push(...kept.map(lineOf))
  }
  return { days: [...days].sort(), log: lines.join('') }
}

/** The canonical text is put in as it is: it is what was hashed. */
function lineOf({ canonical, hash }: { readonly canonical: string; readonly hash: string }): string {
  return `{"entry":${canonical},"hash":"${hash}"}\n`
}

async function writeLines({ store, view, day, path, how }: Asked): Promise<string> {
  const file = await open(path, 'w').catch((error: Error) => cannotWrite(path, error))
  let count = 0
  try {
    for await (const kept of slicesOf(store, view.key, day)) {
      await file.write(kept.map(lineOf).join(''))
      count += kept.length
    }
    return logSentence(view.key.site, day, count, how)
  } finally {
    await file.close()
  }
}

function logSentence(site: string, day: string | null, count: number, how: How): string {
  const { exportWords, day: words } = texts[how.lang]
  return exportWords.log(site, day === null ? null : (dateOf(day, how) ?? day), words.entries(count))
}

function cannotWrite(path: string, error: Error): never {
  throw new Stop(`cannot write ${path}: ${error.message}`, 1, 'config')
}
