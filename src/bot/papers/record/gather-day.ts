import { roofOf } from '../../../core/gather/roof-of.js'
import { dayMarks, fromIso, type Instant, localDate } from '../../../core/instant.js'
import type { LimitsSheet } from '../../../core/limits/sheet.js'
import { anchorOf } from '../../../core/log/chain.js'
import type { PhotoData } from '../../../core/log/closing-data.js'
import { entryId } from '../../../core/log/entry.js'
import { emptyDay } from '../../../core/log/states/day.js'
import { emptySite, type SiteState } from '../../../core/log/states/site.js'
import type { VoidState } from '../../../core/log/states/void.js'
import { type WelderState, wholeWelder } from '../../../core/log/states/welder.js'
import { outlook } from '../../../core/plan/outlook.js'
import { counting, dayLog, type LoggedLine } from '../../../core/record/day-log.js'
import { hoursOfBody } from '../../../core/weather/body.js'
import type { Forecast } from '../../../core/weather/forecast.js'
import type { Store } from '../../ports.js'
import { remember } from '../../session/remember.js'
import type { Session } from '../../session/session.js'
import type { How } from '../../views/how.js'
import { dayPaper } from '../day-paper.js'
import type { Gathered, KeptPhoto } from './gathered.js'

/** Where the record finds what the log only names. */
export type Kept = Pick<Store, 'keepsake' | 'person'>

/** A table shows neither photos nor the picture of the day: who wants one reads none and simulates nothing. */
export type GatherFor = 'record' | 'table'

/** Reads everything that the record of a local day (YYYY-MM-DD) needs; writes nothing. */
export async function gatherDay(session: Session, sheet: LimitsSheet, kept: Kept, date: string, how: How, what: GatherFor): Promise<Gathered> {
  const { view, settings, now } = session
  const { site, workspace } = view.key
  const lines = dayLog(await view.entriesOfDay(date), date)
  const until = Math.min(now, dayMarks(date, settings.zone).midnight - 1)
  const then = session.asOf(until)
  const siteState = (await then.state('site')) ?? emptySite
  return {
    site,
    settings,
    sheet,
    date,
    now,
    lines,
    siteState,
    day: (await then.state(`day:${date}`)) ?? emptyDay,
    voids: await voidsOf(then, siteState, lines),
    until,
    yesterday: (await then.state(`day:${localDate(dayMarks(date, settings.zone).noon - 86_400, settings.zone)}`)) ?? emptyDay,
    welders: await weldersOf(then),
    names: await namesOf(lines, workspace, kept),
    photos: what === 'table' ? [] : await photosOf(lines, workspace, kept),
    picture: what === 'table' ? null : await pictureOf(session, sheet, kept, date, lines, how),
    anchor: view.head.seq === 0 ? null : anchorOf(site, view.head)
  }
}

/** Those of the day, and those that were not settled at its end. */
async function voidsOf(then: Session, { voids }: SiteState, lines: readonly LoggedLine[]): Promise<readonly VoidState[]> {
  const named = lines.flatMap(({ entry }) => (entry.subject.startsWith('void:') ? [entry.subject.slice('void:'.length)] : []))
  const numbers = [...new Set([...named, ...Object.keys(voids.unsettled)])].map(Number).sort((a, b) => a - b)
  const states = await Promise.all(numbers.map((number) => then.state(`void:${number}`)))
  return states.filter((state) => state !== null)
}

async function weldersOf(then: Session): Promise<readonly WelderState[]> {
  const names = (await then.view.states('welder:')).map(({ subject }) => subject.slice('welder:'.length))
  const states = await Promise.all(names.map((name) => then.state(`welder:${name}`)))
  return states.flatMap((state, index) => (state === null ? [] : [wholeWelder(names[index] as string, state)]))
}

async function namesOf(lines: readonly LoggedLine[], workspace: string, kept: Kept): Promise<ReadonlyMap<string, string>> {
  const ids = [...new Set(lines.map(({ entry }) => entry.author))]
  const people = await Promise.all(ids.map(async (id) => [id, (await kept.person(workspace, id)).name] as const))
  return new Map(people.flatMap(([id, name]) => (name === null ? [] : [[id, name] as const])))
}

async function photosOf(lines: readonly LoggedLine[], workspace: string, kept: Kept): Promise<readonly KeptPhoto[]> {
  return Promise.all(
    counting(lines, 'photo').map(async ({ entry, data }) => {
      const { sha256, mime } = data as unknown as PhotoData
      const keepsake = await kept.keepsake(workspace, sha256)
      return { entry: entryId(entry.site, entry.seq), at: entry.at, subject: entry.subject, mime, base64: keepsake?.body ?? null }
    })
  )
}

/** The picture of the day as it was known at the first decision, from what that decision kept: the log alone makes it again. */
async function pictureOf(
  session: Session,
  sheet: LimitsSheet,
  kept: Kept,
  date: string,
  lines: readonly LoggedLine[],
  how: How
): Promise<Gathered['picture']> {
  const { key } = session.view
  for (const { entry, data } of counting(lines, 'decision')) {
    const at = fromIso(entry.at)
    const forecast = await forecastOf(data.weather as unknown as KeptWeather | null, key.workspace, kept)
    if (at === null || forecast === null) continue
    const memory = await remember(session.asOf(at))
    const { settings } = memory
    const roof = roofOf(memory, forecast, sheet, at)
    const day = outlook(memory, forecast, sheet, date, at, roof)
    const [paper] = dayPaper({ site: key.site, settings, sheet, forecast, memory, roof, now: at }, day, how)
    return paper === undefined ? null : { paper, knownAt: at }
  }
  return null
}

interface KeptWeather {
  readonly source: string
  readonly issuedAt: string | Instant
  readonly sha256: string
}

async function forecastOf(weather: KeptWeather | null, workspace: string, kept: Kept): Promise<Forecast | null> {
  if (weather === null) return null
  const keepsake = await kept.keepsake(workspace, weather.sha256)
  const hours = keepsake === null ? null : hoursOfBody(keepsake.body)
  const issuedAt = typeof weather.issuedAt === 'number' ? weather.issuedAt : fromIso(weather.issuedAt)
  if (hours === null || issuedAt === null) return null
  return { source: weather.source, issuedAt, sample: weather.source === 'sample', sha256: weather.sha256, hours }
}
