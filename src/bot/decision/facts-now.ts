import type { Facts } from '../../core/facts.js'
import { sunEvents } from '../../core/gather/daylight.js'
import { gather } from '../../core/gather/gather.js'
import type { Memory } from '../../core/gather/memory.js'
import { roofOf } from '../../core/gather/roof-of.js'
import { localDate } from '../../core/instant.js'
import type { OnSite } from '../context.js'
import { remember } from '../session/remember.js'

/** The facts as of now, for commands that decide no activity. */
export async function factsNow({ session, sheet, forecast }: OnSite): Promise<{ memory: Memory; facts: Facts }> {
  const memory = await remember(session)
  const sun = sunEvents(session.settings, localDate(session.now, session.settings.zone))
  const roof = roofOf(memory, forecast, sheet, session.now, 1)
  return { memory, facts: gather(memory, forecast, sun, sheet, session.now, session.now, roof) }
}
