import { localDate } from '../../core/instant.js'
import type { ReadingData, StatementData } from '../../core/log/data.js'
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
  const learned = await learnedBy(on, `kit:${name}`, kit.data, at)
  await session.log('kit', `kit:${name}`, learned === null ? kit.data : { ...kit.data, learned }, at)
  return name
}
