import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, afterEach } from 'vitest'
import { onlySheet, readSheets, resolveKept } from '../../src/adapters/limits/files.js'
import { openSqlite } from '../../src/adapters/store/open-sqlite.js'
import { createStore, type StoreExtras } from '../../src/adapters/store/store.js'
import { readWeatherFile } from '../../src/adapters/weather/file.js'
import { fixedWeather, sampleWeather } from '../../src/adapters/weather/index.js'
import type { Lang, Units } from '../../src/bot/answer.js'
import type { Ask, Role } from '../../src/bot/ask.js'
import type { Ports } from '../../src/bot/context.js'
import type { Kept, Store, Weather } from '../../src/bot/ports.js'
import { type Replayed, replay } from '../../src/bot/replay.js'
import type { Reply } from '../../src/bot/reply.js'
import { respond } from '../../src/bot/respond.js'
import type { Entry } from '../../src/core/log/entry.js'
import type { Alerts } from '../../src/core/weather/alert.js'
import { draw } from '../../src/wiring/papers.js'
import { fixture } from './fixture.js'
import { iso } from './instant.js'

/** The clock of a question that says nothing else: 10:00 in Berlin, a Monday, by day. */
export const morning = '2026-05-04T08:00:00Z'

export interface Question {
  /** ISO, or HH:MM of 2026-05-04 in Berlin summer time. */
  readonly at?: string
  readonly user?: string
  readonly role?: Role
  readonly lang?: Lang
  readonly units?: Units
  readonly site?: string
  readonly log?: boolean
  readonly weather?: WeatherChoice
  /** Not given: no service that warns covers the site. */
  readonly alerts?: Alerts
  readonly claim?: string
}

/** No forecast, the invented week, or the file of a service under tests/fixtures/weather. */
export type WeatherChoice = 'none' | 'sample' | { readonly file: string; readonly issuedAt: string }

/** A Seamhand of its own: a fresh store in a folder of its own, asked as the terminal asks it. */
export interface Seamhand {
  ask(text: string, question?: Question): Promise<Reply>
  /** Asks several things, one after another; the last reply. */
  askAll(texts: readonly string[], question?: Question): Promise<Reply>
  /** Every entry of a site in order of seq. */
  entries(site?: string): Promise<readonly Entry[]>
  kept(site?: string): Promise<readonly Kept[]>
  head(site?: string): Promise<{ readonly seq: number; readonly hash: string }>
  replay(id: string): Promise<Replayed | null>
  readonly store: Store & StoreExtras
  readonly folder: string
  /** What was reported as a bug of the program. */
  readonly bugs: readonly unknown[]
  close(): Promise<void>
}

const closing: (() => Promise<void>)[] = []
const folders: string[] = []

/** What tests opened is closed after each of them, and gone after the file. */
export function seamhands(): typeof openSeamhand {
  afterEach(async () => {
    for (const close of closing.splice(0)) await close()
  })
  afterAll(() => {
    for (const folder of folders.splice(0)) rmSync(folder, { recursive: true, force: true })
  })
  return openSeamhand
}

/** A folder that is gone after the file. */
export function freshFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'seamhand-'))
  folders.push(folder)
  return folder
}

async function openSeamhand(
  options: { readonly folder?: string; readonly weather?: WeatherChoice; readonly limits?: string } = {}
): Promise<Seamhand> {
  const folder = options.folder ?? freshFolder()
  const store = createStore(await openSqlite(folder, { server: false }))
  const sheets = options.limits === undefined ? readSheets(null) : onlySheet(options.limits, null)
  const bugs: unknown[] = []
  let open = true
  async function close(): Promise<void> {
    if (open) await store.close()
    open = false
  }
  closing.push(close)
  const report = (error: unknown) => `bug-${bugs.push(error)}`
  async function ask(text: string, question: Question = {}): Promise<Reply> {
    const weather = { ...weatherOf(question.weather ?? options.weather ?? 'none'), alerts: async () => question.alerts ?? null }
    const ports: Ports = { store, weather, sheets, draw, lang: 'en', units: 'metric', report }
    return (await respond(askOf(text, question), ports)).reply
  }
  async function askAll(texts: readonly string[], question: Question = {}): Promise<Reply> {
    let reply: Reply | null = null
    for (const text of texts) reply = await ask(text, question)
    if (reply === null) throw new Error('nothing was asked')
    return reply
  }
  const kept = (site = 'demo') => store.entries({ workspace: 'local', site }, 0, 10_000)
  return {
    ask,
    askAll,
    kept,
    entries: async (site) => (await kept(site)).map(({ entry }) => entry),
    head: async (site = 'demo') => {
      const view = await store.view({ workspace: 'local', site })
      if (view === null) throw new Error(`no site ${site}`)
      return view.head
    },
    replay: (id) => replay(store, 'local', id, resolveKept),
    store,
    folder,
    bugs,
    close
  }
}

function askOf(text: string, { at = morning, user = 'ask', role = 'supervisor', lang, units, site, log = true, claim }: Question): Ask {
  return {
    text,
    at: instantOf(at),
    workspace: 'local',
    site: site ?? null,
    channel: null,
    user,
    role,
    via: 'ask',
    lang: lang ?? null,
    units: units ?? null,
    log,
    claim: claim ?? null
  }
}

/** HH:MM or HH:MM:SS is Berlin's clock on 2026-05-04, summer time. */
export function instantOf(at: string): number {
  return /^\d\d:\d\d(:\d\d)?$/.test(at) ? iso(`2026-05-04T${at.length === 5 ? `${at}:00` : at}+02:00`) : iso(at)
}

function weatherOf(choice: WeatherChoice): Weather {
  if (choice === 'none') return fixedWeather(null)
  if (choice === 'sample') return sampleWeather()
  return fixedWeather(readWeatherFile(fixture(`weather/${choice.file}`), iso(choice.issuedAt)))
}

/** A finding of a reply as a test reads it. */
interface Found {
  readonly rule: string
  readonly activity: string
  readonly group: string
  readonly outcome: string
  readonly value: number | boolean | null
  readonly unit: string | null
  readonly limit: number | null
  readonly margin: number | null
  readonly spread: number
  readonly origin: string | null
  readonly at: string | null
  readonly stale: boolean
  readonly fix: string | null
}

export function findingsOf(reply: Reply): readonly Found[] {
  return reply.findings as unknown as readonly Found[]
}

/** The finding of a rule; with several activities, of the one named. */
export function findingOf(reply: Reply, rule: string, activity?: string): Found {
  const found = findingsOf(reply).find((one) => one.rule === rule && (activity === undefined || one.activity === activity))
  if (found === undefined)
    throw new Error(
      `no finding of ${rule} in ${findingsOf(reply)
        .map((one) => one.rule)
        .join(' ')}`
    )
  return found
}

/** The numbers of a reply as a test reads them. */
// biome-ignore lint/suspicious/noExplicitAny: a test asserts what it reads
export function numbersOf(reply: Reply): Record<string, any> {
  // biome-ignore lint/suspicious/noExplicitAny: as above
  return reply.numbers as unknown as Record<string, any>
}

/** The worked line of outside contract §6 that is go without a forecast by day, in its parts. */
export const fullSprayParts = [
  'air 20',
  'deck 20',
  'rh 50',
  'wind 10',
  'gust 15',
  'rain 10 %',
  'no thunder',
  'mixed',
  'kit 25',
  'dry',
  'clean',
  'compatible',
  'intakes none',
  'relaxed',
  'tight',
  'purged',
  'nozzle',
  'tested',
  'exp 2099-01-01'
] as const

export const fullSpray = `/spray ${fullSprayParts.join(' ')}`
