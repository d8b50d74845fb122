import type { DayToClose } from '../../core/closing/what-is-open.js'
import { type Instant, localDate } from '../../core/instant.js'
import { emptyDay } from '../../core/log/states/day.js'
import { emptySite } from '../../core/log/states/site.js'
import type { Session } from '../session/session.js'
import { statesOf } from '../session/states.js'

/** What the log says of a site, for the gate at the end of the day of an instant. */
export async function dayToClose(session: Session, now: Instant = session.now): Promise<DayToClose> {
  const { zone, substrate } = session.settings
  return {
    site: (await session.latest('site')) ?? emptySite,
    today: (await session.latest(`day:${localDate(now, zone)}`)) ?? emptyDay,
    yesterday: await session.latest(`day:${localDate(now - 86_400, zone)}`),
    welders: await statesOf(session.view, 'welder'),
    substrate,
    now
  }
}
