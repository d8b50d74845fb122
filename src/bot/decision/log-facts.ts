import { localDate } from '../../core/instant.js'
import { offRatio } from '../../core/kits/yield.js'
import type { KitData, ReadingData, StatementData } from '../../core/log/data.js'
import { emptySite } from '../../core/log/states/site.js'
import type { OnSite } from '../context.js'
import { firstKit } from '../session/remember.js'
import type { KitSaid } from '../words/said.js'
import { learnedBy } from './learned.js'

/** Logs what was read and stated, if anything was. */
export async function logFacts({ session }: OnSite, reading: ReadingData, statement: StatementData, at: number): Promise<void> {
  const day = `day:${localDate(at, session.settings.zone)}`
  if (Object.keys(reading).length > 0) await session.log('reading', day, reading, at)
  if (Object.keys(statement).length > 0) await session.log('statement', day, statement, at)
}

/** Logs what was said of a kit; without a name it is the kit last named. Its name. */
export async function logKit(on: OnSite, kit: KitSaid, at: number): Promise<string> {
  const { session } = on
  const name = kit.name ?? ((await session.state('site')) ?? emptySite).kit ?? firstKit
  const data = withRatio(kit.data)
  const learned = await learnedBy(on, `kit:${name}`, data, at)
  await session.log('kit', `kit:${name}`, learned === null ? data : { ...data, learned }, at)
  return name
}

/** What is left of both parts says whether they were sprayed in their ratio. */
export function withRatio<T extends Omit<KitData, 'foam'>>(data: T): T {
  const { isoLeftPct: isoPct, resinLeftPct: resinPct } = data
  return isoPct === undefined || resinPct === undefined ? data : { ...data, offRatio: offRatio({ isoPct, resinPct }) }
}
