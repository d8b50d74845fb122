import { localDate } from '../../core/instant.js'
import type { ReadingData, StatementData } from '../../core/log/data.js'
import { emptySite } from '../../core/log/states/site.js'
import type { OnSite } from '../context.js'
import { firstKit } from '../session/remember.js'
import type { KitSaid } from '../words/said.js'

/** Logs what was read and stated, if anything was. */
export async function logFacts({ session }: OnSite, reading: ReadingData, statement: StatementData, at: number): Promise<void> {
  const day = `day:${localDate(at, session.settings.zone)}`
  if (Object.keys(reading).length > 0) await session.log('reading', day, reading, at)
  if (Object.keys(statement).length > 0) await session.log('statement', day, statement, at)
}

/** Logs what was said of a kit; without a name it is the kit last named. Its name. */
export async function logKit({ session }: OnSite, kit: KitSaid, at: number): Promise<string> {
  const name = kit.name ?? ((await session.state('site')) ?? emptySite).kit ?? firstKit
  await session.log('kit', `kit:${name}`, kit.data, at)
  return name
}
